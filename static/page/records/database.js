// @ts-check
// The phone's own store of records: IndexedDB, written by pages alone, each write on the disk before it counts.
import { openDB } from 'idb';
import { bodyOf, heads, isDemo, kindOf, named } from './revision.js';
import { millimetres } from './thickness.js';

/**
 * @typedef {import('./revision.js').Revision} Revision
 * @typedef {{ id: string, kind: string, at: string, rev: string, versions: number, deleted: boolean, fields: Record<string, string>, newer: boolean, words: string[], thickness?: number }} Row
 *   a record as a list shows it: its leading revision, how many stand beside each other, and what it is found by
 * @typedef {{ number?: number, id: string, rev: string, problem: string }} Waiting
 * @typedef {import('idb').IDBPDatabase<any>} Database
 */

const NAME = 'puddlebook';
const VERSION = 2;
const LONGEST_WAIT_MS = 5000; // for a tab with an older version to let go
const STRICT = /** @type {const} */ ({ durability: 'strict' });
const ALL = ['revisions', 'rows', 'outbox', 'facts'];
export const DEVICE = 'device';

/** @type {Promise<Database> | undefined} */
let opened;
/** Whether an opening waits for a tab with an older version to let go: whatever is asked then has to be told so. */
let held = false;

/** @returns {Promise<Database>} */
function database() {
  if (held) return Promise.reject(heldByAnother());
  opened ??= open().catch(error => {
    opened = undefined;
    throw error;
  });
  return opened;
}

/** Have the store open before it is asked for anything; what goes wrong is told by whoever asks. */
export const warm = () => void database().catch(() => {});

/** @returns {Promise<Database>} */
function open() {
  return new Promise((done, fail) => {
    const wait = () => {
      held = true;
      fail(heldByAnother());
    };
    const timer = setTimeout(wait, LONGEST_WAIT_MS); // some browsers never say that it is held
    openDB(NAME, VERSION, {
      // A step for each version, from the one that is there; a step that changes what a body says makes the rows anew.
      upgrade(made, before, _after, upgrading) {
        if (before < 1) firstStores(made);
        if (before < 2) jobIndexes(upgrading.objectStore('rows'));
      },
      blocking: close, // a newer page waits: it must not wait for ever
      blocked: wait,
      terminated() {
        opened = undefined;
      },
    })
      .then(found => {
        if (held) opened = Promise.resolve(found);
        done(found);
      }, fail)
      .finally(() => {
        clearTimeout(timer);
        held = false;
      });
  });
}

const heldByAnother = () => new DOMException('held by another tab', 'VersionError');

/** @param {Database} made */
function firstStores(made) {
  made.createObjectStore('revisions', { keyPath: ['id', 'rev'] });
  const rows = made.createObjectStore('rows', { keyPath: 'id' });
  rows.createIndex('time', ['kind', 'at']);
  for (const name of ['job', 'joint', 'wire_class', 'gas_used']) rows.createIndex(name, ['kind', `fields.${name}`, 'at']);
  rows.createIndex('conflict', ['kind', 'versions']);
  made.createObjectStore('outbox', { keyPath: 'number', autoIncrement: true }).createIndex('rev', ['id', 'rev']);
  made.createObjectStore('facts');
  made.createObjectStore('photos');
  made.createObjectStore('drafts');
}

/**
 * Lists of jobs and of what stands on the truck, and what was welded for the one with the other. No row of the first
 * version has any of these fields, so none has to be made anew.
 * @param {import('idb').IDBPObjectStore<any, any, any, 'versionchange'>} rows
 */
function jobIndexes(rows) {
  for (const name of ['job_id', 'spool', 'cylinder', 'status', 'item']) rows.createIndex(name, ['kind', `fields.${name}`, 'at']);
  rows.createIndex('words', 'words', { multiEntry: true });
  rows.createIndex('thickness', ['kind', 'thickness', 'at']); // [mm]
  rows.createIndex('demo', 'fields.demo');
}

