// @ts-check
// Everything as one file, and back again byte for byte.
import { everything, keepPhoto } from './database.js';
import { bodyOf, heads, isDemo, revisionName } from './revision.js';
import { cardsOf } from './typed.js';

/** @typedef {import('./revision.js').Revision} Revision */
const MARK = 'puddlebook-log';

/** @param {Revision[]} revisions @param {[string, Blob][]} photos */
export async function exported(revisions, photos) {
  const kept = await Promise.all(photos.map(async ([id, blob]) => ({ id, type: blob.type, base64: await base64(blob) })));
  return JSON.stringify({ [MARK]: 1, revisions, photos: kept });
}

/**
 * Take a file in; return how many of its revisions were new.
 * @param {string} text @param {(revisions: Revision[], ours: boolean) => Promise<unknown>} store
 */
export async function imported(text, store) {
  const file = JSON.parse(text);
  if (file?.[MARK] !== 1 || !Array.isArray(file.revisions)) throw new Error('no export');
  for (const each of file.revisions) if ((await revisionName(each)) !== each.rev) throw new Error('damaged');
  const known = new Set((await everything()).map(each => each.id + each.rev));
  const fresh = file.revisions.filter((/** @type {Revision} */ each) => !known.has(each.id + each.rev) && !isDemo(each));
  for (const photo of file.photos ?? []) await keepPhoto(photo.id, await blobOf(photo));
  await store(fresh, true);
  return fresh.length;
}

/** @param {Blob} blob */
async function base64(blob) {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}

/** @param {{ type: string, base64: string }} photo */
async function blobOf(photo) {
  return new Blob([Uint8Array.from(atob(photo.base64), each => each.charCodeAt(0))], { type: photo.type });
}

/** In front in every table; the other names follow in the order of the alphabet. */
const FIRST = ['kind', 'id', 'rev', 'welded_at', 'joint', 'weld_pass', 'title', 'status', 'item', 'name'];
/** A drawing made of numbers, for no eye. */
const NOT_IN_TABLE = ['signature'];

/**
 * Every record that is not deleted as a row of a table, weld entries, jobs and stock, told apart by `kind`; a cell that a
 * spreadsheet would reckon with is made text.
 * @param {Revision[]} revisions
 */
export function csvOf(revisions) {
  /** @type {Map<string, Revision[]>} */
  const byId = new Map();
  for (const each of revisions) byId.set(each.id, [...(byId.get(each.id) ?? []), each]);
  /** @type {Record<string, string>[]} */
  const rows = [...byId.values()].flatMap(all => {
    const first = heads(all)[0];
    const body = first && !first.deleted ? bodyOf(first) : null;
    return first && body ? [{ kind: body.kind, id: first.id, rev: first.rev, ...Object.fromEntries(Object.entries(body.fields).map(readable)) }] : [];
  });
  /** @param {Record<string, string>} row */
  const order = row => `${row.kind} ${row.welded_at ?? ''} ${row.id}`;
  rows.sort((one, other) => (order(one) < order(other) ? -1 : 1));
  const names = [...new Set([...FIRST, ...rows.flatMap(row => Object.keys(row)).sort()])].filter(name => !NOT_IN_TABLE.includes(name));
  const lines = [names, ...rows.map(row => names.map(name => row[name] ?? ''))];
  return lines.map(line => line.map(cell).join(',')).join('\r\n') + '\r\n';
}

/** A card of an answer as words: `label: value; label: value`. @param {[string, string]} field @returns {[string, string]} */
function readable([name, text]) {
  if (!name.startsWith('card_')) return [name, text];
  const [card] = cardsOf({ [name]: text });
  return [name, card ? card.lines.map(([, label, value]) => `${label}: ${value}`).join('; ') : text];
}

/** @param {string} text */
function cell(text) {
  const inert = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}
