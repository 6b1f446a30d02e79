// The phone's own store of records and its exchange, with a store in memory and servers that fail in every way.
import '../../static/node_modules/fake-indexeddb/auto/index.mjs';
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import * as store from '../../static/page/records/database.js';
import { exchange, waitAfter } from '../../static/page/records/exchange.js';
import { csvOf, exported, imported } from '../../static/page/records/file.js';
import { SCHEMA, bodyText, heads, named, revisionName } from '../../static/page/records/revision.js';

globalThis.navigator ??= {}; // an older node has none
const BUILD = '0123456789';
const body = (notes, more = {}) => bodyText({ kind: 'weld-entry', schema: SCHEMA, build: BUILD, fields: { joint: 'a', notes, ...more } });

beforeEach(async () => {
  store.close();
  await new Promise(done => {
    const gone = indexedDB.deleteDatabase('puddlebook');
    gone.onsuccess = gone.onblocked = gone.onerror = done;
  });
});

/** A server of the exchange that does what it is told: the same rules as webapp/exchange.py, in a few lines. */
class Server {
  constructor() {
    this.identity = 'first';
    this.stored = [];
    this.refuse = () => false;
  }
  fetch = async (address, options) => {
    assert.equal(address, 'sync');
    const message = JSON.parse(options.body);
    const outcomes = message.records.map(record => {
      const known = this.stored.some(each => each.rev === record.rev && each.id === record.id);
      const refused = this.refuse(record);
      if (!known && !refused) this.stored.push(record);
      return { id: record.id, rev: record.rev, outcome: refused ? 'refused' : known ? 'already' : 'stored', reason: refused ? 'poison' : '' };
    });
    const known = message.store === this.identity && (message.after === 0 || this.stored[message.after - 1]?.rev === message.after_rev);
    const start = known ? message.after : 0;
    const records = this.stored.slice(start, start + 100);
    const after = start + records.length;
    const reply = {
      sync: 1, schema: 1, build: BUILD, store: this.identity, reset: Boolean(message.store) && !known, outcomes, records, after,
      after_rev: this.stored[after - 1]?.rev ?? '', more: after < this.stored.length,
    };
    return new Response(JSON.stringify(reply), { status: 200 });
  };
}

const send = server => exchange({ build: BUILD, fetch: server.fetch });

test('a saved record is there, waits to be sent, and stands on top of the list', async () => {
  const { revision } = await store.save({ body: body('one') });
  assert.equal(await store.waiting(), 1);
  assert.equal(await revisionName(revision), revision.rev);
  assert.match(revision.rev, /^1-[0-9a-f]{32}$/);
  const rows = await store.page({ kind: 'weld-entry', most: 10 });
  assert.deepEqual(rows.map(row => [row.id, row.fields.notes, row.versions]), [[revision.id, 'one', 1]]);
});

test('a correction is a revision of its own, and the old one stays readable', async () => {
  const { revision } = await store.save({ body: body('one') });
  const { revision: second, versions } = await store.save({ id: revision.id, parents: [revision.rev], body: body('two') });
  assert.equal(versions, 1);
  assert.equal((await store.row(revision.id)).fields.notes, 'two');
  assert.deepEqual((await store.revisionsOf(revision.id)).map(each => each.rev), [revision.rev, second.rev]);
  assert.match(second.rev, /^2-/);
});

test('F22: the second of two tabs that edit one record is told, and both versions are kept', async () => {
  const { revision } = await store.save({ body: body('one') });
  const first = await store.save({ id: revision.id, parents: [revision.rev], body: body('mine') });
  const second = await store.save({ id: revision.id, parents: [revision.rev], body: body('yours') });
  assert.equal(first.versions, 1);
  assert.equal(second.versions, 2);
  const both = heads(await store.revisionsOf(revision.id)).map(each => each.rev).sort();
  assert.deepEqual(both, [first.revision.rev, second.revision.rev].sort());
  const merged = await store.save({ id: revision.id, parents: both, body: body('both') });
  assert.equal(merged.versions, 1);
});

test('a deleted record leaves the list, stays readable, and edit wins over delete', async () => {
  const { revision } = await store.save({ body: body('one') });
  await store.save({ id: revision.id, parents: [revision.rev], body: body('one'), deleted: true });
  assert.deepEqual(await store.page({ kind: 'weld-entry', most: 10 }), []);
  const { versions } = await store.save({ id: revision.id, parents: [revision.rev], body: body('edited') });
  assert.equal(versions, 2);
  assert.equal((await store.row(revision.id)).fields.notes, 'edited');
  assert.equal((await store.row(revision.id)).deleted, false);
});

