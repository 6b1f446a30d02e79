// @ts-check
// What goes with a choice, a spool's barrel: kept on this phone for each option and filled in again, and said so.
// What is the welder's own, a rate: kept without a choice, and filled into a form where all of them are still blank.
import { keep, recall } from './memory.js';

/** @param {string} calculator @param {string} box @param {string} option */
const keyOf = (calculator, box, option) => `kept:${calculator}:${box}:${option}`;

/** @param {HTMLFormElement} form @param {() => void} ask @returns {boolean} whether anything was filled in at once */
export function watchKeptBoxes(form, ask) {
  const notes = [...form.querySelectorAll('[data-kept-box]')].filter(each => each instanceof HTMLElement);
  for (const note of notes) if (note.dataset.keptWith) watch(form, note, ask);
  return watchOwn(
    form,
    notes.filter(note => !note.dataset.keptWith),
  );
}

/** @param {HTMLElement} note */
function boxOf(note) {
  const name = note.dataset.keptBox ?? '';
  const [box, unit] = [document.getElementById(name), document.getElementById(`${name}_unit`)];
  return { name, box: box instanceof HTMLInputElement ? box : null, unit: unit instanceof HTMLSelectElement ? unit : null };
}

/** @param {HTMLFormElement} form @param {HTMLElement[]} notes */
function watchOwn(form, notes) {
  /** @param {HTMLElement} note */
  const keyed = note => ({ note, ...boxOf(note), key: keyOf(form.dataset.calculator ?? '', note.dataset.keptBox ?? '', '') });
  const own = notes.map(keyed).filter(({ box }) => box);
  let filled = false;
  // One that was left blank beside others means: not charged.
  if (own.every(({ box }) => box?.value === '')) {
    for (const { note, box, unit, key } of own) {
      const [, value = '', kept = ''] = /^(.*?)(?:\t(.*))?$/.exec(recall(key) ?? '') ?? [];
      if (!value || !box) continue;
      box.value = value;
      if (kept && unit) unit.value = kept;
      note.hidden = false;
      filled = true;
    }
  }
  form.addEventListener('change', event => {
    for (const { note, box, unit, key } of own) {
      if (!box || !(event.target === box || (event.target === unit && box.value))) continue;
      keep(key, box.value ? `${box.value}${unit ? `\t${unit.value}` : ''}` : null);
      note.hidden = true;
    }
  });
  return filled;
}

/** @param {HTMLFormElement} form @param {HTMLElement} note @param {() => void} ask */
function watch(form, note, ask) {
  const { name, box, unit } = boxOf(note);
  if (!(box && unit)) return;
  const option = () => String(new FormData(form).get(note.dataset.keptWith ?? '') ?? '');
  const key = () => keyOf(form.dataset.calculator ?? '', name, option());
  let filled = '';
  let before = option();

  form.addEventListener('change', () => {
    if (option() !== before) {
      before = option();
      const [value = '', kept = ''] = (recall(key()) ?? '').split(' ');
      // Only over a blank, or over what was filled in here for another: never over what was typed.
      if ((box.value === '' || box.value === filled) && box.value !== value) {
        box.value = value;
        if (kept) unit.value = kept;
        filled = value;
        ask();
      }
      note.hidden = !value || box.value !== value;
    } else if (box.value && box.value !== filled && before) {
      keep(key(), `${box.value} ${unit.value}`);
      note.hidden = true;
      filled = '';
    }
  });
}
