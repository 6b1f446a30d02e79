// Which answer is compared with, what of it is told, and whose unit a box gets: what needs no page.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { changed, comparedWith } from '../../static/page/before.js';
import { isFree, ownUnits } from '../../static/page/units.js';

const volts = (text, number, label = 'Heat input') => ({ typed: '', label, number, shown: text ? [['volts', text]] : [] });

test('the answer to compare with is the last one rested at, unless that one shows', () => {
  const [one, two] = [volts('24 V', '17.3'), volts('30 V', '21.6')];
  const found = (rested, text) => comparedWith(rested, volts(text).shown, 'Heat input');
  assert.equal(found([], '24 V'), undefined);
  assert.equal(found([one], '24 V'), undefined);
  for (const text of ['3 V', '30 V', '']) assert.equal(found([one], text), one, text);
  assert.equal(found([one, two], '30 V'), one, 'at rest, it is compared with the one before');
  assert.equal(found([one, two], '2 V'), two);
  assert.equal(found([one, two], '24 V'), two, 'put back, the other way round');
  assert.equal(found([one, volts('30 V', '2 min', 'Arc time')], '2 V'), one, 'an answer of something else says nothing');
});

test('what was changed is told as it was, in the order of the form', () => {
  const then = [['volts', '24 V'], ['amps', '180 A'], ['process', 'Gas metal arc']];
  assert.deepEqual(changed(then, then), []);
  assert.deepEqual(changed(then, [['volts', '24.5 V'], ['amps', '180 A'], ['process', 'Flux-cored']]), ['24 V', 'Gas metal arc']);
  assert.deepEqual(changed(then, [['volts', '24 V'], ['process', 'Gas metal arc']]), ['180 A'], 'blank now');
  assert.deepEqual(changed(then, [...then, ['time', '30 s']]), [''], 'blank then');
});

test('a number in an address keeps the unit that it has there, and so does one that was typed', () => {
  const free = (search, name, typed = '') => isFree(new URLSearchParams(search), name, typed);
  assert.equal(free('', 'feed_unit'), true);
  assert.equal(free('volts=24+V', 'feed_unit'), true);
  assert.equal(free('', 'feed_unit', '250'), false);
  assert.equal(free('feed=250', 'feed_unit'), false);
  assert.equal(free('feed=', 'feed_unit'), false);
  assert.equal(free('feed_unit=in%2Fmin', 'feed_unit'), false);
  assert.equal(free('', 'units'), true);
  assert.equal(free('volts=24+V', 'units'), false, 'a link shows what its sender saw');
});

test('what is no list of units is none', () => {
  for (const [kept, own] of [[null, {}], ['{', {}], ['null', {}], ['7', {}], ['{"feed":"m/min"}', { feed: 'm/min' }]]) {
    globalThis.localStorage = { getItem: () => kept };
    assert.deepEqual(ownUnits(), own, String(kept));
  }
});
