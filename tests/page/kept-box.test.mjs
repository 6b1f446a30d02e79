// What goes with a choice is kept for each option, filled in over a blank alone, and never over what was typed.
import assert from 'node:assert/strict';
import { beforeEach, test } from 'node:test';
import { watchKeptBoxes } from '../../static/page/kept-box.js';

class Storage {
  #kept = new Map();
  getItem = key => this.#kept.get(key) ?? null;
  setItem = (key, value) => this.#kept.set(key, String(value));
  removeItem = key => this.#kept.delete(key);
}
class Element extends EventTarget {
  constructor(parts) {
    super();
    Object.assign(this, parts);
  }
}
globalThis.HTMLElement = globalThis.HTMLInputElement = globalThis.HTMLSelectElement = Element;

let asked, form, box, unit, note, spool;
beforeEach(() => {
  globalThis.localStorage = new Storage();
  asked = 0;
  spool = 's300';
  box = new Element({ value: '' });
  unit = new Element({ value: 'in' });
  note = new Element({ dataset: { keptBox: 'core_diameter', keptWith: 'spool' }, hidden: true });
  form = new Element({ dataset: { calculator: 'spool-life' }, querySelectorAll: () => [note] });
  globalThis.document = { getElementById: id => (id === 'core_diameter' ? box : unit) };
  globalThis.FormData = class {
    get = () => spool;
  };
  watchKeptBoxes(form, () => asked++);
});
const change = changed => {
  changed();
  form.dispatchEvent(new Event('change'));
};

test('a barrel comes back with its spool, and another spool starts blank', () => {
  change(() => (box.value = '8.5'));
  change(() => (spool = 's200'));
  assert.equal(box.value, '8.5', 'what was typed stays, since nothing was kept for this one');
  change(() => (box.value = '4'));
  change(() => (box.value = ''));
  change(() => (spool = 's300'));
  assert.deepEqual([box.value, unit.value, note.hidden, asked], ['8.5', 'in', false, 1]);
  change(() => (spool = 's200'));
  assert.deepEqual([box.value, note.hidden], ['4', false]);
});

test('a unit is kept with its number', () => {
  change(() => Object.assign(box, { value: '220' }) && (unit.value = 'mm'));
  change(() => (spool = 's200'));
  change(() => (box.value = ''));
  unit.value = 'in';
  change(() => (spool = 's300'));
  assert.deepEqual([box.value, unit.value], ['220', 'mm']);
});

test('what was typed is not written over', () => {
  change(() => (box.value = '8.5'));
  change(() => (spool = 's200'));
  change(() => (box.value = '5'));
  change(() => (spool = 's300'));
  assert.deepEqual([box.value, note.hidden], ['5', true]);
});

/** A form with the welder's own rates alone, as it is opened. */
function opened(typed = {}) {
  const boxes = {};
  const notes = ['labor_rate', 'tax_name'].map(name => {
    boxes[name] = new Element({ value: typed[name] ?? '' });
    return new Element({ dataset: { keptBox: name, keptWith: '' }, hidden: true });
  });
  boxes.labor_rate_unit = new Element({ value: '/h' });
  const page = new Element({ dataset: { calculator: 'job-price' }, querySelectorAll: () => notes });
  globalThis.document = { getElementById: id => boxes[id] ?? null };
  const filled = watchKeptBoxes(page, () => asked++);
  const type = (name, value) => {
    boxes[name].value = value;
    const event = new Event('change');
    Object.defineProperty(event, 'target', { value: boxes[name] });
    page.dispatchEvent(event);
  };
  return { filled, type, notes, values: () => [boxes.labor_rate.value, boxes.tax_name.value] };
}

test('rates of one\u2019s own come back into a blank form, with a space in a name kept', () => {
  const first = opened();
  assert.equal(first.filled, false);
  first.type('labor_rate', '95');
  first.type('tax_name', 'Sales tax');
  const next = opened();
  assert.deepEqual([next.filled, next.values(), next.notes[0].hidden], [true, ['95', 'Sales tax'], false]);
  next.type('labor_rate', '100');
  assert.deepEqual([opened().values(), next.notes[0].hidden], [['100', 'Sales tax'], true]);
});

test('what was left blank in a price that has others stays blank', () => {
  const first = opened();
  first.type('labor_rate', '95');
  first.type('tax_name', 'VAT');
  const again = opened({ labor_rate: '80' });
  assert.deepEqual([again.filled, again.values()], [false, ['80', '']]);
  assert.deepEqual(opened().values(), ['95', 'VAT'], 'and opening it forgets nothing');
});

test('a rate taken out is forgotten', () => {
  const first = opened();
  first.type('labor_rate', '95');
  first.type('labor_rate', '');
  assert.equal(opened().filled, false);
});
