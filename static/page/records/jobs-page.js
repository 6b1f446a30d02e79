// @ts-check
// The list of jobs: a page at a time from an index, open or closed, found by words; a new one like an old one.
import { keep, recall } from '../memory.js';
import { page, pageFound, waitingAmong, wordsIn } from './database.js';
import { USED } from './load.js';
import { shownTime } from './log-page.js';
import { cannotOpen, reason, whenExchanged } from './sending.js';
import { typedOf } from './typed.js';

/** @typedef {import('./database.js').Row} Row */
/** @typedef {import('./database.js').Waiting} Waiting */

const A_PAGE = 30;
const A_SCREEN = 6; // drawn first, so that a slow phone shows something soon
const PAUSE_MS = 150;

/** What was of one call, and is no start for the next one. */
const OF_ONE_CALL = ['customer', 'place', 'site_rules', 'not_done', 'spool_left', 'gas_left'];

/** A new job that starts as another one did. @param {Row} row */
export function againAddress(row) {
  const typed = Object.entries(typedOf(row.fields)).filter(([name]) => !OF_ONE_CALL.includes(name));
  return `job?${new URLSearchParams(typed)}#copy=${row.id}`;
}

/** The form of a job as it stands, or with some fields changed. @param {Row} row @param {Record<string, string>} [changed] */
export const changeAddress = (row, changed = {}) => `job?${new URLSearchParams({ ...typedOf(row.fields), ...changed })}#correct=${row.id}&rev=${row.rev}`;

/** Where a record stands: a demo, open or closed, on the phone or on the server, alone or beside another version. @param {HTMLElement} said @param {Row} row @param {Waiting | undefined} waits */
export function stateOf(said, row, waits) {
  const { dataset } = said;
  const words = waits ? (waits.problem ? dataset.needsYou : dataset.phone) : dataset.server;
  const status = row.fields.status === 'closed' ? dataset.closed : dataset.open;
  const parts = row.fields.demo ? [dataset.mark, status] : [status, [words, waits?.problem].filter(Boolean).join(' ')];
  return [...parts, row.versions > 1 ? dataset.versions : '', row.newer ? dataset.newer : ''].filter(Boolean).join(' \u00b7 ');
}

/** What the list shows first where nothing is looked for. */
export const firstJobs = () => withWaits(page({ kind: 'job', most: A_SCREEN }));

/** @param {Promise<Row[]>} asked */
async function withWaits(asked) {
  const rows = await asked;
  return { rows, waits: await waitingAmong(rows) };
}

/** @param {ReturnType<typeof firstJobs>} [early] what was asked for before the frame was there */
export function showJobs(early) {
  const jobs = document.querySelector('[data-jobs]');
  if (!(jobs instanceof HTMLElement)) return;
  jobs.hidden = false;
  /** @template {Element} T @param {string} selector @returns {T} */
  const part = selector => /** @type {T} */ (jobs.querySelector(selector));
  /** @type {HTMLElement} */
  const list = part('[data-rows]');
  /** @type {HTMLButtonElement} */
  const more = part('[data-more]');
  /** @type {HTMLInputElement} */
  const find = part('[data-find]');
  /** @type {HTMLSelectElement} */
  const status = part('[data-status]');
  const first = part('[data-pattern]');
  const pattern = first instanceof HTMLTemplateElement ? first.content.firstElementChild : null;
  /** @type {Row | undefined} */
  let before;
  let asked = 0;
  let pause = 0;

  /** @param {number} turn @param {number} most */
  const add = async (turn, most) => {
    const words = wordsIn(find.value);
    const wanted = { kind: 'job', most, before, by: status.value && 'status', value: status.value };
    const ready = words.length || status.value ? undefined : early;
    early = undefined;
    const { rows, waits } = await (ready ?? withWaits(words.length ? pageFound({ ...wanted, words }) : page(wanted)));
    if (turn !== asked || !pattern) return 0;
    const lines = rows.map((row, place) => line(/** @type {HTMLElement} */ (pattern.cloneNode(true)), row, waits[place]));
    if (before === undefined) list.replaceChildren();
    list.append(...lines);
    before = rows.at(-1) ?? before;
    if (before && !recall(USED)) keep(USED, 'yes');
    more.hidden = rows.length < most;
    const none = list.childElementCount === 0;
    part('[data-none-found]').toggleAttribute('hidden', !none || !(words.length || status.value));
    part('[data-empty]').toggleAttribute('hidden', !none || Boolean(words.length || status.value));
    return rows.length;
  };
  const fresh = async () => {
    before = undefined;
    const turn = ++asked;
    if ((await add(turn, A_SCREEN)) < A_SCREEN) return;
    await new Promise(drawn => requestAnimationFrame(() => setTimeout(drawn)));
    if (turn === asked) await add(turn, A_PAGE - A_SCREEN);
  };
  // What is looked for stands here again after a step back, whichever way the list is opened then.
  const show = () => {
    window.clearTimeout(pause); // a second drawing would take the list away from under the finger
    history.replaceState({ ...history.state, find: find.value, status: status.value }, '');
    fresh().catch(cannotOpen);
  };
  find.value = history.state?.find ?? find.value;
  status.value = history.state?.status ?? status.value;
  more.addEventListener('click', () => add(++asked, A_PAGE).catch(cannotOpen));
  status.addEventListener('change', show);
  find.addEventListener('input', () => {
    window.clearTimeout(pause);
    pause = window.setTimeout(show, PAUSE_MS);
  });
  // What a phone new in the crew is given comes after the page: an empty list looks again.
  whenExchanged(() => {
    if (!list.childElementCount && !reason && !find.value) show();
  }, list);
  show();
}

/** @param {HTMLElement} item @param {Row} row @param {Waiting | undefined} waits */
function line(item, row, waits) {
  const [what, shown, details, said] = ['.what', '.number', '.details', '.state'].map(each => /** @type {HTMLElement} */ (item.querySelector(each)));
  const [open, again] = ['a[data-open]', '[data-again]'].map(each => /** @type {HTMLAnchorElement} */ (item.querySelector(each)));
  if (!(what && shown && details && said && open && again)) return item;
  const { fields } = row;
  what.textContent = fields.title || row.id.slice(0, 8);
  shown.textContent = fields.shown ?? '';
  details.textContent = [shownTime(row.at), fields.customer, fields.place].filter(Boolean).join(' \u00b7 ');
  said.textContent = stateOf(said, row, waits);
  open.href = `work#${row.id}`;
  again.href = againAddress(row);
  again.hidden = row.newer;
  return item;
}
