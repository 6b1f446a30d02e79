// @ts-check
// What goes with a choice, a spool's barrel: kept on this phone for each option and filled in again, and said so.
import { keep, recall } from './memory.js';

/** @param {string} calculator @param {string} box @param {string} option */
const keyOf = (calculator, box, option) => `kept:${calculator}:${box}:${option}`;

/** @param {HTMLFormElement} form @param {() => void} ask */
export function watchKeptBoxes(form, ask) {
  for (const note of form.querySelectorAll('[data-kept-box]')) {
    if (note instanceof HTMLElement) watch(form, note, ask);
  }
}

/** @param {HTMLFormElement} form @param {HTMLElement} note @param {() => void} ask */
function watch(form, note, ask) {
  const name = note.dataset.keptBox ?? '';
  const box = document.getElementById(name);
  const unit = document.getElementById(`${name}_unit`);
  if (!(box instanceof HTMLInputElement && unit instanceof HTMLSelectElement)) return;
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
