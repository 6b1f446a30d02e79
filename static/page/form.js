// @ts-check
// A calculator's form: presets, conditional fields, last inputs, undo, errors beside their fields, the address.
import { clear, fillIn, filledIn, showAsked } from './fields.js';
import { inputsKey, keep, keepRecent, recall } from './memory.js';
import { watchTimers } from './timer.js';

const IDLE_MS = 1200;

/** @param {HTMLFormElement} form */
export function watchForm(form) {
  const answer = /** @type {HTMLElement} */ (document.getElementById('answer'));
  const calculator = form.dataset.calculator ?? '';
  const opened = Date.now();
  let typing = ''; // the box in which a key was just pressed: no error for it until it is left
  let idle = 0;

  const ask = () => form.dispatchEvent(new Event('change', { bubbles: true }));
  /** @param {string} name @param {string} value @param {string} unit */
  const fill = (name, value, unit) => {
    // By id: the preset buttons share their box's name.
    const box = document.getElementById(name);
    const chooser = document.getElementById(`${name}_unit`);
    if (box instanceof HTMLInputElement) box.value = value;
    if (chooser instanceof HTMLSelectElement && unit) chooser.value = unit;
    ask();
  };

  form.addEventListener('input', event => {
    typing = event.target instanceof HTMLInputElement ? event.target.name : '';
    showAsked(form);
  });
  form.addEventListener('change', () => {
    typing = '';
    showAsked(form);
  });
  form.addEventListener('submit', () => (typing = ''));
  form.addEventListener('focusout', () => {
    typing = '';
    placeErrors(form, answer, typing);
  });
  form.addEventListener('click', event => {
    const preset = event.target instanceof Element ? event.target.closest('[data-fill]') : null;
    if (!(preset instanceof HTMLButtonElement)) return;
    event.preventDefault();
    fill(preset.dataset.fill ?? '', preset.dataset.number ?? '', preset.dataset.unit ?? '');
  });
  document.addEventListener('htmx:after:swap', () => {
    placeErrors(form, answer, typing);
    offerCopy(answer);
    window.clearTimeout(idle);
    idle = window.setTimeout(settled, IDLE_MS);
  });

  /** When the fingers rest: remember inputs and answer, say it aloud, let the phone keep the finished page. */
  const settled = () => {
    const link = answer.querySelector('a.share');
    keep(inputsKey(calculator), filledIn(form));
    speak(answer);
    if (!(link instanceof HTMLAnchorElement)) return;
    const address = link.getAttribute('href') ?? '';
    history.replaceState(null, '', address);
    keep(`link:${calculator}`, address.split('?')[1] ?? '');
    const number = answer.querySelector('.headline .number');
    const label = answer.querySelector('.headline .headline-label');
    if (number) {
      keepRecent({ calculator, href: address, label: label?.textContent ?? '', number: number.textContent ?? '', at: Date.now() }, opened);
    }
    // Asked for once as a whole page, the answer opens next time before Python has woken up.
    if (navigator.serviceWorker?.controller) fetch(address).catch(() => {});
  };

  watchClear(form, ask);
  watchTimers(form, fill);
  offerCopy(answer);
  const last = recall(inputsKey(calculator));
  if (location.search === '' && last) {
    fillIn(form, last);
    // htmx takes hold of the form only once all scripts have run.
    document.addEventListener('DOMContentLoaded', () => setTimeout(ask));
  } else if (answer.querySelector('a.share')) idle = window.setTimeout(settled, IDLE_MS);
}

/** @param {HTMLFormElement} form @param {() => void} ask */
function watchClear(form, ask) {
  const clearing = form.querySelector('[data-clear]');
  const undo = form.querySelector('[data-undo]');
  if (!(clearing instanceof HTMLButtonElement && undo instanceof HTMLButtonElement)) return;
  let before = '';
  clearing.hidden = false;
  clearing.addEventListener('click', () => {
    before = filledIn(form);
    clear(form);
    history.replaceState(null, '', location.pathname);
    keep(`link:${form.dataset.calculator}`, null);
    undo.hidden = false;
    ask();
  });
  undo.addEventListener('click', () => {
    fillIn(form, before);
    undo.hidden = true;
    ask();
  });
}

/** @param {HTMLFormElement} form @param {HTMLElement} answer @param {string} typing */
function placeErrors(form, answer, typing) {
  /** @type {Map<string, string>} */
  const errors = new Map();
  for (const item of answer.querySelectorAll('[data-field]')) {
    const name = item.getAttribute('data-field') ?? '';
    const held = name !== '' && name === typing;
    item.toggleAttribute('hidden', held);
    if (!held) errors.set(name, item.textContent ?? '');
  }
  const summary = answer.querySelector('.summary');
  if (summary) {
    const quiet = errors.size === 0;
    summary.toggleAttribute('hidden', quiet);
    answer.querySelector('.still-typing')?.toggleAttribute('hidden', !quiet);
  }
  for (const slot of form.querySelectorAll('.error')) {
    const name = slot.id.slice(0, -'-error'.length);
    const text = errors.get(name) ?? '';
    slot.textContent = text;
    slot.toggleAttribute('hidden', text === '');
    slot.closest('.field')?.classList.toggle('wrong', text !== '');
    const box = document.getElementById(name);
    if (box instanceof HTMLInputElement || box instanceof HTMLSelectElement) {
      if (text) box.setAttribute('aria-invalid', 'true');
      else box.removeAttribute('aria-invalid');
    }
  }
}

/** @param {HTMLElement} answer */
function speak(answer) {
  const spoken = document.getElementById('spoken');
  const headline = answer.querySelector('.headline');
  if (spoken && headline) spoken.textContent = (headline.textContent ?? '').replace(/\s+/g, ' ');
}

/** @param {HTMLElement} answer */
function offerCopy(answer) {
  const button = answer.querySelector('[data-copy]');
  if (!(button instanceof HTMLButtonElement) || !navigator.clipboard) return;
  button.hidden = false;
  button.addEventListener('click', async () => {
    const link = answer.querySelector('a.share');
    const words = [...answer.querySelectorAll('.headline p')].map(each => each.textContent?.replace(/\s+/g, ' ').trim());
    if (link instanceof HTMLAnchorElement) words.push(link.href);
    try {
      await navigator.clipboard.writeText(words.join('\n'));
      button.textContent = button.dataset.copied ?? '';
    } catch {
      // refused by the browser: the link beside the button does the same
    }
  });
}
