// @ts-check
// What is typed into a record's form and not kept yet, on the disk within a second. The browser's other memory
// (memory.js) reaches the disk only seconds later: a battery that dies would take it along.
import { fillIn, filledIn } from '../fields.js';
import { inputsKey, keep, linkKey, recall } from '../memory.js';
import { RECORDS, inputsName } from '../opened.js';
import { draft, keepDraft } from './database.js';

const SOON_MS = 400;
let timer = 0;
/** What the form was opened with: a draft is of that, and of nothing else. */
let search = '';
/** @param {string} name */
const typedAtKey = name => `typed-at:${name}`;

export function keepDrafts() {
  const form = document.querySelector('form[data-calculator]');
  const calculator = form instanceof HTMLFormElement ? (form.dataset.calculator ?? '') : '';
  if (!(form instanceof HTMLFormElement && RECORDS.includes(calculator))) return;
  search = location.search;
  const opened = filledIn(form);
  let last = opened;
  let at = 0;
  const write = () => {
    window.clearTimeout(timer);
    timer = 0;
    // What this browser refuses to store is in its other memory at least.
    keepDraft(inputsKey(inputsName(calculator)), { typed: last, at, search }).catch(() => {});
  };
  const typed = () => {
    const now = filledIn(form);
    if (now === last) return; // the page only asked anew
    last = now;
    at = Date.now();
    if (isOwn()) keep(typedAtKey(calculator), String(at));
    timer ||= window.setTimeout(write, SOON_MS);
  };
  /** Whether what is typed is of this form alone, and of no record that is there already. */
  const isOwn = () => inputsName(calculator) === calculator;
  for (const type of ['input', 'change']) form.addEventListener(type, typed);
  const leave = () => timer && write();
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', leave);
  // A form that opens with numbers from elsewhere keeps them, unless they are those that were being changed.
  if (isOwn() && search !== '') return;
  draft(inputsKey(inputsName(calculator)))
    .then(found => {
      if (last !== opened || !found?.typed || (found.search ?? '') !== search) return;
      if (isOwn() && found.at <= Number(recall(typedAtKey(calculator)))) return;
      fillIn(form, found.typed);
      form.dispatchEvent(new Event('change', { bubbles: true }));
    })
    .catch(() => {});
}

/** What was typed is kept as a record now. @param {string} name as inputsName gives it @param {string} [from] what the record opens its form with from now on */
export async function forgetDraft(name, from = search) {
  search = from;
  window.clearTimeout(timer);
  timer = 0;
  keep(inputsKey(name), null);
  keep(linkKey(name), null);
  await keepDraft(inputsKey(name), undefined);
}
