// @ts-check
// The passes of one joint as a question to Python, which draws them.

/** @typedef {import('./database.js').Row} Row */

const HEAT = /^([\d.]+) ?([kM]?J\/(?:in|mm|m))/;

/** What an entry's answer said of its heat: the number and its unit; none if it was not worked out. @param {Row} row @returns {[string, string] | undefined} */
function heatOf(row) {
  const [, number, unit] = HEAT.exec((row.fields.shown ?? '').replace(/[\u202f\u2009]/g, '').replace(/\u00a0/g, ' ')) ?? [];
  return number && unit ? [number, unit] : undefined;
}

/** @param {string | undefined} text @returns {[string, string] | undefined} a number and its unit, as they were typed */
function split(text) {
  const [, number, unit] = /^(-?[\d.,]+) ?([A-Za-z]+)$/.exec(text?.trim() ?? '') ?? [];
  return number && unit ? [number.replace(',', '.'), unit] : undefined;
}

/** Numbers in the order of the passes, `-` where there is none, those in another unit too; the unit at the end. @param {([string, string] | undefined)[]} all */
function series(all) {
  const unit = all.filter(Boolean).at(-1)?.[1];
  if (!unit) return '';
  return [...all.map(each => (each?.[1] === unit ? each[0] : '-')), unit].join(' ');
}

/**
 * @param {Row[]} rows the oldest first
 * @returns {string} the address of their chart; '' if there is nothing to draw
 */
export function passesAddress(rows) {
  const last = rows.at(-1);
  if (!last) return '';
  // Arc energy and heat input are two numbers: only those of the newest entry's kind stand in one chart.
  const isArcEnergy = (/** @type {Row} */ row) => row.fields.limit_basis === 'arc-energy';
  const asked = {
    joint: last.fields.joint ?? '',
    limit_basis: isArcEnergy(last) ? 'arc-energy' : 'heat-input',
    heats: series(rows.map(row => (isArcEnergy(row) === isArcEnergy(last) ? heatOf(row) : undefined))),
    preheats: series(rows.map(row => split(row.fields.preheat_measured))),
    interpasses: series(rows.map(row => split(row.fields.interpass_measured))),
    heat_input_least: last.fields.heat_input_least ?? '',
    heat_input_limit: last.fields.heat_input_limit ?? '',
    preheat_least: last.fields.preheat_least ?? '',
    interpass_most: last.fields.interpass_most ?? '',
  };
  if (!asked.heats && !asked.preheats && !asked.interpasses) return '';
  return `pass-chart?${new URLSearchParams(Object.entries(asked).filter(([, text]) => text))}`;
}