/** Let go of the database; the next use opens it again. */
export function close() {
  opened?.then(found => found.close()).catch(() => {});
  opened = undefined;
}

/**
 * Do something with the database; if its connection has died (iOS kills those of pages in the background), once more
 * with a new one.
 * @template T @param {(found: Database) => Promise<T>} work @returns {Promise<T>}
 */
export async function using(work) {
  try {
    return await work(await database());
  } catch (error) {
    if (!(error instanceof Error && ['InvalidStateError', 'UnknownError', 'AbortError'].includes(error.name))) throw error;
    close();
    return work(await database());
  }
}

/** @param {string} key @returns {Promise<any>} */
export const fact = key => using(found => found.get('facts', key));

/** @param {string} key @param {unknown} value */
export const keepFact = (key, value) =>
  using(async found => {
    const writing = found.transaction('facts', 'readwrite', STRICT);
    await Promise.all([writing.store.put(value, key), writing.done]);
  });

/** This phone's id and the next number of its revisions. @returns {Promise<{ device: string, number: number }>} */
function nextNumber() {
  return using(async found => {
    const writing = found.transaction('facts', 'readwrite', STRICT);
    const device = (await writing.store.get(DEVICE)) ?? crypto.randomUUID();
    const number = ((await writing.store.get('number')) ?? 0) + 1;
    await Promise.all([writing.store.put(device, DEVICE), writing.store.put(number, 'number'), writing.done]);
    return { device, number };
  });
}

/**
 * Save a new revision of a record; when this returns, it is on the disk of this phone and waits to be sent.
 * @param {{ id?: string, parents?: string[], body: string, deleted?: boolean, at?: Date }} said
 * @returns {Promise<{ revision: Revision, versions: number }>} `versions` above 1: another one was saved meanwhile
 */
export async function save(said) {
  const { device, number } = await nextNumber();
  const revision = await named({
    id: said.id ?? crypto.randomUUID(),
    parents: said.parents ?? [],
    device,
    seq_on_device: number,
    saved_at: (said.at ?? new Date()).toISOString(),
    deleted: said.deleted ?? false,
    body: said.body,
  });
  const versions = await store([revision], true);
  return { revision, versions: versions.get(revision.id) ?? 1 };
}

/**
 * Put revisions into the store, those of this phone into the outbox too, and bring the rows up to date.
 * @param {Revision[]} revisions @param {boolean} ours whether they have to be sent
 * @returns {Promise<Map<string, number>>} id -> how many versions stand beside each other
 */
export function store(revisions, ours) {
  return using(async found => {
    const writing = found.transaction(ALL, 'readwrite', STRICT);
    /** @type {Map<string, number>} */
    const versions = new Map();
    try {
      for (const revision of revisions) {
        const known = await writing.objectStore('revisions').getKey([revision.id, revision.rev]);
        if (known === undefined) {
          await writing.objectStore('revisions').put(revision);
          if (ours && !isDemo(revision)) await writing.objectStore('outbox').put({ id: revision.id, rev: revision.rev, problem: '' });
        }
      }
      for (const id of new Set(revisions.map(each => each.id))) {
        const all = await writing.objectStore('revisions').getAll(rangeOf(id));
        const row = rowOf(all);
        versions.set(id, row.versions);
        await writing.objectStore('rows').put(row);
      }
    } catch (error) {
      writing.done.catch(() => {});
      try {
        writing.abort();
      } catch {
        // already over
      }
      throw error;
    }
    await writing.done;
    return versions;
  });
}

/** @param {string} id */
const rangeOf = id => IDBKeyRange.bound([id], [id, []]);

