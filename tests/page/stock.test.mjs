// What is left on the truck, and the demo, with a store in memory.
import '../../static/node_modules/fake-indexeddb/auto/index.mjs';
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import * as store from '../../static/page/records/database.js';
import { csvOf, exported, imported } from '../../static/page/records/file.js';
import { SCHEMA, bodyText, isDemo, named } from '../../static/page/records/revision.js';
import { amountOf, remainder, shownAmount, taken } from '../../static/page/records/stock.js';

globalThis.navigator ??= {}; // an older node has none
const BUILD = '0123456789';
const COUNTED = '2026-05-01T08:00:00.000Z';
const body = (kind, fields) => bodyText({ kind, schema: SCHEMA, build: BUILD, fields });
const FACTORS = { kg: '2.2046226', l: '0.035314667' };

const forget = () =>
  new Promise(done => {
    store.close();
    const gone = indexedDB.deleteDatabase('puddlebook');
    gone.onsuccess = gone.onblocked = gone.onerror = done;
  });
beforeEach(forget);

/** @returns the row of a spool with 4 kg on it */
async function spool(more = {}) {
  const { revision } = await store.save({ body: body('stock', { item: 'spool', name: 'front', left: '4 kg', counted_at: COUNTED, ...more }) });
  return store.row(revision.id);
}

/** A weld that used wire of a spool. */
async function weld(id, used, more = {}) {
  const fields = { joint: 'a', spool: id, welded_at: '2026-05-02T10:00:00.000Z', ...(used ? { used_wire: used } : {}), ...more };
  return (await store.save({ body: body('weld-entry', fields) })).revision;
}

const left = async row => Number((await remainder(row)).left.toFixed(6));

test('what was welded since the count is taken off, and only from its own spool', async () => {
  const [mine, other] = [await spool(), await spool()];
  await weld(mine.id, '0.214 kg');
  await weld(mine.id, '0.1 kg');
  await weld(other.id, '1 kg');
  await weld(mine.id, '2 kg', { welded_at: '2026-04-30T10:00:00.000Z' });
  const found = await remainder(mine);
  assert.equal(await left(mine), 3.686);
  assert.equal(found.entries.length, 2);
  assert.equal(await left(other), 3);
});

test('a correction puts back what it corrects, a deletion all of it, bringing it back takes it again', async () => {
  const row = await spool();
  const first = await weld(row.id, '0.5 kg');
  const fields = { joint: 'a', spool: row.id, welded_at: '2026-05-02T10:00:00.000Z', used_wire: '0.2 kg' };
  const second = (await store.save({ id: first.id, parents: [first.rev], body: body('weld-entry', fields) })).revision;
  assert.equal(await left(row), 3.8);
  const third = (await store.save({ id: first.id, parents: [second.rev], body: second.body, deleted: true })).revision;
  assert.equal(await left(row), 4);
  await store.save({ id: first.id, parents: [third.rev], body: second.body });
  assert.equal(await left(row), 3.8);
});

test('a weld that is corrected to another spool leaves the first one as it was', async () => {
  const [mine, other] = [await spool(), await spool()];
  const first = await weld(mine.id, '0.5 kg');
  await store.save({ id: first.id, parents: [first.rev], body: body('weld-entry', { ...JSON.parse(first.body).fields, spool: other.id }) });
  assert.deepEqual([await left(mine), await left(other)], [4, 3.5]);
});

test('of two versions side by side the leading one counts, once', async () => {
  const row = await spool();
  const first = await weld(row.id, '0.5 kg');
  for (const used of ['0.6 kg', '0.7 kg']) {
    const fields = { ...JSON.parse(first.body).fields, used_wire: used };
    await store.save({ id: first.id, parents: [first.rev], body: body('weld-entry', fields) });
  }
  const leading = (await store.row(first.id)).fields.used_wire;
  assert.equal(await left(row), leading === '0.6 kg' ? 3.4 : 3.3);
});

test('counted again, only later welds are taken off', async () => {
  const row = await spool();
  await weld(row.id, '0.5 kg');
  await store.save({ id: row.id, parents: [row.rev], body: body('stock', { ...row.fields, left: '3 kg', counted_at: '2026-05-03T08:00:00.000Z' }) });
  await weld(row.id, '0.25 kg', { welded_at: '2026-05-04T08:00:00.000Z' });
  assert.equal(await left(await store.row(row.id)), 2.75);
});

test('more used than counted is below nothing, and a weld that does not say is counted as such', async () => {
  const row = await spool();
  await weld(row.id, '5 kg');
  await weld(row.id, '');
  await weld(row.id, '3 L');
  const found = await remainder(row);
  assert.deepEqual([found.left, found.unknown], [-1, 2]);
});

test('gas is taken off a cylinder in litres', async () => {
  const { revision } = await store.save({ body: body('stock', { item: 'cylinder', left: '3000 L', counted_at: COUNTED }) });
  await store.save({ body: body('weld-entry', { cylinder: revision.id, used_gas: '85.5 L', welded_at: '2026-05-02T10:00:00.000Z' }) });
  assert.equal((await remainder(await store.row(revision.id))).left, 2914.5);
});

test('what was never counted, and what cannot run down, has no remainder', async () => {
  for (const fields of [{ item: 'spool' }, { item: 'lead', left: '4 kg' }, { item: 'spool', left: '4 lb' }, { item: 'spool', left: '<b>' }]) {
    const { revision } = await store.save({ body: body('stock', fields) });
    assert.equal(await remainder(await store.row(revision.id)), undefined);
  }
});

