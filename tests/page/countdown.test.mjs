// A wait is kept as two times of the clock; what is left of it is worked out anew each time it is looked at.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { left, waitOf } from '../../static/page/countdown.js';

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
