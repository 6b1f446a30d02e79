// A wait is kept as two times of the clock; what is left of it is worked out anew each time it is looked at.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { left, waitKey, waitOf } from '../../static/page/countdown.js';
import { inputsName } from '../../static/page/opened.js';

const HOUR = 3600 * 1000;
const wait = { start: 1000, end: 1000 + HOUR };

test('what is left counts down to none and not below', () => {
  assert.equal(left(wait, 1000), '01:00:00');
  assert.equal(left(wait, 1001), '01:00:00', 'a second is over when it is over');
  assert.equal(left(wait, 2000), '59:59');
  assert.equal(left(wait, wait.end - 1), '00:01', 'not over before it is over');
  assert.equal(left(wait, wait.end), '00:00');
  assert.equal(left(wait, wait.end + HOUR), '00:00');
});

test('a long wait shows its hours', () => {
  assert.equal(left({ start: 0, end: 25 * HOUR + 61000 }, 0), '25:01:01');
});

test('what is kept is read back, and nothing else is a wait', () => {
  assert.deepEqual(waitOf(`${wait.start} ${wait.end}`), wait);
  for (const spoilt of [null, '', '1000', 'a b', '5 5', '9 5', '0 5', '{}']) assert.equal(waitOf(spoilt), undefined, String(spoilt));
});

test('a wait and what was typed are of the job that the page was opened from, and of no other', () => {
  const [one, other] = ['0', '1'].map(each => `0000000${each}-0000-4000-8000-000000000000`);
  assert.equal(waitKey('hot-work', 'timer', ''), 'countdown:hot-work:timer');
  assert.equal(new Set(['', one, other].map(job => waitKey('hot-work', 'timer', job))).size, 3);
  const names = ['', `#job=${one}&take=place:where`, `#job=${other}`, `#correct=${one}&rev=1-${'a'.repeat(32)}`].map(opened => {
    globalThis.document = /** @type {any} */ ({ documentElement: { dataset: { opened } } });
    return inputsName('hot-work');
  });
  assert.deepEqual(names, ['hot-work', `hot-work#${one}`, `hot-work#${other}`, 'hot-work']);
  assert.equal(inputsName('job'), `job#${one}`, 'a record that is corrected is its own');
});