test('a page of the list costs what it shows, goes on where it ended, and can be narrowed', async () => {
  const base = Date.parse('2026-01-01T00:00:00Z');
  for (let each = 0; each < 70; each++) {
    await store.save({ body: body(`n${each}`, { wire_class: each % 2 ? 'ER70S-6' : 'ER70S-3' }), at: new Date(base + each * 1000) });
  }
  const first = await store.page({ kind: 'weld-entry', most: 30 });
  const second = await store.page({ kind: 'weld-entry', most: 30, before: first.at(-1) });
  assert.deepEqual([first[0].fields.notes, first.at(-1).fields.notes, second[0].fields.notes], ['n69', 'n40', 'n39']);
  assert.deepEqual(await store.valuesOf('weld-entry', 'wire_class'), ['ER70S-3', 'ER70S-6']);
  const narrowed = await store.page({ kind: 'weld-entry', most: 50, by: 'wire_class', value: 'ER70S-6' });
  assert.equal(narrowed.length, 35);
  assert.ok(narrowed.every(row => row.fields.wire_class === 'ER70S-6'));
});

test('entries of one moment are all shown, wherever a page ends', async () => {
  const at = new Date('2026-01-01T00:00:00Z');
  for (let each = 0; each < 7; each++) await store.save({ body: body(`n${each}`), at });
  const seen = [];
  for (let before; ; before = seen.at(-1)) {
    const rows = await store.page({ kind: 'weld-entry', most: 3, before });
    seen.push(...rows);
    if (rows.length < 3) break;
  }
  assert.deepEqual(seen.map(row => row.fields.notes).sort(), ['n0', 'n1', 'n2', 'n3', 'n4', 'n5', 'n6']);
});

test('what was sent leaves the outbox, and what others sent comes in', async () => {
  const server = new Server();
  const other = await named({ id: crypto.randomUUID(), parents: [], device: crypto.randomUUID(), seq_on_device: 1, saved_at: '2026-01-01T00:00:00.000Z', deleted: false, body: body('theirs') });
  server.stored.push(other);
  await store.save({ body: body('mine') });
  assert.deepEqual(await send(server), { state: 'done', reason: '', left: 0 });
  assert.equal(server.stored.length, 2);
  assert.equal((await store.page({ kind: 'weld-entry', most: 10 })).length, 2);
});

test('a revision whose name and content do not belong together is not taken in', async () => {
  const server = new Server();
  const other = await named({ id: crypto.randomUUID(), parents: [], device: crypto.randomUUID(), seq_on_device: 1, saved_at: '2026-01-01T00:00:00.000Z', deleted: false, body: body('theirs') });
  server.stored.push({ ...other, body: body('forged') });
  await send(server);
  assert.deepEqual(await store.everything(), []);
});

const html = '<!doctype html><title>Sign in to the network</title>';
const FAULTS = {
  'a page of a captive portal': () => new Response(html, { status: 200 }),
  'an empty object': () => new Response('{}', { status: 200 }),
  'bad JSON': () => new Response('{"sync": 1, ', { status: 200 }),
  'JSON of somebody else': () => new Response('{"outcomes": [], "records": []}', { status: 200 }),
  'our mark and nothing else': () => new Response('{"sync": 1}', { status: 200 }),
  'no content': () => new Response(null, { status: 204 }),
  'a reset line': () => Promise.reject(new TypeError('network')),
  silence: (_, { signal }) => new Promise((_done, fail) => signal.addEventListener('abort', () => fail(new Error('aborted')))),
};
for (const status of [400, 401, 403, 404, 409, 413, 422, 429, 500, 502, 503, 504]) {
  FAULTS[`status ${status} of ours`] = () => new Response('{"sync": 1, "error": "no"}', { status });
  FAULTS[`status ${status} of somebody else`] = () => new Response(html, { status });
}

