// @ts-check
// What a paper has to say beside what was typed: whether a qualification has run out, what was changed after a signature.
import { bodyOf } from './revision.js';
import { cardsOf } from './typed.js';

/** @typedef {import('./revision.js').Revision} Revision */
/** @typedef {Record<string, string>} Fields */

/** The last day that a date as it was typed names, as yyyy-mm-dd; undefined for what can be read in two ways or in none. @param {string | undefined} text */
export function dayOf(text) {
  const typed = (text ?? '').trim();
  if (/^\d{4}-\d{2}-\d{2}$/.test(typed)) return day(`${typed}T12:00:00Z`) === typed ? typed : undefined;
  // A month in letters and a year of four figures: 06/07/26 is two days.
  return /[a-z]{3}/i.test(typed) && /\b\d{4}\b/.test(typed) && /\b\d{1,2}\b/.test(typed) ? day(`${typed} 12:00 UTC`) : undefined;
}

/** @param {string} text */
function day(text) {
  const time = new Date(text);
  return Number.isNaN(time.getTime()) ? undefined : time.toISOString().slice(0, 10);
}

/** In front of the names of the fields that a signature on a paper is kept in: the sheet's are the job's own. @param {string} paper */
export const signedOn = paper => (paper === 'sheet' ? '' : `${paper}.`);

/** What may be another after a signature without what was signed being another. */
const BESIDE = /^(status|closed_at|photos|spool|cylinder|demo|copied_from|units|price\.paid)$|(^|\.)(signature|signed_by|signed_at|shown|shown_verdict|shown_language)$/;
/** What is no part of the job's sheet. */
const OF_PRICE = /^price\.|^card_price/;

/**
 * Which fields are others now than when a paper was signed; none if it never was. What the cards said then counts too: a
 * later build may work out another number from the same words.
 * @param {Revision[]} all the record's revisions @param {Fields} now @param {string} [on] as signedOn has it @returns {string[]}
 */
export function changedSinceSigned(all, now, on = '') {
  const at = now[`${on}signed_at`];
  if (!at) return [];
  const signed = all
    .map(each => ({ saved: each.saved_at, fields: bodyOf(each)?.fields ?? {} }))
    .filter(each => each.fields[`${on}signed_at`] === at)
    .sort((one, other) => (one.saved < other.saved ? -1 : 1))[0]?.fields;
  if (!signed) return [];
  const names = new Set([...Object.keys(signed), ...Object.keys(now)]);
  return [...names].filter(name => !BESIDE.test(name) && !(on === '' && OF_PRICE.test(name)) && said(name, signed) !== said(name, now));
}

/** What was paid is no part of what was agreed. @param {string} name @param {Fields} fields */
function said(name, fields) {
  const text = fields[name] ?? '';
  if (!name.startsWith('card_')) return text;
  const [card] = cardsOf({ [name]: text });
  return JSON.stringify(card?.lines.filter(([key]) => key !== 'paid' && key !== 'due') ?? text);
}
