// The fields of a record under node: what was typed, the cards that it keeps, and what changed between two of them.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cardsOf, cardsShown, changes, isShown, partOf, typedOf } from '../../static/page/records/typed.js';

const fields = {
  title: 'Bucket ear', 'joints-1-thickness': '1/2 in', status: 'open', signature: '1,2', spool: 'x', shown: '5 lb',
  card_load: '["To load",["wire","Wire","5 lb"]]', 'price.labour_rate': '90', 'price.shown': '$400', card_price: '["Price",["all","All","$400"]]',
};

test('what was typed is told from what scripts keep beside it, part by part', () => {
  assert.deepEqual(typedOf(fields), { title: 'Bucket ear', 'joints-1-thickness': '1/2 in' });
  assert.deepEqual(typedOf(fields, 'price.'), { labour_rate: '90' });
  assert.deepEqual([partOf('job', 'job'), partOf('job-price', 'job'), partOf('weld-entry', 'weld-entry')], ['', 'price.', '']);
});

test('an answer of one part does not sweep away what another part said', () => {
  const names = Object.keys(fields);
  assert.deepEqual(names.filter(name => isShown(name, '')), ['shown', 'card_load']);
  assert.deepEqual(names.filter(name => isShown(name, 'price.')), ['price.shown', 'card_price']);
});

test('what changed is told line by line, and what came or went too', () => {
  const before = { card_a: JSON.stringify(['A', ['one', 'One', '1'], ['two', 'Two', '2'], ['gone', 'Gone', '3']]) };
  const now = { card_a: JSON.stringify(['A', ['one', 'One', '1'], ['two', 'Two', '4']]), card_b: JSON.stringify(['B', ['one', 'New', '5']]) };
  assert.deepEqual(changes(before, now), [
    { card: 'A', label: 'Two', before: '2', now: '4' },
    { card: 'B', label: 'New', before: '', now: '5' },
    { card: 'A', label: 'Gone', before: '3', now: '' },
  ]);
  assert.deepEqual(changes(now, now), []);
});

test('cards that are none are no cards, and break nothing', () => {
  for (const text of ['', '{', '7', 'null', '{"a":1}', '[["k","l"],["k",null,"v","w"]]']) assert.deepEqual(cardsOf({ card_x: text }).flatMap(each => each.lines), []);
  assert.deepEqual(cardsOf({ card_x: '["H",["k","l",{"toString":1}],["k","l",4]]'.replace('{"toString":1}', 'null') })[0].lines, [['k', 'l', 'null'], ['k', 'l', '4']]);
});

/** As much of a page as cardsShown asks for. */
const text = words => ({ textContent: words });
const page = cards => ({
  querySelectorAll: () =>
    cards.map(([name, heading, ...lines]) => ({
      getAttribute: () => name,
      querySelector: () => text(heading),
      querySelectorAll: () => lines.map(([key, label, value]) => ({ getAttribute: () => key, querySelector: which => text(which === 'dt' ? label : value) })),
    })),
});

test('a card too long for one field goes on in another, and is one card again when it is read', () => {
  const lines = Array.from({ length: 90 }, (_, place) => [`line-${place}`, `Label ${place}`, 'x'.repeat(80)]);
  const kept = cardsShown(page([['long', 'Long', ...lines]]));
  assert.ok(Object.keys(kept).length > 1 && Object.values(kept).every(each => each.length <= 4000));
  assert.deepEqual(cardsOf(kept), [{ name: 'long', heading: 'Long', lines }]);
});

test('the cards of a price are kept under its own name', () => {
  const one = [['all', 'All', '$400']];
  assert.deepEqual(Object.keys(cardsShown(page([['price', 'Price', ...one], ['terms', 'Terms', ...one]]), 'price.')), ['card_price', 'card_price-terms']);
});
