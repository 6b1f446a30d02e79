// Ticks of a checklist: kept by calculator and item, dated by the first one.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { keepTicks, ticksOf, withTick } from '../../static/page/ticks.js';

class Storage {
  #kept = new Map();
  getItem = key => this.#kept.get(key) ?? null;
  setItem = (key, value) => this.#kept.set(key, String(value));
  removeItem = key => this.#kept.delete(key);
}
const NONE = { since: 0, ids: [] };

beforeEach(() => {
  globalThis.localStorage = new Storage();
});

test('the first tick dates them all, whatever comes and goes after', () => {
  let ticks = withTick(NONE, 'chock', true, 100);
  ticks = withTick(ticks, 'lock', true, 200);
  assert.deepEqual(ticks, { since: 100, ids: ['chock', 'lock'] });
  ticks = withTick(ticks, 'chock', false, 300);
  assert.deepEqual(ticks, { since: 100, ids: ['lock'] });
  assert.deepEqual(withTick(withTick(ticks, 'lock', false, 400), 'lock', true, 500), { since: 500, ids: ['lock'] });
});

test('a tick is there once', () => {
  const ticks = withTick(withTick(NONE, 'chock', true, 100), 'chock', true, 200);
  assert.deepEqual(ticks.ids, ['chock']);
});

test('two calculators do not share their ticks', () => {
  keepTicks('make-safe', { since: 1, ids: ['clamp'] });
  assert.deepEqual(ticksOf('hot-work'), NONE);
  assert.deepEqual(ticksOf('make-safe'), { since: 1, ids: ['clamp'] });
});

test('without a tick nothing is kept', () => {
  keepTicks('make-safe', { since: 1, ids: ['clamp'] });
  keepTicks('make-safe', { since: 1, ids: [] });
  assert.equal(localStorage.getItem('ticks:make-safe'), null);
});

test('whatever else lies under the key is no tick', () => {
  for (const spoilt of ['{', 'null', '[]', '3', '{"ids":["a"]}', '{"since":1,"ids":"a"}']) {
    localStorage.setItem('ticks:make-safe', spoilt);
    assert.deepEqual(ticksOf('make-safe'), NONE, spoilt);
  }
  localStorage.setItem('ticks:make-safe', '{"since":1,"ids":["a",3,null]}');
  assert.deepEqual(ticksOf('make-safe').ids, ['a']);
});