/** @param {Revision[]} all of one record @returns {Row} */
export function rowOf(all) {
  const found = heads(all);
  const first = /** @type {Revision} */ (found[0]);
  const body = bodyOf(first);
  const began = all.reduce((least, each) => (each.saved_at < least ? each.saved_at : least), first.saved_at);
  return {
    id: first.id,
    kind: kindOf(first),
    at: body?.fields.welded_at || began,
    rev: first.rev,
    versions: found.length,
    deleted: first.deleted,
    fields: body?.fields ?? {},
    newer: body === null,
    words: body && !first.deleted ? wordsOf(body.kind, body.fields) : [],
    thickness: millimetres(body?.fields.thickness),
  };
}

/** What a record is looked for by: `kind:word`, in small letters. */
const FOUND_BY = ['title', 'customer', 'place', 'broken', 'name'];

/** @param {string} kind @param {Record<string, string>} fields */
function wordsOf(kind, fields) {
  if (kind === 'weld-entry') return [];
  return wordsIn(FOUND_BY.map(name => fields[name] ?? '').join(' ')).map(word => `${kind}:${word}`);
}

/**
 * A page of what is found by all of these words or their beginnings, the newest first. Keys are compared, and only the
 * rows that are shown are read.
 * @param {{ kind: string, most: number, words: string[], before?: Row, by?: string, value?: string }} asked @returns {Promise<Row[]>}
 */
export const pageFound = asked =>
  using(async found => {
    const { store: rows } = found.transaction('rows', 'readonly');
    const prefix = asked.by ? [asked.kind, asked.value ?? ''] : [asked.kind];
    const order = await rows.index(asked.by || 'time').getAllKeys(IDBKeyRange.bound(prefix, [...prefix, []]));
    let ids = order.reverse();
    for (const word of asked.words) {
      const begins = `${asked.kind}:${word}`;
      const having = new Set(await rows.index('words').getAllKeys(IDBKeyRange.bound(begins, `${begins}\uffff`)));
      ids = ids.filter(id => having.has(id));
    }
    const start = asked.before ? ids.indexOf(asked.before.id) + 1 : 0;
    return Promise.all(ids.slice(start, start + asked.most).map(id => rows.get(id)));
  });

/** The words that somebody looks for, as records are found by them. @param {string} typed */
export const wordsIn = typed => [...new Set(typed.toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(Boolean))];

/** @param {string} id @returns {Promise<Revision[]>} every revision of a record, in the order of their depth */
export const revisionsOf = async id => {
  /** @type {Revision[]} */
  const all = await using(found => found.getAll('revisions', rangeOf(id)));
  return all.sort((one, other) => one.seq_on_device - other.seq_on_device || (one.saved_at < other.saved_at ? -1 : 1));
};

/** @param {string} id @returns {Promise<Row | undefined>} */
export const row = id => using(found => found.get('rows', id));

/** How far a thickness may be off and is still the same to whoever looks it up, [mm]. */
const SAME_THICKNESS = 0.5;

/**
 * @typedef {{ kind: string, most: number, before?: Row, by?: string, value?: string, from?: string, to?: string, deleted?: boolean }} Asked
 *   `before` is the last row shown; others may be of the same moment. `from` this moment on and before `to`;
 *   `deleted` asks for those that were deleted
 */

/**
 * A page of a list, the newest first, deleted ones left out; asked of an index, so that it costs what it shows.
 * @param {Asked} asked @returns {Promise<Row[]>}
 */
export const page = asked =>
  using(async found => {
    const index = found.transaction('rows', 'readonly').store.index(asked.by || 'time');
    if (asked.by !== 'thickness') return newest(index, asked.by ? [asked.kind, asked.value ?? ''] : [asked.kind], asked);
    const wanted = Number(asked.value);
    const near = (await keysOf(index, [asked.kind, wanted - SAME_THICKNESS], [asked.kind, wanted + SAME_THICKNESS, []])).map(each => each.thickness);
    const rows = await Promise.all(near.map(each => newest(index, [asked.kind, each], asked)));
    return rows.flat().sort((one, other) => (one.at < other.at || (one.at === other.at && one.id < other.id) ? 1 : -1)).slice(0, asked.most);
  });