for (const [name, fetch] of Object.entries(FAULTS)) {
  test(`F12: ${name}: the outbox is unchanged, a reason is given, and the next good answer empties it`, async () => {
    for (let each = 0; each < 10; each++) await store.save({ body: body(`n${each}`) });
    const before = await store.toSend(100);
    const result = await exchange({ build: BUILD, fetch, silence: 50 });
    assert.equal(result.state, 'waits');
    assert.ok(['no-signal', 'portal', 'pair', 'wait', 'server', 'older'].includes(result.reason), result.reason);
    assert.equal(result.left, 10);
    assert.deepEqual(await store.toSend(100), before);
    const server = new Server();
    assert.deepEqual(await send(server), { state: 'done', reason: '', left: 0 });
    assert.equal(server.stored.length, 10);
  });
}

test('F6: a reply that is lost leads to the same again, and one record', async () => {
  const server = new Server();
  await store.save({ body: body('one') });
  const lost = async (address, options) => {
    await server.fetch(address, options);
    throw new TypeError('cut');
  };
  assert.equal((await exchange({ build: BUILD, fetch: lost })).left, 1);
  assert.deepEqual(await send(server), { state: 'done', reason: '', left: 0 });
  assert.equal(server.stored.length, 1);
});

test('F13: one poisoned record stays, named; all the others go', async () => {
  const server = new Server();
  server.refuse = record => record.body.includes('poison');
  for (let each = 0; each < 250; each++) await store.save({ body: body(each < 120 ? `poison ${each}` : `n${each}`) });
  const result = await send(server);
  assert.deepEqual(result, { state: 'done', reason: '', left: 120 });
  assert.equal(server.stored.length, 130);
  const [entry] = await store.toSend(1);
  assert.equal(entry.waiting.problem, 'poison');
});

test('F14: an entry 400 days old is still sent', async () => {
  const server = new Server();
  await store.save({ body: body('old'), at: new Date(Date.now() - 400 * 86_400_000) });
  assert.equal((await send(server)).left, 0);
  assert.equal(server.stored.length, 1);
});

test('F27: a server with another name or an older copy gets everything again', async () => {
  const server = new Server();
  for (let each = 0; each < 30; each++) await store.save({ body: body(`n${each}`) });
  await send(server);
  const all = server.stored;
  for (const restored of [['second', all.slice(0, 10)], ['second', []]]) {
    [server.identity, server.stored] = [restored[0], [...restored[1]]];
    assert.equal((await send(server)).left, 0);
    assert.equal(server.stored.length, 30);
  }
});

test('F27: another phone that stored as much as was lost does not hide the loss', async () => {
  const server = new Server();
  for (let each = 0; each < 5; each++) await store.save({ body: body(`n${each}`) });
  await send(server);
  const other = await named({ id: crypto.randomUUID(), parents: [], device: crypto.randomUUID(), seq_on_device: 1, saved_at: '2026-01-01T00:00:00.000Z', deleted: false, body: body('theirs') });
  server.stored = [...server.stored.slice(0, 4), other];
  await send(server);
  assert.equal(server.stored.length, 6);
});

test('F18: a phone whose storage was cleared gets every record back', async () => {
  const server = new Server();
  for (let each = 0; each < 12; each++) await store.save({ body: body(`n${each}`) });
  await send(server);
  store.close();
  await new Promise(done => {
    indexedDB.deleteDatabase('puddlebook').onsuccess = done;
  });
  assert.equal((await store.everything()).length, 0);
  await send(server);
  assert.equal((await store.everything()).length, 12);
});

test('F26: clocks ten years off lose nothing', async () => {
  const server = new Server();
  for (const year of [2016, 2036, 2026]) await store.save({ body: body(String(year)), at: new Date(`${year}-05-05T00:00:00Z`) });
  await send(server);
  assert.deepEqual(server.stored.map(each => JSON.parse(each.body).fields.notes), ['2016', '2036', '2026']);
});

test('F16: a connection that was closed under us is opened again', async () => {
  await store.save({ body: body('one') });
  for (let each = 0; each < 20; each++) {
    store.close();
    await store.save({ body: body(`after ${each}`) });
  }
  assert.equal(await store.waiting(), 21);
});

test('F29: an entry of a newer schema is listed among its kind and is not read', async () => {
  const newer = JSON.stringify({ kind: 'weld-entry', schema: SCHEMA + 1, build: BUILD, joints: ['a'] });
  const { revision } = await store.save({ body: newer });
  const [row] = await store.page({ kind: 'weld-entry', most: 10 });
  assert.deepEqual([row.id, row.newer, row.fields], [revision.id, true, {}]);
  await store.save({ body: JSON.stringify({ kind: 'gas-bottle', schema: SCHEMA + 1, build: BUILD }) });
  await store.save({ body: 'no JSON' });
  assert.equal((await store.page({ kind: 'weld-entry', most: 10 })).length, 1);
  assert.equal((await store.revisionsOf(revision.id))[0].body, newer);
});

