// @ts-check
// What is left on the truck: what was counted, less what the welds since then used. Nothing is written when a weld is
// kept: the sum is made anew each time, so that a correction or a deletion puts back what it took.
import { since } from './database.js';

/** @typedef {import('./database.js').Row} Row */
/** @typedef {{ unit: 'kg' | 'L', counted: number, used: number, left: number, entries: Row[], unknown: number }} Remainder
 *   `entries` are the welds since the count, the newest first; `unknown` is how many of them do not say what they used */

/** Which field of a weld says what it took from it, and in which unit. @type {Record<string, { used: string, unit: 'kg' | 'L' }>} */
const USES = { spool: { used: 'used_wire', unit: 'kg' }, cylinder: { used: 'used_gas', unit: 'L' } };
const OF_US = /\d (?:lb|oz|psi|ft3|in|kft)$/;

/** What a kept amount says, in the unit that such amounts are kept in. @param {string | undefined} text @param {'kg' | 'L'} unit @returns {number | undefined} */
export function amountOf(text, unit) {
  const found = /^(\d+(?:\.\d+)?) (kg|L)$/.exec(text ?? '');
  return found && found[2] === unit ? Number(found[1]) : undefined;
}

/** @param {Row[]} entries @param {string} item @returns {{ used: number, unknown: number }} */
export function taken(entries, item) {
  const use = USES[item];
  const amounts = use ? entries.map(each => amountOf(each.fields[use.used], use.unit)) : [];
  return {
    used: amounts.reduce((/** @type {number} */ sum, each) => sum + (each ?? 0), 0),
    unknown: amounts.filter(each => each === undefined).length,
  };
}

/** What is left of a spool or a cylinder, or undefined of anything else and of what was never counted. @param {Row} row @returns {Promise<Remainder | undefined>} */
export async function remainder(row) {
  const item = row.fields.item ?? '';
  const use = USES[item];
  const counted = use && amountOf(row.fields.left, use.unit);
  if (!use || counted === undefined) return undefined;
  const entries = await since({ kind: 'weld-entry', by: item, value: row.id, from: row.fields.counted_at ?? row.at });
  const { used, unknown } = taken(entries, item);
  return { unit: use.unit, counted, used, left: counted - used, entries, unknown };
}

/**
 * An amount for the eye, in the system that the item was typed in.
 * @param {number} amount @param {'kg' | 'L'} unit @param {Record<string, string>} fields of the item
 * @param {DOMStringMap} factors `kg` pounds in one kilogram, `l` cubic feet in one litre, as the units' own table has them
 */
export function shownAmount(amount, unit, fields, factors) {
  const si = `${figures(amount)}\u00a0${unit}`;
  const [factor, sign] = unit === 'kg' ? [Number(factors.kg), 'lb'] : [Number(factors.l), 'ft\u00b3'];
  const us = `${figures(amount * factor)}\u00a0${sign}`;
  return Object.values(fields).some(text => OF_US.test(text)) ? `${us} (${si})` : `${si} (${us})`;
}

/** Three figures, as a scale and a gauge give them; no power of ten. @param {number} amount */
const figures = amount => String(Number(amount.toPrecision(3))).replace('-', '\u2212');
