// @ts-check
// The welder's own machines, kept on this phone: kept from an answer, picked above the fields that they fill in,
// and picked again on the next page.
import { follow, keepMachines, keepPicked, machines, pickedMachine, withMachine } from './memory.js';

/** @typedef {import('./memory.js').Machine} Machine */

/** Which kept machine the boxes hold: its name, '' for none at all, null for something else. @param {Machine[]} list @param {string[]} names @param {Record<string, string>} typed */
export function held(list, names, typed) {
  if (names.every(name => !typed[name])) return '';
  return list.find(each => names.every(name => (each.fields[name] ?? '') === (typed[name] ?? '')))?.name ?? null;
}

/**
 * Which machine is to be picked again, by name ('' for none); null leaves the boxes as they are. Numbers that came in a
 * link from elsewhere stay; so does what was typed by hand, and what the question before handed on.
 * @param {Machine[]} list @param {string | null} last the one picked last @param {string} from where the page was opened from
 * @param {string | null} now the one that the boxes hold @param {string} named what stands in the box of its name
 */
export function pickedAgain(list, last, from, now, named) {
  if (last === null || !from) return null;
  const wanted = list.some(each => each.name === last) ? last : '';
  const own = now !== null || list.some(each => each.name === named);
  return now !== wanted && (now === '' || (from !== 'next' && own)) ? wanted : null;
}

/** A name that no other machine has. @param {Machine[]} list @param {string} name */
export function unused(list, name) {
  for (let number = 1; ; number++) {
    const found = number > 1 ? `${name} ${number}` : name;
    if (!list.some(each => each.name === found)) return found;
  }
}

/** From where a question is opened, for the page that opens. */
export function watchLinks() {
  document.addEventListener('click', event => {
    const link = event.target instanceof Element ? event.target.closest('.next a, .questions a, .often a, [data-pinned] a, [data-used] a') : null;
    if (link instanceof HTMLAnchorElement) follow(link.closest('.next') ? 'next' : 'home', link.href);
  });
}

/**
 * @param {HTMLFormElement} form @param {() => void} ask @param {string} from where the page was opened from, '' for elsewhere
 * @returns {boolean} whether the machine picked last was filled in
 */
export function watchMachines(form, ask, from) {
  const picker = form.querySelector('[data-machines]');
  const chooser = picker?.querySelector('select');
  if (!(picker instanceof HTMLElement && chooser)) return false;
  const names = (picker.dataset.machines ?? '').split(' ');
  const [none, rename, remove, undo] = ['none', 'rename', 'delete', 'undo'].map(
    word => /** @type {HTMLButtonElement} */ (picker.querySelector(`[data-machine-${word}]`)),
  );
  if (!none || !rename || !remove || !undo) return false;
  /** @type {Machine | undefined} */
  let deleted;

  /** @param {Machine[]} list */
  const holding = list => held(list, names, Object.fromEntries(names.map(name => [name, boxOf(name)?.value ?? ''])));
  const show = () => {
    const list = machines();
    const now = holding(list);
    const options = [new Option(chooser.dataset.none, ''), ...list.map(each => new Option(each.name, `=${each.name}`))];
    if (now === null) options.push(new Option(chooser.dataset.typed, '?'));
    chooser.replaceChildren(...options);
    chooser.value = now === null ? '?' : now && `=${now}`;
    picker.hidden = list.length === 0 && !deleted;
    none.hidden = rename.hidden = remove.hidden = !now;
    undo.hidden = !deleted;
  };
  /** @param {Machine | undefined} machine */
  const fill = machine => {
    keepPicked(machine?.name ?? '');
    for (const name of names) put(name, machine?.fields[name] ?? '');
    ask();
  };
  const picked = () => machines().find(each => `=${each.name}` === chooser.value);
  chooser.addEventListener('change', () => {
    if (chooser.value !== '?') fill(picked());
  });
  form.addEventListener('change', event => event.target !== chooser && show());
  none.addEventListener('click', () => {
    fill(undefined);
    chooser.focus(); // the button is gone
  });
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
  const list = machines();
  const again = pickedAgain(list, pickedMachine(), from, holding(list), boxOf('machine')?.value ?? '');
  if (again !== null) {
    const machine = list.find(each => each.name === again);
    for (const name of names) put(name, machine?.fields[name] ?? '');
  }
  show();
  return again !== null;
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
  const picked = pickedMachine();
  offer.hidden = false;
  keep.addEventListener('click', () => {
    before = machines();
    const fields = Object.fromEntries(new URLSearchParams(offer.dataset.keeping));
    const name = fields.machine ?? unused(before, keep.dataset.unnamed ?? '');
    keepMachines(withMachine(before, name, fields));
    keepPicked(name);
    keep.textContent = keep.dataset.kept ?? '';
    keep.disabled = true;
    undo.hidden = false;
    undo.focus(); // a keyboard's place is not on what is gone
    const spoken = document.getElementById('spoken');
    if (spoken) spoken.textContent = keep.textContent;
  });
  undo.addEventListener('click', () => {
    keepMachines(before);
    keepPicked(picked);
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
