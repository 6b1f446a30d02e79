// What a job's paper says beside what was typed: signatures, days, what was changed after signing.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { changedSinceSigned, dayOf } from '../../static/page/records/paper-facts.js';
import { signatureText, simplified, strokesOf } from '../../static/page/records/signature.js';

test('a signature comes back as it was drawn, as few points as draw it', () => {
  assert.equal(signatureText([[[0, 0], [50, 0], [100, 0]], [[5, 5]]]), '0,0 100,0;5,5');
  assert.deepEqual(strokesOf('0,0 100,0;5,5'), [[[0, 0], [100, 0]], [[5, 5]]]);
  assert.deepEqual(simplified([[0, 0], [50, 40], [100, 0]], 1), [[0, 0], [50, 40], [100, 0]]);
  assert.deepEqual(simplified([[0, 0], [50, 1], [100, 0]], 1), [[0, 0], [100, 0]]);
});

test('the longest scribble fits into one field and is still one', () => {
  const stroke = Array.from({ length: 9000 }, (_, at) => [at % 600, Math.round(100 + 90 * Math.sin(at / 3))]);
  const text = signatureText([stroke, stroke]);
  assert.ok(text.length <= 4000 && strokesOf(text).length === 2 && strokesOf(text)[0].length > 1, String(text.length));
});

test('a text that is no signature draws nothing', () => {
  for (const text of ['', undefined, '1,2 ', '1,2,3', '-1,2', 'M0 0', '1,2;<b>', '1e9,2', '1,2  3,4']) assert.deepEqual(strokesOf(text), []);
});

test('a day is read only where it is one day', () => {
  assert.equal(dayOf('2027-06-30'), '2027-06-30');
  assert.equal(dayOf('30 June 2027'), '2027-06-30');
  assert.equal(dayOf('June 30, 2027'), '2027-06-30');
  for (const text of ['06/07/2027', '2027-02-30', 'June 2027', 'soon', '', undefined]) assert.equal(dayOf(text), undefined, text);
});

const revision = (saved_at, fields) => ({ saved_at, body: JSON.stringify({ kind: 'job', schema: 1, build: 'b', fields }) });

test('what was changed after a signature is named, and what cannot matter to it is not', () => {
  const signed = { title: 'a', card_load: '["Load",["wire","Wire","1 kg"]]', 'price.total': '1', signed_at: 'T', signature: '1,1' };
  const all = [revision('1', { title: 'a' }), revision('2', signed)];
  assert.deepEqual(changedSinceSigned(all, signed), []);
  assert.deepEqual(changedSinceSigned(all, { ...signed, status: 'closed', closed_at: 'x', 'price.paid': 'all', spool: 's' }), []);
  assert.deepEqual(changedSinceSigned(all, { ...signed, 'price.total': '2' }), []);
  const later = { ...signed, title: 'b', card_load: '["Load",["wire","Wire","2 kg"]]', wps: '7' };
  assert.deepEqual(changedSinceSigned([...all, revision('3', later)], later).sort(), ['card_load', 'title', 'wps']);
  assert.deepEqual(changedSinceSigned(all, { title: 'b' }), []);
});

test('a signature on the quote is about the price too, and is another one than that on the sheet', () => {
  const signed = { title: 'a', 'price.total': '1', 'quote.signed_at': 'T', 'quote.signature': '1,1' };
  const all = [revision('1', signed)];
  assert.deepEqual(changedSinceSigned(all, { ...signed, 'price.total': '2', signed_at: 'U', signature: '2,2' }, 'quote.'), ['price.total']);
  assert.deepEqual(changedSinceSigned(all, { ...signed, 'price.total': '2' }), []);
});

test('what was paid since is no change of what was agreed', () => {
  const price = paid => JSON.stringify(['Price', ['total', 'Total', '5'], ...(paid ? [['paid', 'Paid', '5']] : []), ['due', 'Due', paid ? '0' : '5']]);
  const signed = { 'quote.signed_at': 'T', card_price: price(false), 'price.paid': 'none' };
  assert.deepEqual(changedSinceSigned([revision('1', signed)], { ...signed, card_price: price(true), 'price.paid': 'all' }, 'quote.'), []);
  assert.deepEqual(changedSinceSigned([revision('1', signed)], { ...signed, card_price: price(true).replace('"5"', '"6"') }, 'quote.'), ['card_price']);
});
