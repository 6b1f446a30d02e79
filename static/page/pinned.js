// @ts-check
// Questions that the welder pinned, and those used last: short rows on top of the first page.
import { inputsKey, lastOfEach, linkKey, pinned, recall, turnPin } from './memory.js';

const MOST_USED = 4;

/** The button on a question's own page. */
export function watchPin() {
  const button = document.querySelector('[data-pin]');
  if (!(button instanceof HTMLButtonElement)) return;
  const calculator = button.dataset.pin ?? '';
  const show = () => button.setAttribute('aria-pressed', String(pinned().some(each => each.calculator === calculator)));
  button.onclick = () => {
    turnPin({ calculator, title: document.querySelector('h1')?.textContent ?? '' });
    show();
  };
  show();
}

export function showPinned() {
  const pins = pinned();
  const used = lastOfEach();
  fill(
    'pinned',
    pins.map(({ calculator, title }) => row(calculator, title, used.find(each => each.calculator === calculator)?.number)),
  );
  // A pinned one has its number there already.
  const others = used.filter(each => !pins.some(pin => pin.calculator === each.calculator)).slice(0, MOST_USED);
  fill(
    'used',
    others.map(({ calculator, label, number }) => row(calculator, label, number)),
  );
}

/** @param {'pinned' | 'used'} name @param {HTMLElement[]} rows */
function fill(name, rows) {
  document.querySelector(`[data-${name}] ol`)?.replaceChildren(...rows);
  // As many as theme.js made room for, unless something else lay under the key.
  if (rows.length) document.documentElement.style.setProperty(`--${name}`, String(rows.length));
  else document.documentElement.style.removeProperty(`--${name}`);
  document.documentElement.toggleAttribute(`data-has-${name}`, rows.length > 0);
}

/** @param {string} calculator @param {string} title as it was kept @param {string} [number] */
function row(calculator, title, number = '') {
  const name = CSS.escape(calculator);
  const listed = document.querySelector(`.questions a:is([href="${name}"], [href^="${name}?"])`);
  const link = document.createElement('a');
  link.href = withLastInputs(listed?.getAttribute('href') ?? calculator);
  for (const [element, text] of [['strong', listed?.querySelector('strong')?.textContent ?? title], ['span', number]]) {
    const part = document.createElement(element ?? '');
    part.textContent = text ?? '';
    link.append(part, ' ');
  }
  const item = document.createElement('li');
  item.append(link);
  return item;
}

/** @param {string} address of a question */
export function withLastInputs(address) {
  const calculator = address.split('?')[0] ?? '';
  const last = recall(linkKey(calculator)) ?? recall(inputsKey(calculator));
  return last ? `${calculator}?${last}` : address;
}
