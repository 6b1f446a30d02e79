// @ts-check
// Which spool and which cylinder of the truck a weld or a job is about: chosen on its form, filled in from there, kept
// with it. The last ones chosen stand there again.
import { keep, recall } from '../memory.js';
import { openedFor } from '../opened.js';
import { page, row } from './database.js';
import { remainder, shownAmount } from './stock.js';

/** @typedef {import('./database.js').Row} Row */
const MOST = 100;
const ITEMS = ['spool', 'cylinder'];
/** What an item says that a form asks for under this name; a `!` overwrites: how much is left is known better now. */
const FILLS = {
  spool: ['wire_class', 'wire_material', 'wire_diameter', 'spool_left!'],
  cylinder: ['gas', 'carbon_dioxide', 'gas_used', 'gas_left!'],
};
const lastKey = (/** @type {string} */ item) => `last:${item}`;

export async function offerStock() {
  const place = document.querySelector('[data-stock-choice]');
  const form = document.querySelector('form[data-calculator]');
  if (!(place instanceof HTMLElement && form instanceof HTMLFormElement)) return;
  const { correct, job } = openedFor();
  const of = (await row(correct || job).catch(() => undefined))?.fields ?? {};
  const isDemo = Boolean(of.demo);
  const note = place.querySelector('[data-demo-form]');
  if (note instanceof HTMLElement) note.hidden = !isDemo;
  for (const item of ITEMS) {
    const select = place.querySelector(`[data-stock=${item}]`);
    if (!(select instanceof HTMLSelectElement)) continue;
    const rows = (await page({ kind: 'stock', by: 'item', value: item, most: MOST })).filter(each => Boolean(each.fields.demo) === isDemo);
    /** @type {Map<string, { row: Row, left: number | undefined }>} */
    const known = new Map();
    for (const each of rows) {
      const found = await remainder(each);
      known.set(each.id, { row: each, left: found?.left });
      const left = found ? `, ${shownAmount(found.left, found.unit, each.fields, place.dataset).split(' (')[0]}` : '';
      select.append(new Option(`${each.fields.name || each.id.slice(0, 8)}${left}`, each.id));
    }
    const field = select.closest('.field');
    if (field instanceof HTMLElement) field.hidden = rows.length === 0;
    // A record that is there already says which it was, if any; a new one starts with the last that was chosen.
    const before = correct ? of[item] : of[item] || (isDemo ? '' : recall(lastKey(item)));
    if (before && known.has(before)) select.value = before;
    /** @param {boolean} now whether what is left is asked for anew */
    const chosen = now => {
      const found = known.get(select.value);
      if (found) fillFrom(form, item, found, now, place.dataset);
    };
    select.addEventListener('change', () => {
      if (!isDemo) keep(lastKey(item), select.value || null);
      chosen(true);
    });
    if (!correct) chosen(false);
  }
}

/** @param {HTMLFormElement} form @param {string} item @param {{ row: Row, left: number | undefined }} found @param {boolean} now @param {DOMStringMap} factors */
function fillFrom(form, item, { row: { fields }, left }, now, factors) {
  /** @type {Record<string, string>} */
  const known = { ...fields, gas_used: fields.gas_words ?? '' };
  // In the units that it was counted in, as whoever counted it thinks of it.
  const typed = shownAmount(left ?? 0, item === 'spool' ? 'kg' : 'L', fields, factors).split(' (')[0] ?? '';
  known[item === 'spool' ? 'spool_left' : 'gas_left'] = left === undefined || left <= 0 ? '' : typed.replace('\u00a0', ' ').replace('\u00b3', '3');
  let changed = false;
  for (const asked of FILLS[/** @type {'spool' | 'cylinder'} */ (item)]) {
    const name = asked.replace('!', '');
    if (known[name]) changed = fill(form, name, known[name] ?? '', asked !== name && now) || changed;
  }
  if (changed) form.dispatchEvent(new Event('change', { bubbles: true }));
}

/** What stands in a box that was filled in from an item: another one may take its place. */
const FROM = 'fromStock';

/** Fill in a field of a form, never over what was typed. @param {HTMLFormElement} form @param {string} name @param {string} text @param {boolean} over @returns {boolean} whether it is another now */
export function fill(form, name, text, over) {
  const boxes = [...form.elements].filter(each => (each instanceof HTMLInputElement || each instanceof HTMLSelectElement) && each.name === name);
  const box = /** @type {HTMLInputElement | HTMLSelectElement | undefined} */ (boxes[0]);
  if (!box) return false;
  const radio = boxes.find(each => each instanceof HTMLInputElement && each.type === 'radio' && each.value === text);
  if (radio instanceof HTMLInputElement) {
    const isOther = !radio.checked;
    radio.checked = true;
    return isOther;
  }
  if (box instanceof HTMLSelectElement) {
    if (box.value === text || ![...box.options].some(each => each.value === text)) return false;
    box.value = text;
    return true;
  }
  if (box.type !== 'text') return false;
  const unit = form.elements.namedItem(`${name}_unit`);
  const cut = text.lastIndexOf(' ');
  const [number, sign] = unit instanceof HTMLSelectElement && cut > 0 ? [text.slice(0, cut), text.slice(cut + 1)] : [text, ''];
  if (box.value && !over && box.value !== box.dataset[FROM]) return false;
  if (unit instanceof HTMLSelectElement && sign) {
    if (![...unit.options].some(each => each.value === sign)) return false;
    unit.value = sign;
  }
  const isOther = box.value !== number;
  box.value = box.dataset[FROM] = number;
  return isOther;
}

/** What was chosen on the form, for the record that is kept; '' where none is. @returns {Record<string, string>} nothing if the form asks for none */
export function chosenStock() {
  /** @type {Record<string, string>} */
  const fields = {};
  for (const select of document.querySelectorAll('[data-stock]')) {
    if (select instanceof HTMLSelectElement && select.options.length > 1) fields[select.dataset.stock ?? ''] = select.value;
  }
  return fields;
}

/** What of a stock's form and answer is kept beside what was typed: how much there was, and what was chosen, in words. @param {ParentNode | null} answer @returns {Record<string, string>} */
export function countedStock(answer) {
  /** @type {Record<string, string>} */
  const fields = {};
  const left = resultOf(answer, 'wire_left') || resultOf(answer, 'gas_left');
  if (left) fields.left = left;
  if (!resultOf(answer, 'gas_left')) return fields;
  const gas = document.querySelector('form[data-calculator=stock] [name=gas]:is(select, :checked)');
  const words = gas instanceof HTMLSelectElement ? gas.selectedOptions[0]?.text : gas?.closest('label')?.textContent;
  if (words?.trim()) fields.gas_words = words.trim();
  return fields;
}

/** A number of an answer with its unit, each quantity in one. @param {ParentNode | null} answer @param {string} name */
export const resultOf = (answer, name) => new URLSearchParams(answer?.querySelector('[data-results]')?.getAttribute('data-results') ?? '').get(name) ?? '';
