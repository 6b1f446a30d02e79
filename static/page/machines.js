// @ts-check
// The welder's own machines, kept on this phone: kept from an answer, picked above the fields that they fill in.
import { keepMachines, machines, withMachine } from './memory.js';

/** @typedef {import('./memory.js').Machine} Machine */

/** Which kept machine the boxes hold: its name, '' for none at all, null for something else. @param {Machine[]} list @param {string[]} names @param {Record<string, string>} typed */
export function held(list, names, typed) {
  if (names.every(name => !typed[name])) return '';
  return list.find(each => names.every(name => (each.fields[name] ?? '') === (typed[name] ?? '')))?.name ?? null;
}

/** A name that no other machine has. @param {Machine[]} list @param {string} name */
export function unused(list, name) {
  for (let number = 1; ; number++) {
    const found = number > 1 ? `${name} ${number}` : name;
    if (!list.some(each => each.name === found)) return found;
  }
}

/** @param {HTMLFormElement} form @param {() => void} ask */
export function watchMachines(form, ask) {
  const picker = form.querySelector('[data-machines]');
  const chooser = picker?.querySelector('select');
  if (!(picker instanceof HTMLElement && chooser)) return;
  const names = (picker.dataset.machines ?? '').split(' ');
  const [rename, remove, undo] = ['rename', 'delete', 'undo'].map(
    word => /** @type {HTMLButtonElement} */ (picker.querySelector(`[data-machine-${word}]`)),
  );
  if (!rename || !remove || !undo) return;
  /** @type {Machine | undefined} */
  let deleted;

  const show = () => {
    const list = machines();
    const now = held(list, names, Object.fromEntries(names.map(name => [name, boxOf(name)?.value ?? ''])));
    const options = [new Option(chooser.dataset.none, ''), ...list.map(each => new Option(each.name, `=${each.name}`))];
    if (now === null) options.push(new Option(chooser.dataset.typed, '?'));
    chooser.replaceChildren(...options);
    chooser.value = now === null ? '?' : now && `=${now}`;
    picker.hidden = list.length === 0 && !deleted;
    rename.hidden = remove.hidden = !now;
    undo.hidden = !deleted;
  };
  /** @param {Machine | undefined} machine */
  const fill = machine => {
    for (const name of names) put(name, machine?.fields[name] ?? '');
    ask();
  };
  const picked = () => machines().find(each => `=${each.name}` === chooser.value);
  chooser.addEventListener('change', () => {
    if (chooser.value !== '?') fill(picked());
  });
  form.addEventListener('change', event => event.target !== chooser && show());
  rename.addEventListener('click', () => {
    const machine = picked();
    const name = window.prompt(chooser.dataset.newName, machine?.name)?.trim();
    if (!machine || !name || name === machine.name) return;
    const others = machines().filter(each => each.name !== machine.name);
    const fields = { ...machine.fields, machine: unused(others, name) };
    keepMachines([...others, { name: fields.machine, fields }]);
    fill({ name, fields });
  });
  remove.addEventListener('click', () => {
    deleted = picked();
    keepMachines(machines().filter(each => each.name !== deleted?.name));
    fill(undefined);
    undo.focus();
  });
  undo.addEventListener('click', () => {
    const machine = deleted;
    deleted = undefined;
    if (machine) keepMachines([...machines().filter(each => each.name !== machine.name), machine]);
    fill(machine);
  });
  show();
}

/** Offer to keep the machine that an answer measured. @param {HTMLElement} answer */
export function offerKeeping(answer) {
  const offer = answer.querySelector('[data-keeping]');
  const keep = offer?.querySelector('[data-keep]');
  const undo = offer?.querySelector('[data-undo-keep]');
  if (!(offer instanceof HTMLElement && keep instanceof HTMLButtonElement && undo instanceof HTMLButtonElement)) return;
  const words = keep.textContent;
  /** @type {Machine[]} */
  let before = [];
  offer.hidden = false;
  keep.addEventListener('click', () => {
    before = machines();
    const fields = Object.fromEntries(new URLSearchParams(offer.dataset.keeping));
    keepMachines(withMachine(before, fields.machine ?? unused(before, keep.dataset.unnamed ?? ''), fields));
    keep.textContent = keep.dataset.kept ?? '';
    keep.disabled = true;
    undo.hidden = false;
    undo.focus(); // a keyboard's place is not on what is gone
    const spoken = document.getElementById('spoken');
    if (spoken) spoken.textContent = keep.textContent;
  });
  undo.addEventListener('click', () => {
    keepMachines(before);
    keep.textContent = words;
    keep.disabled = false;
    undo.hidden = true;
    keep.focus();
  });
}

/** @param {string} id */
function boxOf(id) {
  const box = document.getElementById(id);
  return box instanceof HTMLInputElement || box instanceof HTMLSelectElement ? box : null;
}

/** @param {string} name @param {string} value */
function put(name, value) {
  const box = boxOf(name);
  if (box) box.value = value;
}