/** @param {any} index @param {unknown[]} prefix of the index's keys; the moment follows @param {Asked} asked @returns {Promise<Row[]>} */
async function newest(index, prefix, { most, before: last, from, to, deleted }) {
  const range = IDBKeyRange.bound([...prefix, from || ''], [...prefix, last?.at ?? (to || [])], false, !last && Boolean(to));
  const wanted = (/** @type {Row} */ each) => each.deleted === Boolean(deleted) && !(last && each.at === last.at && each.id >= last.id);
  // Where the browser can, in one go; what is left out of it makes it too short now and then.
  if (index.getAllRecords) {
    /** @type {{ value: Row }[]} */
    const records = await index.getAllRecords({ query: range, count: most, direction: 'prev' });
    const rows = records.map(each => each.value).filter(wanted);
    if (rows.length === most || records.length < most) return rows;
  }
  /** @type {Row[]} */
  const rows = [];
  let cursor = await index.openCursor(range, 'prev');
  while (cursor && rows.length < most) {
    if (wanted(cursor.value)) rows.push(cursor.value);
    cursor = await cursor.continue();
  }
  return rows;
}

/** The first row of each value that an index has between two keys, in their order. @param {any} index @param {unknown[]} low @param {unknown[]} high @returns {Promise<Row[]>} */
async function keysOf(index, low, high) {
  /** @type {Row[]} */
  const rows = [];
  let cursor = await index.openCursor(IDBKeyRange.bound(low, high));
  while (cursor) {
    rows.push(cursor.value);
    // On to the next value, past all rows that share this one.
    cursor = await cursor.continue([...cursor.key.slice(0, 2), []]);
  }
  return rows;
}

/** Every thickness among records of a kind, thinnest first: as it was typed, and in millimetres. @param {string} kind @returns {Promise<[string, string][]>} */
export const thicknesses = kind =>
  using(async found => {
    const rows = await keysOf(found.transaction('rows', 'readonly').store.index('thickness'), [kind], [kind, []]);
    return rows.map(each => [each.fields.thickness ?? '', String(each.thickness)]);
  });

/**
 * Every record of a kind whose field has this value, since a moment, the newest first, deleted ones left out.
 * @param {{ kind: string, by: string, value: string, from?: string }} asked @returns {Promise<Row[]>}
 */
export const since = asked =>
  using(async found => {
    const range = IDBKeyRange.bound([asked.kind, asked.value, asked.from ?? ''], [asked.kind, asked.value, []]);
    /** @type {Row[]} */
    const rows = await found.getAllFromIndex('rows', asked.by, range);
    return rows.filter(each => !each.deleted).reverse();
  });

/** Every value of a field among records of a kind, in order: what a list may be narrowed to. @param {string} kind @param {string} by @returns {Promise<string[]>} */
export const valuesOf = (kind, by) =>
  using(async found => {
    /** @type {string[]} */
    const values = [];
    const index = found.transaction('rows', 'readonly').store.index(by);
    let cursor = await index.openKeyCursor(IDBKeyRange.bound([kind], [kind, []]), 'next');
    while (cursor) {
      const value = /** @type {string[]} */ (/** @type {unknown} */ (cursor.key))[1] ?? '';
      if (value) values.push(value);
      // On to the next value, past all rows that share this one.
      cursor = await cursor.continue([kind, value, []]);
    }
    return values;
  });

// ---------------------------------------------------------------- the outbox

/** How many revisions are not on the server. @returns {Promise<number>} */
export const waiting = () => using(found => found.count('outbox'));

