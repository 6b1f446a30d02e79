// @ts-check
// The demo: invented jobs, welds and stock, made by asking the book itself; never in the outbox, never in an export, and
// taken away without a trace.
import { keep, recall } from '../memory.js';
import { store, using } from './database.js';
import { demoRecords } from './demo-truck.js';
import { SCHEMA, bodyText, isDemo, named } from './revision.js';
import { resultOf } from './stock-choice.js';
import { cardsShown, languageShown } from './typed.js';

/** @typedef {import('./revision.js').Revision} Revision */
const DAY_MS = 86_400_000;

export function offerDemo() {
  for (const place of document.querySelectorAll('[data-demo]')) {
    if (place instanceof HTMLElement) offer(place);
  }
}

/** @param {HTMLElement} place */
function offer(place) {
  const [load, remove, said] = ['[data-demo-load]', '[data-demo-remove]', '[data-demo-said]'].map(each => place.querySelector(each));
  if (!(load instanceof HTMLButtonElement && remove instanceof HTMLButtonElement && said instanceof HTMLElement)) return;
  const show = async () => {
    const here = (await demoRows().catch(() => [])).length > 0;
    load.hidden = here;
    remove.hidden = !here;
    said.textContent = (here && said.dataset.here) || '';
  };
  load.addEventListener('click', async () => {
    load.disabled = true;
    said.textContent = said.dataset.loading ?? '';
    try {
      await loadDemo(new Date());
      location.reload();
    } catch {
      said.textContent = said.dataset.failed ?? '';
    }
    load.disabled = false;
  });
  remove.addEventListener('click', async () => {
    await removeDemo();
    location.reload();
  });
  show();
}

/** @returns {Promise<import('./database.js').Row[]>} */
export const demoRows = () => using(found => found.getAllFromIndex('rows', 'demo', 'yes'));

/** Ask the book, as a form does. @typedef {(address: string) => Promise<ParentNode>} Ask */

/** @type {Ask} */
async function ask(address) {
  const reply = await fetch(address, { headers: { 'HX-Request': 'true' } });
  const made = new DOMParser().parseFromString(await reply.text(), 'text/html');
  if (!reply.ok) throw new Error(address);
  return made;
}

/** Put the demo on this phone: all of it or nothing. @param {Date} now @param {Ask} [asking] */
export async function loadDemo(now, asking = ask) {
  const device = crypto.randomUUID();
  /** @type {Revision[]} */
  const revisions = [];
  const records = demoRecords();
  const ids = new Map(records.map(each => [each.key, crypto.randomUUID()]));
  const build = document.querySelector('.build code')?.textContent ?? 'demo';
  for (const [place, record] of records.entries()) {
    const answer = await asking(`${record.kind}?${new URLSearchParams(record.typed)}`);
    const at = new Date(now.getTime() - record.days * DAY_MS - (records.length - place) * 60_000).toISOString();
    /** @type {Record<string, string>} */
    const fields = { ...record.typed, ...shown(answer), demo: 'yes' };
    for (const [name, key] of Object.entries(record.of ?? {})) fields[name] = ids.get(key) ?? '';
    if (record.kind === 'weld-entry') fields.welded_at = at;
    if (record.kind === 'stock') fields.counted_at = at;
    Object.assign(fields, record.beside?.(at));
    for (const part of record.parts ?? []) {
      const priced = await asking(`${part.calculator}?${new URLSearchParams(part.typed)}`);
      for (const [name, text] of Object.entries({ ...part.typed, ...shown(priced) })) fields[name.startsWith('card_') ? name : part.prefix + name] = text;
    }
    const body = bodyText({ kind: record.kind, schema: SCHEMA, build, fields });
    revisions.push(await named({ id: ids.get(record.key) ?? '', parents: [], device, seq_on_device: place + 1, saved_at: at, deleted: false, body }));
  }
  await store(revisions, false);
}

/** What an answer says, as the fields of a record keep it. @param {ParentNode} answer @returns {Record<string, string>} */
function shown(answer) {
  /** @type {Record<string, string>} */
  const fields = { ...cardsShown(answer), ...languageShown() };
  for (const [name, selector] of [['shown', '.headline.answered .number'], ['shown_verdict', '.verdict']]) {
    const words = answer.querySelector(selector ?? '')?.textContent?.replace(/\s+/g, ' ').trim();
    if (name && words) fields[name] = words.slice(0, 400);
  }
  for (const [name, result] of [['used_wire', 'wire_used'], ['used_gas', 'gas_used_volume'], ['left', 'wire_left'], ['left', 'gas_left']]) {
    const amount = resultOf(answer, result ?? '');
    if (name && amount) fields[name] = amount;
  }
  return fields;
}

/** Take the demo away: every revision, row, photo and waiting entry of it, and what this browser remembers of it. */
export async function removeDemo() {
  /** @type {Set<string>} */
  const ids = new Set();
  const rows = await demoRows();
  await using(async found => {
    const writing = found.transaction(['revisions', 'rows', 'outbox', 'photos', 'drafts'], 'readwrite', { durability: 'strict' });
    for (const row of rows) {
      // What was ever anything else, and only says that it is of the demo, stays.
      const all = await writing.objectStore('revisions').getAll(IDBKeyRange.bound([row.id], [row.id, []]));
      if (!all.every(isDemo)) continue;
      ids.add(row.id);
      await writing.objectStore('revisions').delete(IDBKeyRange.bound([row.id], [row.id, []]));
      await writing.objectStore('rows').delete(row.id);
      for (const name of (row.fields.photos ?? '').split(' ').filter(Boolean)) await writing.objectStore('photos').delete(name);
    }
    for (let cursor = await writing.objectStore('outbox').openCursor(); cursor; cursor = await cursor.continue()) {
      if (ids.has(cursor.value.id)) await cursor.delete();
    }
    for (const key of await writing.objectStore('drafts').getAllKeys()) {
      if ([...ids].some(id => String(key).includes(id))) await writing.objectStore('drafts').delete(key);
    }
    await writing.done;
  });
  for (const key of Object.keys(localStorage)) {
    if ([...ids].some(id => key.includes(id) || recall(key) === id)) keep(key, null);
  }
}
