// Fields that depend on a choice, rows and times: on the few parts of a form that these functions touch.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { filledIn, showAsked } from '../../static/page/fields.js';
import { seconds } from '../../static/page/timer.js';

class Part {
  constructor(attributes = {}, inside = {}) {
    this.attributes = attributes;
    this.inside = inside;
    this.is = new Set();
  }
  getAttribute = name => this.attributes[name] ?? null;
  toggleAttribute = (name, on) => (on ? this.is.add(name) : this.is.delete(name));
  querySelectorAll = selector => this.inside[selector] ?? [];
}
globalThis.FormData = class extends Map {
  constructor(form) {
    super(form.values);
  }
};

const row = text => new Part({}, { input: [{ type: 'text', value: text }] });

test('only filled boxes go into an address', () => {
  const values = [['voltage', '24'], ['current', ''], ['remark', 'a&b ü']];
  assert.equal(filledIn({ values }), 'voltage=24&remark=a%26b+%C3%BC');
});

test('a field whose choice is not made is hidden, and its box sends nothing', () => {
  const box = new Part();
  const field = new Part({ 'data-when': 'basis', 'data-when-is': 'energy heat' }, { 'input, select': [box] });
  const form = new Part({}, { '[data-when]': [field] });
  for (const [chosen, asked] of [['', false], ['energy', true], ['heat', true], ['he', false], ['energy heat', false]]) {
    form.values = [['basis', chosen]];
    showAsked(form);
    assert.equal(field.is.has('hidden'), !asked, chosen);
    assert.equal(box.is.has('disabled'), !asked, chosen);
  }
});

test('one empty row stands below the last that is filled', () => {
  for (const [texts, shown] of [[['', '', ''], 1], [['1', '', ''], 2], [['', '2', ''], 3], [['1', '2', '3'], 3], [[' ', '', ''], 1]]) {
    const rows = texts.map(row);
    showAsked(Object.assign(new Part({}, { '[data-rows]': [new Part({}, { '[data-row]': rows })] }), { values: [] }));
    assert.equal(rows.filter(each => !each.is.has('hidden')).length, shown, String(texts));
  }
});

test('a stop-watch shows tenths of a second and never runs backwards', () => {
  assert.deepEqual([0, 49, 1234, 61000, -5].map(seconds), ['0.0', '0.0', '1.2', '61.0', '0.0']);
});