test('amounts are read in their own unit only, and shown in the system they were typed in', () => {
  assert.equal(amountOf('0.214 kg', 'kg'), 0.214);
  for (const text of ['0.214 lb', '-1 kg', '1e3 kg', 'kg', '', undefined, 'NaN kg', '1 kg ']) assert.equal(amountOf(text, 'kg'), undefined);
  assert.equal(amountOf('85 L', 'kg'), undefined);
  assert.equal(shownAmount(4.5359237, 'kg', { spool_left: '10 lb' }, FACTORS), '10\u00a0lb (4.54\u00a0kg)');
  assert.equal(shownAmount(3400, 'L', { cylinder_pressure: '120 bar' }, FACTORS), '3400\u00a0L (120\u00a0ft\u00b3)');
  assert.deepEqual(taken([{ fields: { used_gas: '2 L' } }], 'lead'), { used: 0, unknown: 0 });
});

// ---------------------------------------------------------------- the demo stays on this phone

test('a record of the demo is on no list to be sent, in no file, and comes in from nowhere', async () => {
  const demo = await named({ id: crypto.randomUUID(), parents: [], device: crypto.randomUUID(), seq_on_device: 1, saved_at: COUNTED, deleted: false, body: body('job', { title: 'x', demo: 'yes' }) });
  const [mine] = [await spool()];
  await store.store([demo], false);
  await store.save({ id: demo.id, parents: [demo.rev], body: demo.body });
  assert.equal(await store.waiting(), 1);
  await store.sendAllAgain();
  assert.equal(await store.waiting(), 1);
  const all = await store.everything();
  assert.deepEqual(all.map(each => each.id), [mine.id]);
  const text = await exported([demo, ...all], []);
  await forget();
  assert.equal(await imported(text, store.store), 1);
  assert.equal((await store.everything()).length, 1);
  assert.equal(await store.row(demo.id), undefined);
});

test('nobody makes a record one of the demo by what he types', () => {
  for (const typed of ['"demo":"yes"', 'demo":"yes', '\\"demo":"yes"', '{"demo":"yes"}']) {
    assert.equal(isDemo({ body: body('job', { title: typed, [typed]: 'x' }) }), false, typed);
  }
  assert.equal(isDemo({ body: body('job', { demo: 'yes' }) }), true);
});

// ---------------------------------------------------------------- files

test('jobs and stock, open, closed and deleted, go into a file and come back byte for byte', async () => {
  const { revision: open } = await store.save({ body: body('job', { title: 'caf\u00e9 \ud83d\udd25', status: 'open' }) });
  const closed = { title: 'gate', status: 'closed', signature: '1,2 3,4', card_load: JSON.stringify(['Load', ['wire', 'Wire', '1 kg']]) };
  await store.save({ id: open.id, parents: [open.rev], body: body('job', closed) });
  const row = await spool();
  await store.save({ id: row.id, parents: [row.rev], body: body('stock', row.fields), deleted: true });
  await weld(row.id, '0.2 kg', { photos: 'p1' });
  await store.keepPhoto('p1', new Blob([Uint8Array.from([0, 255, 7])], { type: 'image/jpeg' }));
  const all = await store.everything();
  const text = await exported(all, await store.allPhotos());
  await forget();
  assert.equal(await imported(text, store.store), 5);
  assert.equal(await exported(await store.everything(), await store.allPhotos()), text);
  assert.equal((await store.page({ kind: 'job', by: 'status', value: 'closed', most: 9 })).length, 1);
  assert.equal((await store.page({ kind: 'stock', by: 'item', value: 'spool', most: 9 })).length, 0);
  assert.equal((await store.page({ kind: 'stock', by: 'item', value: 'spool', most: 9, deleted: true })).length, 1);
});

test('a table tells kinds apart, holds cards as words, and leaves out what was deleted', async () => {
  await store.save({ body: body('job', { title: '=1+1', card_load: JSON.stringify(['Load', ['wire', 'Wire', '1 kg'], ['gas', 'Gas', '2 L']]), signature: '1,2' }) });
  await spool();
  const gone = await weld('x', '0.1 kg');
  await store.save({ id: gone.id, parents: [gone.rev], body: gone.body, deleted: true });
  const [head, job, stock, ...rest] = csvOf(await store.everything()).split('\r\n');
  assert.ok(head.startsWith('kind,id,rev,welded_at,joint'));
  assert.ok(!head.includes('signature'));
  assert.ok(job.startsWith('job,') && job.includes("'=1+1") && job.includes('Wire: 1 kg; Gas: 2 L'));
  assert.ok(stock.startsWith('stock,'));
  assert.deepEqual(rest, ['']);
});

test('photos of the demo are in no file', async () => {
  await store.keepPhoto('mine', new Blob(['a']));
  await store.keepPhoto('demo', new Blob(['b']));
  const demo = await named({ id: crypto.randomUUID(), parents: [], device: crypto.randomUUID(), seq_on_device: 1, saved_at: COUNTED, deleted: false, body: body('job', { demo: 'yes', photos: 'demo' }) });
  await store.store([demo], false);
  assert.deepEqual((await store.allPhotos()).map(([name]) => name), ['mine']);
});
