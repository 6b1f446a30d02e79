// @ts-check
// Feed and amps that were measured side by side, taken from the log into the form that trims a machine.
import { page } from './database.js';
import { millimetres } from './thickness.js';

/** @typedef {import('./database.js').Row} Row */

const LOOKED_AT = 300; // of the newest entries

/**
 * The pairs of one wire among entries, each pair once. Without a wire, that of the first entry that has a pair.
 * @param {Row[]} rows the newest first @param {string} material @param {string} diameter '' for whichever @param {number} most
 * @returns {{ feed: string, current: string, diameter: string, material: string }[]}
 */
export function pairsAmong(rows, material, diameter, most) {
  /** @type {ReturnType<typeof pairsAmong>} */
  const found = [];
  let [metal, wanted] = diameter ? [material, millimetres(diameter)] : ['', undefined];
  for (const { fields } of rows) {
    const { wire_feed_speed: feed, current, wire_diameter, wire_material } = fields;
    const thick = millimetres(wire_diameter);
    if (!feed || !current || !thick || !wire_material || !wire_diameter || (fields.process ?? 'gas-metal-arc') !== 'gas-metal-arc') continue;
    wanted ??= thick;
    metal ||= wire_material;
    if (wire_material !== metal || Math.abs(thick - wanted) > 0.02 || found.length === most) continue;
    if (!found.some(each => each.feed === feed && each.current === current)) found.push({ feed, current, diameter: wire_diameter, material: wire_material });
  }
  return found;
}

export function offerPairs() {
  const offer = document.querySelector('[data-from-log]');
  const button = offer?.querySelector('button');
  const said = offer?.querySelector('[role=status]');
  const form = offer?.closest('form');
  if (!(offer instanceof HTMLElement && button && said instanceof HTMLElement && form)) return;
  // By id: the preset buttons share their box's name.
  const box = (/** @type {string} */ name) => /** @type {HTMLInputElement | HTMLSelectElement | null} */ (document.getElementById(name));
  offer.hidden = false;
  button.addEventListener('click', async () => {
    const empty = [];
    for (let place = 1; box(`pairs-${place}-current`); place++) if (!box(`pairs-${place}-current`)?.value && !box(`pairs-${place}-wire_feed_speed`)?.value) empty.push(place);
    const typed = box('wire_diameter')?.value ?? '';
    const diameter = typed && `${typed} ${box('wire_diameter_unit')?.value ?? ''}`;
    const rows = await page({ kind: 'weld-entry', most: LOOKED_AT });
    const pairs = pairsAmong(rows, box('wire_material')?.value ?? '', diameter, empty.length);
    for (const [count, pair] of pairs.entries()) {
      put(`pairs-${empty[count]}-wire_feed_speed`, pair.feed);
      put(`pairs-${empty[count]}-current`, pair.current);
      put('wire_diameter', pair.diameter);
      put('wire_material', pair.material);
    }
    said.textContent = ((pairs.length ? said.dataset.took : said.dataset.none) ?? '').replace('#', String(pairs.length));
    if (pairs.length) form.dispatchEvent(new Event('change', { bubbles: true }));
  });

  /** @param {string} name @param {string} text as it was typed: a number and its unit, or a word */
  function put(name, text) {
    const [, number = text, unit] = /^(\S.*) (\S+)$/.exec(text) ?? [];
    const [filled, chooser] = [box(name), box(`${name}_unit`)];
    if (filled) filled.value = number;
    if (chooser && unit) chooser.value = unit;
  }
}
