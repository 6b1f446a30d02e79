// @ts-check
// The unit chosen beside a box is this welder's unit for that quantity, on every page and from then on. A number that
// is there already keeps the unit that it was typed in.
import { keep, recall } from './memory.js';

const KEY = 'units';

/** @returns {Record<string, string>} by quantity */
export function ownUnits() {
  try {
    const kept = JSON.parse(recall(KEY) ?? '{}');
    return kept instanceof Object ? kept : {};
  } catch {
    return {};
  }
}

/**
 * Whether a chooser is to be set to this welder's unit.
 * @param {URLSearchParams} asked what the page was opened with @param {string} name of the chooser @param {string} typed in its box
 */
export function isFree(asked, name, typed) {
  if (name === 'units') return !asked.toString();
  return typed === '' && !asked.has(name) && !asked.has(name.slice(0, -'_unit'.length));
}

/** @param {HTMLFormElement} form @returns {boolean} whether a unit is another now */
export function watchUnits(form) {
  const asked = new URLSearchParams(location.search);
  const own = ownUnits();
  let changed = false;
  for (const chooser of form.querySelectorAll('select[data-quantity]')) {
    if (!(chooser instanceof HTMLSelectElement)) continue;
    const wanted = own[chooser.dataset.quantity ?? ''];
    const box = chooser.parentElement?.querySelector('input');
    if (wanted === undefined || wanted === chooser.value || !isFree(asked, chooser.name, box?.value ?? '')) continue;
    if (![...chooser.options].some(each => each.value === wanted)) continue;
    chooser.value = wanted;
    changed = true;
  }
  form.addEventListener('change', event => {
    const chooser = event.target;
    if (!(chooser instanceof HTMLSelectElement && chooser.dataset.quantity)) return;
    keep(KEY, JSON.stringify({ ...ownUnits(), [chooser.dataset.quantity]: chooser.value }));
  });
  return changed;
}
