// Looking back in the log: by day, by thickness, pass by pass, and pairs for a machine's trim.
import '../../static/node_modules/fake-indexeddb/auto/index.mjs';
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';

process.env.TZ = 'America/Chicago'; // six hours behind UTC in winter
globalThis.navigator ??= {};
globalThis.location ??= { hash: '', pathname: '/log', search: '' };
const store = await import('../../static/page/records/database.js');
const { SCHEMA, bodyText } = await import('../../static/page/records/revision.js');
const { millimetres } = await import('../../static/page/records/thickness.js');
const { passesAddress } = await import('../../static/page/records/passes.js');
const { pairsAmong } = await import('../../static/page/records/pairs.js');
const { beginning } = await import('../../static/page/records/looking-back.js');

beforeEach(async () => {
  store.close();
  await new Promise(done => {
    const gone = indexedDB.deleteDatabase('puddlebook');
    gone.onsuccess = gone.onblocked = gone.onerror = done;
  });
});

const kept = fields => store.save({ body: bodyText({ kind: 'weld-entry', schema: SCHEMA, build: '0123456789', fields: { joint: 'a', ...fields } }) });
const shown = async asked => (await store.page({ kind: 'weld-entry', most: 10, ...asked })).map(row => row.fields.notes);

test('a thickness is read as it is typed, and what is none is left out', () => {
  const typed = { '1/4 in': 6.35, '1 1/8 in': 28.575, '1-1/2 in': 38.1, '0.25 in': 6.35, '.25 in': 6.35, '6 mm': 6, '6,5 mm': 6.5, '6.5  mm': 6.5, '3 / 8 in': 9.525 };
  for (const [text, length] of Object.entries(typed)) assert.equal(millimetres(text), length, text);
  for (const text of ['', '6', '1/4', '1/0 in', '1 0.5 in', '0 mm', '-3 mm', '6 kg', 'mm', '6 mm thick', '1.234.5 mm', undefined]) assert.equal(millimetres(text), undefined, text);
});

test('entries within half a millimetre are found, the newest first, a page at a time', async () => {
  for (const [thickness, notes, day] of [['1/4 in', 'first', '01'], ['6 mm', 'second', '02'], ['0.25 in', 'third', '03'], ['8 mm', 'thick', '04'], ['5.8 mm', 'thin', '05'], ['', 'none', '06']]) {
    await kept({ thickness, notes, welded_at: `2026-01-${day}T12:00:00.000Z` });
  }
  assert.deepEqual(await shown({ by: 'thickness', value: '6.35', from: '', to: '' }), ['third', 'second', 'first']);
  assert.deepEqual(await shown({ by: 'thickness', value: '6' }), ['thin', 'third', 'second', 'first']);
  const [first] = await store.page({ kind: 'weld-entry', most: 1, by: 'thickness', value: '6.35' });
  assert.deepEqual(await shown({ by: 'thickness', value: '6.35', before: first }), ['second', 'first']);
  assert.deepEqual(await shown({ by: 'thickness', value: '6.35', to: '2026-01-02T13:00:00.000Z' }), ['second', 'first']);
  assert.deepEqual(await shown({ by: 'thickness', value: '20' }), []);
  assert.deepEqual((await store.thicknesses('weld-entry')).map(([, millimetres]) => millimetres), ['5.8', '6', '6.35', '8']);
});

test('a correction of the thickness moves the entry, and a deletion takes it away', async () => {
  const { revision } = await kept({ thickness: '1/4 in', notes: 'x' });
  const { revision: second } = await store.save({ id: revision.id, parents: [revision.rev], body: revision.body.replace('1/4 in', '1/2 in') });
  assert.deepEqual(await shown({ by: 'thickness', value: '6.35' }), []);
  assert.deepEqual(await shown({ by: 'thickness', value: '12.7' }), ['x']);
  await store.save({ id: revision.id, parents: [second.rev], body: second.body, deleted: true });
  assert.deepEqual(await shown({ by: 'thickness', value: '12.7' }), []);
});

test('from and to are days where the reader is, and go together with one joint', async () => {
  assert.equal(beginning('2026-01-02'), '2026-01-02T06:00:00.000Z');
  assert.equal(beginning('2026-03-08', 1), '2026-03-09T05:00:00.000Z'); // the clocks go forward that day
  assert.equal(beginning(''), '');
  for (const at of ['2026-01-02T05:59:59.999Z', '2026-01-02T06:00:00.000Z', '2026-01-03T05:59:59.999Z', '2026-01-03T06:00:00.000Z']) {
    await kept({ notes: at, welded_at: at });
    await kept({ notes: 'other', joint: 'b', welded_at: at });
  }
  const day = { from: beginning('2026-01-02'), to: beginning('2026-01-02', 1), by: 'joint', value: 'a' };
  assert.deepEqual(await shown(day), ['2026-01-03T05:59:59.999Z', '2026-01-02T06:00:00.000Z']);
  assert.equal((await shown({ from: day.from, to: day.to })).length, 4);
  assert.equal((await shown({ from: day.to })).length, 2);
  const [last] = await store.page({ kind: 'weld-entry', most: 1, ...day });
  assert.deepEqual(await shown({ ...day, before: last }), ['2026-01-02T06:00:00.000Z']);
});

