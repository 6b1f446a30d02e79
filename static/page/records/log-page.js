// @ts-check
// The list of what was run: a page at a time from an index, narrowed, sent, exported.
import { keep, recall } from '../memory.js';
import { allPhotos, everything, fact, page, store, waitingAmong } from './database.js';
import { csvOf, exported, imported } from './file.js';
import { USED } from './load.js';
import { isWhole, watchNarrowing } from './looking-back.js';
import { cannotOpen, count, exchangeNow, reason, whenExchanged } from './sending.js';
import { typedOf } from './typed.js';
import { PAIRED } from './unsent.js';

const A_PAGE = 30;
const A_SCREEN = 8; // drawn first, so that a slow phone shows something soon

/** @typedef {import('./database.js').Row} Row */

/** The address that fills the form in from an entry. @param {Row} row @param {string} [hash] */
export function formAddress(row, hash = '') {
  return `weld-entry?${new URLSearchParams(typedOf(row.fields))}${hash || (row.fields.job_id ? `#job=${row.fields.job_id}` : '')}`;
}

/** What was measured on one pass and is no start for the next; what was set, its feed and gas flow, is. */
const OF_ONE_PASS = ['voltage', 'current', 'arc_time', 'weld_length', 'travel_speed', 'preheat_measured', 'interpass_measured', 'visual_result', 'repair', 'notes'];

/** @param {Row} row */
export const repeatAddress = row =>
  formAddress(
    { ...row, fields: Object.fromEntries(Object.entries(row.fields).filter(([name]) => !OF_ONE_PASS.includes(name))) },
    `#copy=${row.id}${row.fields.job_id ? `&job=${row.fields.job_id}` : ''}`,
  );

/** Made once: making it costs more than using it on a whole page of rows. @type {Intl.DateTimeFormat | undefined} */
let times;

/** @param {string} at */
export const shownTime = at => {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return at;
  times ??= new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: 'medium', timeStyle: 'short' });
  return times.format(time);
};

/** The newest rows, and which of them wait to be sent. */
export const firstRows = () => (isWhole() ? withWaits({ kind: 'weld-entry', most: A_SCREEN }) : Promise.resolve(undefined));

/** @param {Parameters<typeof page>[0]} asked */
async function withWaits(asked) {
  const rows = await page(asked);
  return { rows, waits: await waitingAmong(rows) };
}

/** @param {ReturnType<typeof firstRows> | undefined} early what was asked for before the frame was there */
export async function showLog(early) {
  const log = document.querySelector('[data-log]');
  if (!(log instanceof HTMLElement)) return;
  log.hidden = false;
  /** @template {HTMLElement} T @param {string} selector @returns {T} */
  const part = selector => /** @type {T} */ (log.querySelector(selector));
  const list = part('[data-rows]');
  const more = /** @type {HTMLButtonElement} */ (part('[data-more]'));
  const pattern = /** @type {HTMLTemplateElement} */ (/** @type {unknown} */ (part('[data-pattern]')));
  /** @type {() => Partial<import('./database.js').Asked>} */
  let chosen = () => ({});
  /** @type {Row | undefined} */
  let before;
  let asked = 0;

  /** @param {Row} row @param {import('./database.js').Waiting | undefined} waits */
  const line = (row, waits) => {
    const item = /** @type {HTMLElement} */ (/** @type {Element} */ (pattern.content.firstElementChild).cloneNode(true));
    fill(item, row, waits ? (waits.problem ? 'needs-you' : 'phone') : 'server', waits?.problem ?? '');
    return item;
  };
  const show = async () => {
    const turn = ++asked;
    const first = before === undefined;
    if (!first) await add(turn, A_PAGE);
    else if ((await add(turn, A_SCREEN)) === A_SCREEN) {
      requestAnimationFrame(() => setTimeout(() => turn === asked && add(turn, A_PAGE - A_SCREEN).catch(cannotOpen)));
    }
  };
  /** @param {number} turn @param {number} most */
  const add = async (turn, most) => {
    const ready = early;
    early = undefined;
    const { rows, waits } = (await ready) ?? (await withWaits({ kind: 'weld-entry', most, before, ...chosen() }));
    if (turn !== asked) return 0;
    const lines = rows.map((row, place) => line(row, waits[place]));
    if (before === undefined) list.replaceChildren();
    list.append(...lines);
    before = rows.at(-1) ?? before;
    if (before && !recall(USED)) keep(USED, 'yes');
    more.hidden = rows.length < most;
    part('[data-empty]').hidden = list.childElementCount > 0;
    return rows.length;
  };
  const fresh = () => {
    before = undefined;
    return show().catch(cannotOpen);
  };
  more.addEventListener('click', () => show().catch(cannotOpen));
  part('[data-send]').addEventListener('click', () => exchangeNow(true).then(fresh));
  // What a phone new in the crew is given comes after the page: an empty list looks again.
  whenExchanged(() => {
    if (!list.childElementCount && !reason) fresh();
  }, list);
  watchFiles(log, fresh);
  if (isWhole()) await fresh();
  chosen = await watchNarrowing(log, fresh);
  if (!isWhole()) await fresh();
  watchState(part('[data-exchange]'));
  sayWhetherItStays(part('[data-persist]'));
}

