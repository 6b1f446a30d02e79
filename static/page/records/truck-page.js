// @ts-check
// What is on board: by what it is, the newest first, what is left of it, and which welds ran it down.
import { page, revisionsOf, save, waitingAmong } from './database.js';
import { shownTime } from './log-page.js';
import { heads } from './revision.js';
import { cannotOpen, exchangeNow } from './sending.js';
import { remainder, shownAmount, amountOf } from './stock.js';
import { cardsOf, typedOf } from './typed.js';

/** @typedef {import('./database.js').Row} Row */
const A_PAGE = 20;
const MOST_WELDS = 10; // named of those that ran an item down; the log has them all
/** How much is there: counted anew, these are typed anew. */
const AMOUNTS = ['spool_left', 'cylinder_pressure', 'gas_mass'];

export function showTruck() {
  const truck = document.querySelector('[data-truck]');
  if (!(truck instanceof HTMLElement)) return;
  truck.hidden = false;
  const sections = /** @type {HTMLElement[]} */ ([...truck.querySelectorAll('[data-item]')]);
  const off = /** @type {HTMLButtonElement} */ (truck.querySelector('[data-deleted]'));
  const fresh = async () => {
    const deleted = off.getAttribute('aria-pressed') === 'true';
    const counts = await Promise.all(sections.map(section => fill(truck, section, deleted)));
    const empty = truck.querySelector('[data-empty]');
    if (empty instanceof HTMLElement) empty.hidden = counts.some(count => count > 0);
  };
  truck.addEventListener('changed', () => fresh().catch(cannotOpen));
  off.addEventListener('click', () => {
    off.setAttribute('aria-pressed', String(off.getAttribute('aria-pressed') !== 'true'));
    fresh().catch(cannotOpen);
  });
  fresh().catch(cannotOpen);
}

/** @param {HTMLElement} truck @param {HTMLElement} section @param {boolean} deleted @returns {Promise<number>} how many are shown */
async function fill(truck, section, deleted) {
  const list = /** @type {HTMLElement} */ (section.querySelector('[data-rows]'));
  const more = /** @type {HTMLButtonElement} */ (section.querySelector('[data-more]'));
  /** @type {Row | undefined} */
  let before;
  const add = async () => {
    const rows = await page({ kind: 'stock', by: 'item', value: section.dataset.item ?? '', most: A_PAGE, before, deleted });
    const waits = await waitingAmong(rows);
    const lines = await Promise.all(rows.map((row, place) => line(truck, row, waits[place])));
    if (before) list.append(...lines);
    else list.replaceChildren(...lines);
    before = rows.at(-1) ?? before;
    more.hidden = rows.length < A_PAGE;
    section.hidden = list.childElementCount === 0;
    return list.childElementCount;
  };
  more.onclick = () => add().catch(cannotOpen);
  return add();
}

/** @param {HTMLElement} truck @param {Row} row @param {import('./database.js').Waiting | undefined} waits */
async function line(truck, row, waits) {
  const pattern = /** @type {HTMLTemplateElement} */ (truck.querySelector('[data-pattern]'));
  const item = /** @type {HTMLElement} */ (/** @type {Element} */ (pattern.content.firstElementChild).cloneNode(true));
  /** @param {string} selector */
  const part = selector => /** @type {HTMLElement} */ (item.querySelector(selector));
  const { fields } = row;
  part('.what').textContent = fields.name || row.id.slice(0, 8);
  part('[data-details]').textContent = [fields.wire_class, fields.wire_diameter, fields.gas_words, fields.notes].filter(Boolean).join(' \u00b7 ');
  const used = await showLeft(truck, item, row);
  const state = part('.state');
  const words = state.dataset;
  const place = waits ? (waits.problem ? `${words.needsYou} ${waits.problem}` : words.phone) : words.server;
  state.textContent = [fields.demo ? words.mark : place, row.versions > 1 && words.versions, row.newer && words.newer, row.deleted && words.deleted].filter(Boolean).join('. ');
  const typed = typedOf(fields);
  const counted = Object.fromEntries(Object.entries(typed).filter(([name]) => !AMOUNTS.includes(name)));
  const here = `#correct=${row.id}&rev=${row.rev}`;
  const again = /** @type {HTMLAnchorElement} */ (part('[data-again]'));
  again.href = `stock?${new URLSearchParams(counted)}${here}&count=yes`;
  again.hidden = row.deleted || row.newer || !isCounted(fields);
  const correct = /** @type {HTMLAnchorElement} */ (part('[data-correct]'));
  correct.href = `stock?${new URLSearchParams(typed)}${here}`;
  correct.hidden = row.deleted || row.newer;
  /** @type {HTMLAnchorElement} */ (part('[data-open]')).href = `entry#${row.id}`;
  const lasts = /** @type {HTMLAnchorElement} */ (part('[data-lasts]'));
  lasts.href = `stock?${new URLSearchParams({ ...typed, ...used })}`;
  lasts.hidden = row.deleted || row.newer;
  const remove = /** @type {HTMLButtonElement} */ (part('[data-delete]'));
  const undo = /** @type {HTMLButtonElement} */ (part('[data-undo-delete]'));
  remove.hidden = row.deleted;
  undo.hidden = !row.deleted;
  for (const button of [remove, undo]) button.addEventListener('click', () => change(truck, row, button === remove).catch(cannotOpen));
  return item;
}

