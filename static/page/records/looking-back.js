// @ts-check
// What of the log is shown: one job, joint, wire, gas or thickness, and from which day to which.
import { page, thicknesses, valuesOf } from './database.js';
import { passesAddress } from './passes.js';
import { millimetres } from './thickness.js';

const KIND = 'weld-entry';
const MOST_PASSES = 24; // of one joint in a chart

/** The moment a day begins, or the one after it, where the reader is; '' if none is chosen. @param {string} day as a date box gives it @param {number} after */
export function beginning(day, after = 0) {
  const [year, month, date] = day.split('-').map(Number);
  if (!year || !month || !date) return '';
  const at = new Date(year, month - 1, date + after);
  return Number.isNaN(at.getTime()) ? '' : at.toISOString();
}

/** What of the log an address asks for, after its #. */
const asked = () => new URLSearchParams(location.hash.slice(1)).get('thickness') ?? '';

/** Whether the address asks for all of the log. */
export const isWhole = () => asked() === '';

/**
 * @param {HTMLElement} log @param {() => void} fresh what draws the list anew
 * @returns {Promise<() => { by: string, value: string, from: string, to: string }>} what is chosen
 */
export async function watchNarrowing(log, fresh) {
  /** @template {Element} T @param {string} name @returns {T} */
  const part = name => /** @type {T} */ (log.querySelector(`[data-${name}]`));
  const by = /** @type {HTMLSelectElement} */ (part('by'));
  const value = /** @type {HTMLSelectElement} */ (part('value'));
  const from = /** @type {HTMLInputElement} */ (part('from'));
  const to = /** @type {HTMLInputElement} */ (part('to'));
  const chart = /** @type {HTMLAnchorElement} */ (part('passes'));

  const chosen = () => ({
    by: value.value ? by.value : '',
    value: value.value,
    from: beginning(from.value),
    to: beginning(to.value, 1),
  });
  const changed = async () => {
    fresh();
    chart.hidden = true;
    if (chosen().by !== 'joint') return;
    const passes = await page({ kind: KIND, most: MOST_PASSES, ...chosen() });
    const address = passesAddress(passes.reverse());
    chart.hidden = !address;
    chart.href = address;
  };
  const offer = async () => {
    const values = by.value === 'thickness' ? await thicknesses(KIND) : by.value ? (await valuesOf(KIND, by.value)).map(each => [each, each]) : [];
    value.replaceChildren(...values.map(([text, each]) => new Option(text, each)));
    /** @type {HTMLElement} */ (part('narrow-value')).hidden = values.length === 0;
    /** @type {HTMLElement} */ (part('near')).hidden = by.value !== 'thickness';
  };
  by.addEventListener('change', () => offer().then(changed));
  for (const each of [value, from, to]) each.addEventListener('change', changed);
  const thickness = millimetres(asked());
  if (thickness) {
    by.value = 'thickness';
    await offer();
    const option = [...value.options].find(each => each.value === String(thickness)) ?? value.appendChild(new Option(asked(), String(thickness)));
    option.selected = true;
    /** @type {HTMLElement} */ (part('narrow-value')).hidden = false;
  }
  return chosen;
}
