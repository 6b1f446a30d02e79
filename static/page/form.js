// @ts-check
// A calculator's form: presets, conditional fields, last inputs, undo, errors beside their fields, the address.
import { keepClearOfBar } from './bar.js';
import { watchBefore } from './before.js';
import { watchCountdown } from './countdown.js';
import { watchErrors } from './errors.js';
import { clear, fillIn, filledIn, showAsked, typedNumbers } from './fields.js';
import { offerFixes } from './fixed.js';
import { watchKeptBoxes } from './kept-box.js';
import { offerKeeping, watchMachines } from './machines.js';
import { followed, inputsKey, keep, keepRecent, linkKey, recall } from './memory.js';
import { RECORDS, inputsName, openedFor, purpose } from './opened.js';
import { watchSteppers } from './steppers.js';
import { watchTicks } from './ticks.js';
import { watchTimers } from './timer.js';
import { watchUnits } from './units.js';

const IDLE_MS = 1200;

/** @param {HTMLFormElement} form */
export function watchForm(form) {
  const answer = /** @type {HTMLElement} */ (document.getElementById('answer'));
  const calculator = form.dataset.calculator ?? '';
  const opened = Date.now();
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

  /** Of no record and no job that is there already: such a one is no start for the next. */
  const isOwn = () => inputsName(calculator) === calculator;
  /** What is typed for a record that is there already is kept elsewhere (records/drafts.js). */
  const isKept = () => isOwn() || !RECORDS.includes(calculator);
  /** @param {string | null} link */
  const keepInputs = link => {
    if (isKept()) keep(inputsKey(inputsName(calculator)), filledIn(form));
    if (isOwn()) keep(linkKey(calculator), link);
  };
  const changed = () => {
    showAsked(form);
    // At once: a phone may be locked or a browser closed at any time. No link yet: there may be no answer.
    keepInputs(null);
    window.clearTimeout(idle); // the answer that stands there belongs to what was typed before
  };
  form.addEventListener('input', changed);
  form.addEventListener('change', changed);
  form.addEventListener('click', event => {
    const preset = event.target instanceof Element ? event.target.closest('[data-fill]') : null;
    if (!(preset instanceof HTMLButtonElement)) return;
    event.preventDefault();
    fill(preset.dataset.fill ?? '', preset.dataset.number ?? '', preset.dataset.unit ?? '');
  });
  const before = watchBefore(form, answer, ask, () => headlineNumber(answer));
  document.addEventListener('htmx:after:swap', () => {
    offerCopy(answer);
    before.show();
    offerKeeping(answer);
    offerFixes(answer);
    window.clearTimeout(idle);
    idle = window.setTimeout(settled, IDLE_MS);
  });

  /** When the fingers rest: remember the answer, say it aloud, let the phone keep the finished page. */
  const settled = () => {
    const link = answer.querySelector('a.share');
    speak(answer);
    before.rest();
    // An address never claims an answer that is no longer there; without one, a reload brings the inputs back.
    const address = link?.getAttribute('href') ?? '';
    keepInputs(address ? (address.split('?')[1] ?? '') : null);
    history.replaceState(null, '', (address || location.pathname) + purpose());
    if (!address) return;
    const number = headlineNumber(answer);
    const label = answer.querySelector('.headline .headline-label')?.textContent ?? '';
    if (number && isOwn()) keepRecent({ calculator, href: address, label, number, given: typedNumbers(form), at: Date.now() }, opened);
    // Asked for once as a whole page, the answer opens next time before Python has woken up.
    if (navigator.serviceWorker?.controller) fetch(address).catch(() => {});
  };

  watchErrors(form, answer);
  keepClearOfBar(form, answer);
  watchClear(form, ask);
  watchSteppers(form);
  watchTimers(form, fill);
  if (!openedFor().job) watchTicks(answer, calculator); // a job's own: records/job-ticks.js
  watchCountdown(answer, calculator);
  offerCopy(answer);
  offerKeeping(answer);
  offerFixes(answer);
  const last = location.search === '' && isKept() ? recall(inputsKey(inputsName(calculator))) : null;
  if (last) fillIn(form, last);
  const converted = watchUnits(form);
  const from = followed(location.href) || (location.search === '' ? 'home' : '');
  const picked = watchMachines(form, ask, from);
  const own = watchKeptBoxes(form, ask);
  if (last || own || ((picked || converted) && location.search)) {
    // htmx takes hold of the form only once all scripts have run.
    document.addEventListener('DOMContentLoaded', () => setTimeout(ask));
  } else if (answer.querySelector('a.share')) {
    before.rest();
    idle = window.setTimeout(settled, IDLE_MS);
  }
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
    history.replaceState(null, '', location.pathname + purpose());
    undo.hidden = false;
    ask();
  });
  undo.addEventListener('click', () => {
    fillIn(form, before);
    undo.hidden = true;
    ask();
  });
}

/** @param {HTMLElement} answer @returns {string} the headline's number in the unit that comes first */
function headlineNumber(answer) {
  const parts = [...(answer.querySelector('.headline .number')?.childNodes ?? [])];
  const first = parts.filter(part => !(part instanceof Element && part.matches('.other')));
  return first.map(part => part.textContent).join('').trim();
}

/** @param {HTMLElement} answer */
function speak(answer) {
  const spoken = document.getElementById('spoken');
  const headline = answer.querySelector('.headline');
  // innerText, which leaves out the errors that are still held back.
  if (spoken && headline instanceof HTMLElement) spoken.textContent = headline.innerText.replace(/\s+/g, ' ');
}

/** The answer in words, both units and its band, without its link. @param {HTMLElement} answer */
const inWords = answer => [...answer.querySelectorAll('.headline p')].map(each => each.textContent?.replace(/\s+/g, ' ').trim());

/** @param {HTMLElement} answer */
function offerSending(answer) {
  const button = answer.querySelector('[data-hand-on]');
  const link = answer.querySelector('a.share');
  if (!(button instanceof HTMLButtonElement && link instanceof HTMLAnchorElement) || !navigator.share) return;
  button.hidden = false;
  button.addEventListener('click', () => {
    const title = document.querySelector('h1')?.textContent ?? '';
    // Closed without sending, or refused by the browser: the link beside the button does the same.
    navigator.share({ title, text: inWords(answer).join('\n'), url: link.href }).catch(() => {});
  });
}

/** @param {HTMLElement} answer */
function offerCopy(answer) {
  offerSending(answer);
  const button = answer.querySelector('[data-copy]');
  if (!(button instanceof HTMLButtonElement) || !navigator.clipboard) return;
  button.hidden = false;
  button.addEventListener('click', () => {
    const link = answer.querySelector('a.share');
    const words = inWords(answer);
    if (link instanceof HTMLAnchorElement) words.push(link.href);
    copy(button, words.join('\n'));
  });
  const draft = answer.querySelector('[data-copy-draft]');
  if (!(draft instanceof HTMLButtonElement)) return;
  draft.hidden = false;
  draft.addEventListener('click', () => copy(draft, answer.querySelector('[data-draft]')?.textContent ?? ''));
}

/** @param {HTMLButtonElement} button @param {string} text */
async function copy(button, text) {
  try {
    await navigator.clipboard.writeText(text);
    button.textContent = button.dataset.copied ?? '';
  } catch {
    // refused by the browser: the link beside the button, or the text itself, does the same
  }
}
