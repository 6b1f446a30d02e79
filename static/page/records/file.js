// @ts-check
// Everything as one file, and back again byte for byte.
import { everything, keepPhoto } from './database.js';
import { bodyOf, heads, revisionName } from './revision.js';

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
  const fresh = file.revisions.filter((/** @type {Revision} */ each) => !known.has(each.id + each.rev));
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

/** Every entry that is not deleted as a row of a table; a cell that a spreadsheet would reckon with is made text. @param {Revision[]} revisions */
export function csvOf(revisions) {
  /** @type {Map<string, Revision[]>} */
  const byId = new Map();
  for (const each of revisions) byId.set(each.id, [...(byId.get(each.id) ?? []), each]);
  /** @type {Record<string, string>[]} */
  const rows = [...byId.values()].flatMap(all => {
    const first = heads(all)[0];
    const body = first && !first.deleted ? bodyOf(first) : null;
    return first && body ? [{ id: first.id, rev: first.rev, ...body.fields }] : [];
  });
  rows.sort((one, other) => ((one.welded_at ?? '') < (other.welded_at ?? '') ? -1 : 1));
  const names = [...new Set(['id', 'rev', 'welded_at', 'joint', 'weld_pass', ...rows.flatMap(row => Object.keys(row)).sort()])];
  const lines = [names, ...rows.map(row => names.map(name => row[name] ?? ''))];
  return lines.map(line => line.map(cell).join(',')).join('\r\n') + '\r\n';
}

/** @param {string} text */
function cell(text) {
  const inert = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(inert) ? `"${inert.replaceAll('"', '""')}"` : inert;
}
