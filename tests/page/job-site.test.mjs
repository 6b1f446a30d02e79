// What a job keeps of its lists, and until when its fire watch lasts.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { listOf, stand, withTicks } from '../../static/page/records/job-ticks.js';
import { watchTime } from '../../static/page/records/work-site.js';

const AT = '2026-05-01T08:00:00.000Z';
const LATER = '2026-05-01T09:00:00.000Z';
const HOUR = 3600;
/** @param {string} text */
const kept = text => listOf({ 'ticks.make-safe': text }, 'make-safe');

test('a list says what was ticked, when, and what was not', () => {
  const list = kept(withTicks(undefined, 'Before', [['lock', 'Locked'], ['chock', 'Chocked']], new Map([['lock', AT]])));
  assert.deepEqual(list?.items, [['lock', 'Locked', AT], ['chock', 'Chocked', '']]);
  assert.deepEqual(stand(list), { done: 1, all: 2, last: AT, left: ['Chocked'] });
});

test('a tick of one phone does not take away what the job had, and what was ticked of another list stays', () => {
  const old = kept(withTicks(undefined, 'Before', [['lock', 'Locked'], ['falls', 'Blocked']], new Map([['lock', AT]])));
  const list = kept(withTicks(old, 'Before', [['chock', 'Chocked']], new Map([['chock', LATER]])));
  assert.deepEqual(list?.items, [['chock', 'Chocked', LATER], ['lock', 'Locked', AT]]);
  const less = kept(withTicks(list, 'Before', [['chock', 'Chocked']], new Map([['chock', '']])));
  assert.deepEqual(stand(less).left, ['Chocked']);
});

test('what is no list is none, and a list fits into a field', () => {
  for (const text of ['', '{}', '["Before"]', '["Before", ["lock", 1, ""]]']) assert.equal(kept(text), undefined);
  const many = Array.from({ length: 22 }, (_, at) => /** @type {[string, string]} */ ([`i${at}`, 'x'.repeat(500)]));
  assert.ok(withTicks(undefined, 'Before', many, new Map()).length <= 4000);
});

test('the watch is counted from the latest spark that is known of', () => {
  assert.equal(watchTime({}, '', HOUR), undefined);
  assert.equal(watchTime({}, LATER), undefined); // how long is not known
  const tapped = { 'watch.from': AT, 'watch.until': LATER };
  assert.equal(watchTime(tapped, '', HOUR)?.end, Date.parse(LATER));
  assert.equal(watchTime(tapped, LATER)?.end, Date.parse(LATER) + HOUR * 1000);
  assert.equal(watchTime(tapped, '2026-04-30T08:00:00.000Z', HOUR)?.start, Date.parse(AT));
  assert.equal(watchTime({ ...tapped, status: 'closed' }, LATER, 1)?.end, Date.parse(LATER));
});

test('a watch that was started on the list counts as the button does, and is not cut short', () => {
  const [at, later] = [AT, LATER].map(each => Date.parse(each));
  const begun = { start: later, end: later + 2 * HOUR * 1000 };
  assert.deepEqual(watchTime({}, '', undefined, begun), begun); // how long, it says itself
  assert.deepEqual(watchTime({}, AT, HOUR, begun), begun);
  const tapped = { 'watch.from': AT, 'watch.until': LATER };
  assert.deepEqual(watchTime(tapped, '', HOUR, begun), begun, 'the later spark counts');
  assert.deepEqual(watchTime(tapped, '', undefined, { start: at - 1, end: at + 1 }), { start: at, end: later });
  assert.equal(watchTime({}, '2026-05-01T09:30:00.000Z', undefined, begun)?.end, begun.end + HOUR * 500, 'a weld after it starts it again');
  assert.deepEqual(watchTime({ ...tapped, status: 'closed' }, '', HOUR, begun), { start: at, end: later }, 'closed: as it was kept');
});
