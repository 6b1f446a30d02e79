// What fixed a fault: kept by what was asked, forgotten again, and nothing else taken for it.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { fixes, keep, keepFixes } from '../../static/page/memory.js';

class Storage {
  #kept = new Map();
  getItem = key => this.#kept.get(key) ?? null;
  setItem = (key, value) => this.#kept.set(key, String(value));
  removeItem = key => this.#kept.delete(key);
}

beforeEach(() => {
  globalThis.localStorage = new Storage();
});

const wind = { 'porosity.mild-steel.solid': { cause: 'wind', at: 1 } };

test('a fix is kept by what was asked', () => {
  assert.deepEqual(fixes(), {});
  keepFixes(wind);
  assert.deepEqual(fixes(), wind);
});

test('the last fix taken back leaves nothing behind', () => {
  keepFixes(wind);
  keepFixes({});
  assert.equal(localStorage.getItem('fixes'), null);
});

test('whatever else lies under the key is no fix', () => {
  for (const spoilt of ['{', 'null', '3', '[1]', '{"a": 1}', '{"a": {"cause": 3, "at": 1}}', '{"a": {"cause": "wind"}}', '{"a": null}']) {
    keep('fixes', spoilt);
    assert.deepEqual(fixes(), {}, spoilt);
  }
  keep('fixes', JSON.stringify({ ...wind, spoilt: { cause: 'wind', at: 'yesterday' } }));
  assert.deepEqual(fixes(), wind);
});

test('a browser that refuses storage keeps no fix and does not fail', () => {
  const full = () => {
    throw new Error('QuotaExceededError');
  };
  globalThis.localStorage = { getItem: full, setItem: full, removeItem: full };
  keepFixes(wind);
  assert.deepEqual(fixes(), {});
});
