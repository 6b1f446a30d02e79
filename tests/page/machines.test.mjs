// The welder's own machines: kept, added to, told apart, and which of them the boxes hold.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { held, pickedAgain, unused } from '../../static/page/machines.js';
import { follow, followed, keep, keepMachines, keepPicked, machines, pickedMachine, withMachine } from '../../static/page/memory.js';

class Storage {
  #kept = new Map();
  getItem = key => this.#kept.get(key) ?? null;
  setItem = (key, value) => this.#kept.set(key, String(value));
  removeItem = key => this.#kept.delete(key);
}

beforeEach(() => {
  globalThis.localStorage = new Storage();
});

const names = ['machine', 'feed_dial', 'arc_term'];
const red = { name: 'Red box', fields: { machine: 'Red box', feed_dial: '1=120 3=210 in/min' } };
const blue = { name: 'Blue', fields: { machine: 'Blue', arc_term: '1.1' } };

test('machines are kept by name', () => {
  keepMachines([red, blue]);
  assert.deepEqual(machines(), [blue, red]);
  keepMachines([]);
  assert.equal(localStorage.getItem('machines'), null);
});

test('whatever else lies under the key is no machine', () => {
  for (const spoilt of ['{', 'null', '{"a":1}', '[null, 3, {"name": 1, "fields": {}}, {"name": "a"}, {"name": "a", "fields": 3}]']) {
    keep('machines', spoilt);
    assert.deepEqual(machines(), [], spoilt);
  }
});

test('a browser that refuses storage keeps no machine and does not fail', () => {
  const full = () => {
    throw new Error('QuotaExceededError');
  };
  globalThis.localStorage = { getItem: full, setItem: full, removeItem: full };
  keepMachines([red]);
  assert.deepEqual(machines(), []);
});

test('what is measured later is added to what was known, and the newer reading counts', () => {
  const list = withMachine([red, blue], 'Red box', { arc_term: '1.08' });
  assert.equal(list.length, 2);
  const found = list.find(each => each.name === 'Red box').fields;
  assert.deepEqual(found, { ...red.fields, arc_term: '1.08' });
  const again = withMachine(list, 'Red box', { feed_dial: '1=100 3=200 in/min' });
  assert.equal(again.find(each => each.name === 'Red box').fields.feed_dial, '1=100 3=200 in/min');
  assert.deepEqual(red.fields, { machine: 'Red box', feed_dial: '1=120 3=210 in/min' }, 'the list before is for undoing');
});

test('a machine kept without a name gets one that no other has', () => {
  assert.equal(unused([], 'Machine'), 'Machine');
  const list = withMachine([], 'Machine', { arc_term: '1' });
  assert.equal(list[0].fields.machine, 'Machine');
  assert.equal(unused(list, 'Machine'), 'Machine 2');
  assert.equal(unused([...list, { name: 'Machine 2', fields: {} }], 'Machine'), 'Machine 3');
});

test('the boxes hold a machine only if every one of them is its own', () => {
  const list = [red, blue];
  assert.equal(held(list, names, { machine: '', feed_dial: '', arc_term: '' }), '');
  assert.equal(held(list, names, red.fields), 'Red box');
  assert.equal(held(list, names, { ...blue.fields, feed_dial: '' }), 'Blue');
  assert.equal(held(list, names, { ...red.fields, arc_term: '1.2' }), null);
  assert.equal(held([], names, red.fields), null);
});

test('what a calculator does not ask of a machine plays no part in whether it is that machine', () => {
  const taps = { ...red, fields: { ...red.fields, voltage_dial: 'A=16 B=18 V' } };
  assert.equal(held([taps], names, red.fields), 'Red box');
});

test('the machine picked last is remembered, and so is that none is', () => {
  assert.equal(pickedMachine(), null);
  keepPicked('Red box');
  assert.equal(pickedMachine(), 'Red box');
  keepPicked('');
  assert.equal(pickedMachine(), '');
});

test('a link of the book is told from one from elsewhere, once', () => {
  assert.equal(followed('https://book/settings'), '');
  follow('next', 'https://book/settings?thickness=3+mm');
  assert.equal(followed('https://book/settings?thickness=3+mm'), 'next');
  assert.equal(followed('https://book/settings?thickness=3+mm'), '');
  follow('home', 'https://book/settings');
  assert.equal(followed('https://book/wire-feed'), '');
  assert.equal(followed('https://book/settings'), '', 'a link that led elsewhere is forgotten');
});

test('the machine picked last is picked again where the boxes are blank, by whatever tap of the welder', () => {
  for (const from of ['home', 'next']) {
    assert.equal(pickedAgain([red, blue], 'Red box', from, '', ''), 'Red box');
    assert.equal(pickedAgain([red, blue], '', from, '', ''), null, 'none was picked and none is there');
    assert.equal(pickedAgain([red, blue], null, from, '', ''), null, 'nothing was ever picked');
    assert.equal(pickedAgain([blue], 'Red box', from, '', ''), null, 'it was deleted');
  }
});

test('a link from elsewhere is left as it is', () => {
  for (const now of ['', 'Blue', null]) assert.equal(pickedAgain([red, blue], 'Red box', '', now, 'Blue'), null);
});

test('the question before hands on its machine', () => {
  assert.equal(pickedAgain([red, blue], 'Red box', 'next', 'Blue', 'Blue'), null);
  assert.equal(pickedAgain([red, blue], 'Red box', 'next', null, 'Shop'), null);
});

test('of what a page was last asked only a machine of another name gives way', () => {
  assert.equal(pickedAgain([red, blue], 'Red box', 'home', 'Blue', 'Blue'), 'Red box');
  assert.equal(pickedAgain([red, blue], '', 'home', 'Blue', 'Blue'), '', 'no machine was picked since');
  assert.equal(pickedAgain([red, blue], 'Red box', 'home', null, 'Blue'), 'Red box', 'Blue was measured again since');
  assert.equal(pickedAgain([red, blue], 'Red box', 'home', null, 'Shop'), null, 'typed by hand');
  assert.equal(pickedAgain([red, blue], 'Red box', 'home', 'Red box', 'Red box'), null);
});
