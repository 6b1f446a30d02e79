// What the page remembers, and what it does when a browser refuses to.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { forgetRecent, inputsKey, keep, keepRecent, lastOfEach, linkKey, pinned, recall, recentAnswers, turnPin } from '../../static/page/memory.js';

class Storage {
  #kept = new Map();
  getItem = key => this.#kept.get(key) ?? null;
  setItem = (key, value) => this.#kept.set(key, String(value));
  removeItem = key => this.#kept.delete(key);
}
const full = () => {
  throw new Error('QuotaExceededError');
};
const answer = (calculator, href, at) => ({ calculator, href, label: 'Heat input', number: '17.3 kJ/in', at });

beforeEach(() => {
  globalThis.localStorage = new Storage();
});

test('what is kept is recalled, and null forgets it', () => {
  keep('a', '1');
  assert.equal(recall('a'), '1');
  keep('a', null);
  assert.equal(recall('a'), null);
});

test('a browser that refuses storage is a browser that forgets', () => {
  globalThis.localStorage = { getItem: full, setItem: full, removeItem: full };
  keep('a', '1');
  keep('a', null);
  assert.equal(recall('a'), null);
  assert.deepEqual(recentAnswers(), []);
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 1), 0);
});

test('two calculators never share a key', () => {
  const keys = ['heat-input', 'wire-feed'].flatMap(name => [inputsKey(name), linkKey(name)]);
  assert.equal(new Set(keys).size, 4);
});

test('answers on one open page are one question: the newer replaces the older', () => {
  keepRecent(answer('heat-input', 'heat-input?voltage=2', 10), 5);
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 20), 5);
  assert.deepEqual(recentAnswers().map(each => each.href), ['heat-input?voltage=24']);
});

test('a question asked on an earlier visit stays, and the same answer is not listed twice', () => {
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 10), 5);
  keepRecent(answer('heat-input', 'heat-input?voltage=30', 40), 30);
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 60), 50);
  assert.deepEqual(recentAnswers().map(each => each.href), ['heat-input?voltage=24', 'heat-input?voltage=30']);
});

test('twelve answers are kept, newest first', () => {
  for (let at = 1; at <= 15; at++) keepRecent(answer('heat-input', `heat-input?voltage=${at}`, at), at);
  assert.equal(recentAnswers().length, 12);
  assert.equal(recentAnswers()[0].at, 15);
});

test('whatever else lies under the key is no answer', () => {
  for (const spoilt of ['{', 'null', '{"a":1}', '[null, 3, {"href": 1, "number": "1"}]']) {
    keep('recent', spoilt);
    assert.deepEqual(recentAnswers(), [], spoilt);
  }
});

test('forgetting leaves the inputs alone', () => {
  keep(inputsKey('heat-input'), 'voltage=24');
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 1), 0);
  forgetRecent();
  assert.deepEqual(recentAnswers(), []);
  assert.equal(recall(inputsKey('heat-input')), 'voltage=24');
});

test('a pin is turned on and off, in the order of pinning, and a spoilt list is none', () => {
  const pin = calculator => ({ calculator, title: calculator.toUpperCase() });
  for (const each of ['heat-input', 'preheat', 'settings', 'preheat']) turnPin(pin(each));
  assert.deepEqual(pinned(), [pin('heat-input'), pin('settings')]);
  for (const spoilt of ['{', 'null', '7', '[null, {"calculator": 1}, {"calculator": "x"}]']) {
    keep('pinned', spoilt);
    assert.deepEqual(pinned(), [], spoilt);
  }
  turnPin(pin('preheat'));
  assert.deepEqual(pinned(), [pin('preheat')]);
});

test('of each question the newest answer counts, the newest first', () => {
  keepRecent(answer('heat-input', 'heat-input?voltage=20', 1), 1);
  keepRecent(answer('preheat', 'preheat?thickness=1', 2), 2);
  keepRecent(answer('heat-input', 'heat-input?voltage=24', 3), 3);
  assert.deepEqual(lastOfEach().map(each => each.href), ['heat-input?voltage=24', 'preheat?thickness=1']);
});

test("a record's form is no answer to come back to: its own list has it", () => {
  keepRecent(answer('preheat', 'preheat?thickness=1', 1), 1);
  for (const each of ['job', 'weld-entry', 'stock', 'job-price']) keepRecent(answer(each, `${each}?title=x`, 2), 2);
  assert.deepEqual(lastOfEach().map(each => each.calculator), ['preheat']);
});