test('a page is as long without deleted entries, in a browser that reads in one go and in one that does not', async () => {
  for (let count = 0; count < 12; count++) {
    const { revision } = await kept({ notes: String(count), welded_at: `2026-01-${String(count + 10)}T12:00:00.000Z` });
    if (count % 2) await store.save({ id: revision.id, parents: [revision.rev], body: revision.body, deleted: true });
  }
  const wanted = ['10', '8', '6', '4'];
  assert.deepEqual(await shown({ most: 4 }), wanted);
  let asked = 0;
  IDBIndex.prototype.getAllRecords = function ({ query, count, direction }) {
    // What newer browsers have, of what this store has: asked for at once, the newest first.
    asked++;
    assert.equal(direction, 'prev');
    const [keys, values] = [this.getAllKeys(query), this.getAll(query)];
    const result = () => keys.result.map((key, place) => ({ primaryKey: key, value: values.result[place] })).reverse().slice(0, count);
    return new Proxy(values, { get: (target, name) => (name === 'result' ? result() : typeof target[name] === 'function' ? target[name].bind(target) : target[name]) });
  };
  try {
    assert.deepEqual(await shown({ most: 4 }), wanted);
  } finally {
    delete IDBIndex.prototype.getAllRecords;
  }
  assert.equal(asked, 1);
});

const entry = fields => ({ fields: { joint: 'bracket', ...fields } });

test('the passes of a joint become one question, in the unit and the kind of the newest', () => {
  const address = passesAddress([
    entry({ shown: '0.68 kJ/mm or 17.3 kJ/in', preheat_measured: '210 degF' }),
    entry({ shown: '17.3 kJ/in or 0.68 kJ/mm', limit_basis: 'arc-energy' }),
    entry({ shown: 'Not worked out', interpass_measured: '300 degF' }),
    entry({ shown: '1\u202f018\u00a0J/mm or 25.9 kJ/in' }),
    entry({ shown: '18.1 kJ/in or 0.71 kJ/mm', preheat_measured: '215 degF', heat_input_limit: '20 kJ/in' }),
  ]);
  assert.ok(address.startsWith('pass-chart?'));
  assert.deepEqual(Object.fromEntries(new URLSearchParams(address.split('?')[1])), {
    joint: 'bracket',
    limit_basis: 'heat-input',
    heats: '- - - - 18.1 kJ/in',
    preheats: '210 - - - 215 degF',
    interpasses: '- - 300 - - degF',
    heat_input_limit: '20 kJ/in',
  });
  assert.equal(passesAddress([entry({ shown: 'Not worked out' })]), '');
  assert.equal(passesAddress([]), '');
});

test('pairs are of one wire, each once, the newest first', () => {
  const wire = { wire_diameter: '0.035 in', wire_material: 'mild-steel' };
  const rows = [
    entry({ wire_feed_speed: '300 in/min', current: '180 A' }), // of no named wire
    entry({ ...wire, wire_feed_speed: '300 in/min', current: '180 A' }),
    entry({ ...wire, wire_feed_speed: '300 in/min', current: '180 A' }),
    entry({ ...wire, wire_diameter: '0.9 mm', wire_feed_speed: '8 m/min', current: '190 A' }), // the same wire to a caliper
    entry({ ...wire, wire_diameter: '0.045 in', wire_feed_speed: '200 in/min', current: '200 A' }),
    entry({ ...wire, wire_material: 'stainless', wire_feed_speed: '310 in/min', current: '150 A' }),
    entry({ ...wire, process: 'flux-cored-arc', wire_feed_speed: '320 in/min', current: '150 A' }),
    entry({ ...wire, wire_feed_speed: '200 in/min', current: '140 A' }),
    entry({ ...wire, current: '130 A' }),
  ];
  assert.deepEqual(pairsAmong(rows, 'mild-steel', '', 6).map(each => each.current), ['180 A', '190 A', '140 A']);
  assert.deepEqual(pairsAmong(rows, 'mild-steel', '0.045 in', 6).map(each => each.current), ['200 A']);
  assert.deepEqual(pairsAmong(rows, 'stainless', '0.035 in', 6).map(each => each.current), ['150 A']);
  assert.equal(pairsAmong(rows, 'mild-steel', '', 1).length, 1);
  assert.deepEqual(pairsAmong(rows, 'aluminum', '0.035 in', 6), []);
});