/** @param {HTMLElement} item @param {Row} row @param {string} state @param {string} problem */
function fill(item, row, state, problem) {
  const [what, shown, details, said] = ['.what', '.number', '.details', '.state'].map(each => /** @type {HTMLElement} */ (item.querySelector(each)));
  if (!what || !shown || !details || !said) return;
  const { fields } = row;
  what.textContent = [fields.joint, fields.weld_pass].filter(Boolean).join(', ') || row.id.slice(0, 8);
  // Two entries may be of different kinds, and the same number then means another heat.
  const kind = /\d/.test(fields.shown ?? '') ? (fields.limit_basis === 'arc-energy' ? shown.dataset.arcEnergy : shown.dataset.heatInput) : '';
  shown.textContent = fields.shown ?? '';
  if (kind) shown.append(' ', Object.assign(document.createElement('small'), { textContent: kind }));
  const looked = details.dataset[fields.visual_result ?? ''];
  details.textContent = [shownTime(row.at), fields.shown_verdict, looked, fields.thickness, fields.voltage, fields.current, fields.wire_feed_speed, fields.wire_class, fields.gas_used, fields.job]
    .filter(Boolean)
    .join(' \u00b7 ');
  const words = { phone: said.dataset.phone, 'needs-you': said.dataset.needsYou, server: said.dataset.server }[state] ?? '';
  const beside = row.versions > 1 ? said.dataset.versions : '';
  said.textContent = [fields.demo ? said.dataset.mark : words, problem, beside, row.newer ? said.dataset.newer : ''].filter(Boolean).join(' ');
  const repeat = item.querySelector('[data-repeat]');
  const open = item.querySelector('[data-open]');
  if (repeat instanceof HTMLAnchorElement) {
    repeat.href = repeatAddress(row);
    repeat.hidden = row.newer;
  }
  if (open instanceof HTMLAnchorElement) open.href = `entry#${row.id}`;
}

/** @param {HTMLElement} shown */
function watchState(shown) {
  const say = async () => {
    const left = await count().catch(() => -1);
    if (left < 0) return void (shown.textContent = shown.dataset.store ?? '');
    if (!recall(PAIRED)) return void (shown.textContent = shown.dataset.alone ?? '');
    if (reason === 'sending') return void (shown.textContent = shown.dataset.sending ?? '');
    const why = shown.dataset[reason.replace(/-(.)/g, (_, letter) => letter.toUpperCase())] ?? '';
    const here = (left ? shown.dataset.waiting : shown.dataset.none)?.replace('#', String(left)) ?? '';
    shown.textContent = `${here} ${why}`.trim();
  };
  whenExchanged(say, shown);
  say();
}

/** @param {HTMLElement} said */
async function sayWhetherItStays(said) {
  const kept = await navigator.storage?.persisted?.().catch(() => undefined);
  const answered = await fact('persist').catch(() => undefined);
  said.textContent = (kept ? said.dataset.yes : kept === false || answered === false ? said.dataset.no : said.dataset.unknown) ?? '';
}

/**
 * Listens before anything is waited for: a file chosen while the rows are still being read must not be lost.
 *
 * @param {HTMLElement} log @param {() => void} fresh
 */
function watchFiles(log, fresh) {
  log.querySelector('[data-export]')?.addEventListener('click', async () => {
    offerFile('puddlebook-log.json', await exported(await everything(), await allPhotos()), 'application/json');
  });
  log.querySelector('[data-csv]')?.addEventListener('click', async () => offerFile('puddlebook-log.csv', csvOf(await everything()), 'text/csv'));
  const said = log.querySelector('[data-import-said]');
  log.querySelector('[data-import]')?.addEventListener('change', async event => {
    const file = event.target instanceof HTMLInputElement ? event.target.files?.[0] : undefined;
    if (!file || !(said instanceof HTMLElement)) return;
    const taken = await imported(await file.text(), store).catch(() => -1);
    said.textContent = ((taken < 0 ? said.dataset.spoilt : said.dataset.done) ?? '').replace('#', String(taken));
    await count();
    fresh();
  });
}

/** @param {string} name @param {string} text @param {string} type */
function offerFile(name, text, type) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