/** The oldest that wait, those that were refused before behind all others. @param {number} most @returns {Promise<{ waiting: Waiting, revision: Revision }[]>} */
export const toSend = most =>
  using(async found => {
    const reading = found.transaction(['outbox', 'revisions'], 'readonly');
    /** @type {Waiting[]} */
    const refused = [];
    /** @type {Waiting[]} */
    const entries = [];
    let cursor = await reading.objectStore('outbox').openCursor();
    while (cursor && entries.length < most) {
      (cursor.value.problem ? refused : entries).push(cursor.value);
      cursor = await cursor.continue();
    }
    return Promise.all(
      [...entries, ...refused].slice(0, most).map(async each => ({
        waiting: each,
        revision: await reading.objectStore('revisions').get([each.id, each.rev]),
      })),
    );
  });

/**
 * Do what the server said of the revisions that were sent: those it has leave the outbox, the others stay with the reason.
 * @param {{ id: string, rev: string, outcome: string, reason: string }[]} outcomes
 */
export const acknowledge = outcomes =>
  using(async found => {
    const writing = found.transaction('outbox', 'readwrite', STRICT);
    for (const each of outcomes) {
      const entry = await writing.store.index('rev').get([each.id, each.rev]);
      if (!entry) continue;
      if (['stored', 'already', 'conflict'].includes(each.outcome)) await writing.store.delete(entry.number);
      else await writing.store.put({ ...entry, problem: each.reason || each.outcome });
    }
    await writing.done;
  });

/** Put everything into the outbox again: the server has lost what it had. */
export const sendAllAgain = () =>
  using(async found => {
    const writing = found.transaction(['outbox', 'revisions'], 'readwrite', STRICT);
    /** @type {Revision[]} */
    const all = await writing.objectStore('revisions').getAll();
    all.sort((one, other) => (one.saved_at < other.saved_at ? -1 : 1));
    for (const each of all) {
      const known = await writing.objectStore('outbox').index('rev').getKey([each.id, each.rev]);
      if (known === undefined && !isDemo(each)) await writing.objectStore('outbox').put({ id: each.id, rev: each.rev, problem: '' });
    }
    await writing.done;
  });

/** Of each row whether its revision waits, and why it was refused if it was. @param {Row[]} rows @returns {Promise<(Waiting | undefined)[]>} */
export const waitingAmong = rows =>
  using(found => {
    const index = found.transaction('outbox').store.index('rev');
    return Promise.all(rows.map(each => index.get([each.id, each.rev])));
  });

// ---------------------------------------------------------------- drafts, photos, everything

/** @param {string} key @returns {Promise<any>} */
export const draft = key => using(found => found.get('drafts', key));

/** @param {string} key @param {unknown} value undefined forgets */
export const keepDraft = (key, value) =>
  using(async found => {
    const writing = found.transaction('drafts', 'readwrite', STRICT);
    await Promise.all([value === undefined ? writing.store.delete(key) : writing.store.put(value, key), writing.done]);
  });

/** @param {string} id @param {Blob} photo */
export const keepPhoto = (id, photo) =>
  using(async found => {
    const writing = found.transaction('photos', 'readwrite', STRICT);
    await Promise.all([writing.store.put(photo, id), writing.done]);
  });

/** @param {string} id @returns {Promise<Blob | undefined>} */
export const photo = id => using(found => found.get('photos', id));

/** Every revision on this phone, the demo's left out, in the order of their keys. @returns {Promise<Revision[]>} */
export const everything = () => using(async found => (await found.getAll('revisions')).filter(each => !isDemo(each)));

/** Every photo, the demo's left out. @returns {Promise<[string, Blob][]>} */
export const allPhotos = () =>
  using(async found => {
    const reading = found.transaction(['photos', 'rows'], 'readonly');
    const photos = reading.objectStore('photos');
    const [keys, values, demo] = await Promise.all([photos.getAllKeys(), photos.getAll(), reading.objectStore('rows').index('demo').getAll()]);
    const invented = new Set(demo.flatMap(each => (each.fields.photos ?? '').split(' ')));
    return keys.map((key, place) => /** @type {[string, Blob]} */ ([String(key), values[place]])).filter(([key]) => !invented.has(key));
  });