/** @param {Record<string, string>} fields */
const isCounted = fields => fields.item === 'spool' || fields.item === 'cylinder';

/** @param {HTMLElement} truck @param {HTMLElement} item @param {Row} row @returns {Promise<Record<string, string>>} what was used of it, as its own question asks for it */
async function showLeft(truck, item, row) {
  /** @param {string} selector */
  const part = selector => /** @type {HTMLElement} */ (item.querySelector(selector));
  const [shown, counted, meter, summary, unknown, list] = ['.number', '[data-count]', 'meter', 'summary', '[data-unknown]', '[data-used]'].map(part);
  if (!shown || !counted || !(meter instanceof HTMLMeterElement) || !summary || !unknown || !list) return {};
  const found = await remainder(row);
  const [can] = cardsOf(row.fields).flatMap(card => card.lines);
  shown.textContent = (isCounted(row.fields) ? shown.dataset.uncounted : can && `${can[1]}: ${can[2]}`) ?? '';
  if (!found) return {};
  /** @param {number} value */
  const amount = value => shownAmount(value, found.unit, row.fields, truck.dataset);
  const isShort = found.left < 0;
  shown.textContent = ((isShort ? shown.dataset.short : shown.dataset.left) ?? '').replace('#', amount(Math.abs(found.left)));
  counted.textContent = `${(counted.dataset.counted ?? '').replace('#', amount(found.counted))}, ${shownTime(row.fields.counted_at ?? row.at)}`;
  meter.hidden = false;
  meter.max = found.counted || 1;
  meter.value = Math.max(0, found.left);
  meter.setAttribute('aria-label', `${row.fields.name ?? ''} ${shown.textContent}`);
  const used = { [found.unit === 'kg' ? 'used_wire' : 'used_gas']: `${Number(found.used.toFixed(6))} ${found.unit}` };
  if (!found.entries.length) return used;
  summary.textContent = (summary.dataset.usedBy ?? '').replace('#', String(found.entries.length));
  unknown.hidden = found.unknown === 0;
  unknown.textContent = (unknown.dataset.unknown ?? '').replace('#', String(found.unknown));
  list.append(...found.entries.slice(0, MOST_WELDS).map(each => weld(each, found.unit, amount)));
  return used;
}

/** @param {Row} entry @param {'kg' | 'L'} unit @param {(amount: number) => string} shown */
function weld(entry, unit, shown) {
  const { fields } = entry;
  const used = amountOf(unit === 'kg' ? fields.used_wire : fields.used_gas, unit);
  const link = document.createElement('a');
  link.href = `entry#${entry.id}`;
  link.className = 'action';
  link.textContent = [[fields.joint, fields.weld_pass].filter(Boolean).join(', '), used === undefined ? '?' : shown(used), shownTime(entry.at)].join(' \u00b7 ');
  const item = document.createElement('li');
  item.append(link);
  return item;
}

/** @param {HTMLElement} truck @param {Row} row @param {boolean} deleted */
async function change(truck, row, deleted) {
  const found = heads(await revisionsOf(row.id));
  const leading = found[0];
  if (!leading) return;
  await save({ id: row.id, parents: found.map(each => each.rev), body: leading.body, deleted });
  truck.dispatchEvent(new Event('changed'));
  exchangeNow();
}
