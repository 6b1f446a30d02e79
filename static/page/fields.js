// @ts-check
// Form values as pairs, in and out, and the fields that depend on a choice.

/** @param {HTMLFormElement} form @returns {string} the filled boxes as a query string */
export function filledIn(form) {
  const pairs = [...new FormData(form)].filter(([, value]) => value !== '');
  return new URLSearchParams(/** @type {[string, string][]} */ (pairs)).toString();
}

/** @param {HTMLFormElement} form @returns {string} the numbers that were typed, each with its unit as it is shown */
export function typedNumbers(form) {
  const typed = boxes(form).filter(box => box instanceof HTMLInputElement && box.type === 'text' && box.value && !box.disabled && isShown(box));
  return typed.map(shownOf).join(' \u00b7 ');
}

/** What a box says: a number with its unit, the words of a choice; '' for nothing. @param {HTMLInputElement | HTMLSelectElement} box */
export function shownOf(box) {
  if (box instanceof HTMLSelectElement) return box.selectedOptions[0]?.text ?? '';
  if (box.type === 'radio') return box.checked ? (box.closest('label')?.textContent ?? '') : '';
  if (box.type !== 'text' || !box.value) return '';
  const unit = box.parentElement?.querySelector('select, .unit');
  return `${box.value} ${(unit instanceof HTMLSelectElement ? unit.selectedOptions[0]?.text : unit?.textContent) ?? ''}`.trim();
}

/** Of a machine its name says enough. @param {HTMLInputElement | HTMLSelectElement} box */
export const isShown = box => box.name === 'machine' || !box.closest('[data-machine]');

/** @param {HTMLFormElement} form */
export function boxes(form) {
  return [...form.elements].filter(
    element => element instanceof HTMLInputElement || element instanceof HTMLSelectElement,
  );
}

/** @param {HTMLFormElement} form @param {string} query */
export function fillIn(form, query) {
  const values = new URLSearchParams(query);
  for (const box of boxes(form)) {
    const value = values.get(box.name);
    if (box instanceof HTMLInputElement && box.type === 'radio') box.checked = box.value === value;
    else if (value !== null) box.value = value;
    else if (box instanceof HTMLInputElement && box.type === 'text') box.value = '';
  }
  showAsked(form);
  unfold(form);
}

/** What was filled in must be seen. @param {HTMLFormElement} form */
function unfold(form) {
  for (const folded of form.querySelectorAll('details')) {
    // A machine's numbers are told by its name, which shows.
    if (folded.hasAttribute('data-machine')) continue;
    const filled = [...folded.querySelectorAll('input, select')].some(
      box => (box instanceof HTMLInputElement && box.value !== '') || (box instanceof HTMLSelectElement && chosen(box)),
    );
    if (filled) folded.open = true;
  }
}

/** Whether another option is chosen than a blank form's; of units, never. @param {HTMLSelectElement} box */
function chosen(box) {
  const usual = [...box.options].findIndex(option => option.defaultSelected);
  return !box.name.endsWith('_unit') && box.selectedIndex !== Math.max(usual, 0);
}

/** @param {HTMLFormElement} form */
export function clear(form) {
  for (const box of boxes(form)) {
    if (box instanceof HTMLSelectElement) {
      // Units stay as chosen; only what was answered goes.
      if (!box.name.endsWith('_unit') && box.name !== 'units') box.selectedIndex = 0;
    } else if (box.type === 'radio') box.checked = false;
    else if (box.type === 'text') box.value = '';
  }
  showAsked(form);
}

/** Show the fields that the choices made call for, and the next empty row. @param {HTMLFormElement} form */
export function showAsked(form) {
  for (const field of form.querySelectorAll('[data-when]')) {
    const values = (field.getAttribute('data-when-is') ?? '').split(' ');
    // Read anew for each: a choice that has just been hidden calls for nothing.
    const asked = values.includes(String(new FormData(form).get(field.getAttribute('data-when') ?? '') ?? ''));
    field.toggleAttribute('hidden', !asked);
    // What cannot be seen is not sent; it is still there if the choice is made again.
    for (const box of field.querySelectorAll('input, select')) box.toggleAttribute('disabled', !asked);
  }
  for (const group of form.querySelectorAll('[data-rows]')) {
    const rows = [...group.querySelectorAll('[data-row]')];
    const filled = rows.map(row => [...row.querySelectorAll('input')].some(box => box.type === 'text' && box.value.trim() !== ''));
    const last = filled.lastIndexOf(true);
    rows.forEach((row, position) => row.toggleAttribute('hidden', position > last + 1));
  }
}