test('F29: a newer phone at an old server is told that one of the two needs an update, and keeps everything', async () => {
  const old = async () => new Response('{"sync": 1, "error": "This server speaks another version"}', { status: 422 });
  await store.save({ body: body('one') });
  assert.deepEqual(await exchange({ build: BUILD, fetch: old }), { state: 'waits', reason: 'older', left: 1 });
  assert.equal((await send(new Server())).left, 0);
});

test('an export is taken in byte for byte on an empty phone, twice is once, and a damaged one not at all', async () => {
  const { revision } = await store.save({ body: body('caf\u00e9 \ud83d\udd25 "q", =1') });
  await store.save({ id: revision.id, parents: [revision.rev], body: body('two') });
  await store.keepPhoto('p1', new Blob([Uint8Array.from([0, 255, 7])], { type: 'image/jpeg' }));
  const all = await store.everything();
  const text = await exported(all, await store.allPhotos());
  store.close();
  await new Promise(done => {
    indexedDB.deleteDatabase('puddlebook').onsuccess = done;
  });
  assert.equal(await imported(text, store.store), 2);
  assert.deepEqual(await store.everything(), all);
  assert.deepEqual([...new Uint8Array(await (await store.photo('p1')).arrayBuffer())], [0, 255, 7]);
  assert.equal(await imported(text, store.store), 0);
  await assert.rejects(imported(text.replace('two', 'six'), store.store));
  await assert.rejects(imported('{"revisions": []}', store.store));
  assert.equal(await exported(await store.everything(), await store.allPhotos()), text);
});

test('S6: a cell that a spreadsheet would reckon with is text, and commas and quotes stay inside their cell', async () => {
  await store.save({ body: body('=HYPERLINK("x"),1') });
  const lines = csvOf(await store.everything()).split('\r\n');
  assert.ok(lines[0].startsWith('kind,id,rev,welded_at,joint'));
  assert.ok(lines[1].includes('"\'=HYPERLINK(""x""),1"'));
});

test('waiting doubles from one second to five minutes', () => {
  assert.deepEqual([1, 2, 3, 9, 10, 40].map(waitAfter), [1000, 2000, 4000, 256000, 300000, 300000]);
});

test('half of a surrogate pair, which no file can hold, is replaced and not sent', () => {
  assert.equal(JSON.parse(body('a\ud800b')).fields.notes, 'a\ufffdb');
});

test('F10: phones that create, edit, delete, lose replies and exchange in any order end alike', async () => {
  // One store per process: the second phone is a list that follows the same rules on the server's side.
  for (let seed = 1; seed <= 20; seed++) {
    let state = seed;
    const chance = most => (state = (state * 48271) % 2147483647) % most;
    const server = new Server();
    const lost = async (address, options) => {
      await server.fetch(address, options);
      throw new TypeError('cut');
    };
    for (let step = 0; step < 40; step++) {
      const all = await store.everything();
      const ids = [...new Set(all.map(each => each.id))].sort();
      const id = ids[chance(Math.max(1, ids.length))];
      const action = chance(6);
      if (action < 2 || !id) await store.save({ body: body(`s${seed} ${step}`) });
      else if (action < 4) {
        const of = await store.revisionsOf(id);
        const parents = [of[chance(of.length)].rev];
        await store.save({ id, parents, body: body(`s${seed} ${step}`), deleted: action === 3 && chance(3) === 0 });
      } else if (action === 4) await exchange({ build: BUILD, fetch: lost });
      else await send(server);
    }
    await send(server);
    const mine = (await store.everything()).map(each => each.rev).sort();
    assert.deepEqual([...new Set(server.stored.map(each => each.rev))].sort(), mine.filter(rev => server.stored.some(each => each.rev === rev)));
    assert.equal(server.stored.length, mine.length, `seed ${seed}`);
    assert.equal(await store.waiting(), 0);
    store.close();
    await new Promise(done => {
      indexedDB.deleteDatabase('puddlebook').onsuccess = done;
    });
  }
});
