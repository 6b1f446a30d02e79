// One step less and more, worked out by hand: multiples, fractions, marks, typed units, the ends of the range.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { stepped, steps } from '../../static/page/steppers.js';

const UNITS = { in: 'in', '"': 'in', mm: 'mm', 'in/min': 'in/min', '°f': 'degF' };
const named = sign => UNITS[sign.toLowerCase()];
const SIZE = steps('in|1/16|0|2;mm|0.5|0|50.8');
const step = (text, way, offered = SIZE, chosen = 'in') => stepped(text, way, offered, chosen, named);

test('a step goes to the next multiple, as a fraction where the rule is marked in fractions', () => {
  const up = { '3/16': '1/4', '0': '1/16', '1': '1 1/16', '15/16': '1', '1 15/16': '2', '1-3/16': '1 1/4', '1/10': '1/8', '1/5': '1/4' };
  const down = { '1/4': '3/16', '1/16': '0', '1': '15/16', '1 1/8': '1 1/16', '1/10': '1/16', '5/32': '1/8' };
  for (const [text, expected] of Object.entries(up)) assert.equal(step(text, 1), expected, text);
  for (const [text, expected] of Object.entries(down)) assert.equal(step(text, -1), expected, text);
});

test('what was typed as decimals stays decimals, whatever its mark', () => {
  for (const [text, expected] of [['0.25', '0.3125'], ['.1', '0.125'], ['0,25', '0.3125'], ['1.', '1.0625']]) assert.equal(step(text, 1), expected, text);
  const volts = steps('V|0.5|5|60');
  for (const [text, way, expected] of [['24', 1, '24.5'], ['24.3', 1, '24.5'], ['24.3', -1, '24'], ['24,3', 1, '24.5'], ['0024', -1, '23.5']]) {
    assert.equal(step(text, way, volts, 'V'), expected, text);
  }
  // In binary 0.1 + 0.2 is not 0.3, nor is 3 x 0.05 what 0.15 is.
  assert.equal(step('0.1', 1, steps('m/min|0.05|0|1'), 'm/min'), '0.15');
  assert.equal(step('0.15', 1, steps('m/min|0.05|0|1'), 'm/min'), '0.2');
  assert.equal(step('0.3', -1, steps('m|0.1|0|9'), 'm'), '0.2');
});

test('a typed unit is the one that counts, and stays', () => {
  assert.equal(step('3/16 in', 1, SIZE, 'mm'), '1/4 in');
  assert.equal(step('3/16"', 1, SIZE, 'mm'), '1/4 "');
  assert.equal(step('6 MM', 1), '6.5 MM');
  assert.equal(step('6', 1, SIZE, 'mm'), '6.5');
  assert.equal(step('6 furlong', 1), null);
  assert.equal(step('200 in/min', 1), null, 'not a unit of this field');
});

test('no step leaves the range, and none is taken from outside of it', () => {
  const amps = steps('A|5|7|58');
  for (const [text, way, expected] of [['10', -1, null], ['12', -1, '10'], ['53', 1, '55'], ['55', 1, null], ['57', 1, null], ['58', -1, '55'], ['500', -1, null], ['1', 1, null], ['5', 1, '10']]) {
    assert.equal(step(text, way, amps, 'A'), expected, `${text} ${way}`);
  }
  assert.equal(step('2', 1), null);
  assert.equal(step('0', -1), null);
});

test('below zero counts on downwards', () => {
  const cold = steps('degF|5|-4|122');
  for (const [text, way, expected] of [['3', -1, '0'], ['-4', 1, '0'], ['\u22123', 1, '0'], ['0', -1, null], ['- 2', 1, null]]) assert.equal(step(text, way, cold, 'degF'), expected, text);
  assert.equal(step('-1/2', -1, steps('in|1/4|-9|9')), '-3/4');
  assert.equal(step('0 °F', 1, cold, 'degC'), '5 °F');
});

test('thousands that are grouped by spaces are one number', () => {
  for (const text of ['1 200', '1\u202f200', '1200']) assert.equal(step(text, 1, steps('psi|100|0|4000'), 'psi'), '1300', text);
});

test('nothing is made of what cannot be read as one number', () => {
  for (const text of ['', ' ', 'unknown', '1,234', '1.234,5', '1.2.3', '.', ',', '-', '1/0', '3/', '/4', '1e3', '1 2 3/4', '\u0663', '\u00bd', '$45']) assert.equal(step(text, 1), null, text);
});
