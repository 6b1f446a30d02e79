// @ts-check
// What is typed into an entry and not kept yet, on the disk within a second. The browser's other memory (memory.js)
// reaches the disk only seconds later: a battery that dies would take it along.
import { fillIn } from '../fields.js';
import { inputsKey, keep, recall } from '../memory.js';
import { draft, keepDraft } from './database.js';

const CALCULATOR = 'weld-entry';
const SOON_MS = 400;
const TYPED_AT = `typed-at:${CALCULATOR}`;

export function keepDrafts() {
  const form = document.querySelector(`form[data-calculator=${CALCULATOR}]`);
  if (!(form instanceof HTMLFormElement)) return;
  const key = inputsKey(CALCULATOR);
  const opened = recall(key);
  let last = opened;
  let timer = 0;
  const write = () => {
    window.clearTimeout(timer);
    timer = 0;
    // What this browser refuses to store is in its other memory at least.
    keepDraft(key, { typed: recall(key), at: Number(recall(TYPED_AT)) }).catch(() => {});
  };
  const typed = () => {
    if (recall(key) === last) return; // the page only asked anew
    last = recall(key);
    keep(TYPED_AT, String(Date.now()));
    timer ||= window.setTimeout(write, SOON_MS);
  };
  for (const type of ['input', 'change']) form.addEventListener(type, typed);
  const leave = () => timer && write();
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', leave);
  if (location.search !== '') return;
  draft(key)
    .then(found => {
      if (last !== opened || !found?.typed || found.at <= Number(recall(TYPED_AT))) return;
      fillIn(form, found.typed);
      form.dispatchEvent(new Event('change', { bubbles: true }));
    })
    .catch(() => {});
}
