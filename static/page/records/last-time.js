// @ts-check
// "Same again": what was set then stands in the boxes; what was measured is measured anew, and only stands beside them.
import { openedFor } from '../opened.js';
import { row } from './database.js';

const MEASURED = ['voltage', 'current'];

/** Offer the last pass's readings as the first of the buttons that fill a box: a thumb may say that it reads the same. */
export async function offerLastTime() {
  const form = document.querySelector('form[data-calculator=weld-entry]');
  const words = document.querySelector('[data-record-said]')?.getAttribute('data-last-time');
  const { copy } = openedFor();
  if (!form || !words || !copy || form.querySelector('[data-last]')) return;
  const fields = (await row(copy))?.fields ?? {};
  for (const name of MEASURED) {
    const [, number = '', unit = ''] = /^(\S.*) (\S+)$/.exec(fields[name] ?? '') ?? [];
    const first = form.querySelector(`.presets [data-fill=${name}]`);
    if (!number || !(first instanceof HTMLElement)) continue;
    const button = /** @type {HTMLButtonElement} */ (first.cloneNode());
    Object.assign(button.dataset, { number, unit, last: '' });
    button.value = `${number} ${unit}`;
    button.textContent = `${number}\u00a0${unit} ${words}`;
    first.before(button);
  }
}
