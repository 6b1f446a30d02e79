// @ts-check
// What the answer was before, and what was changed since: only answers at which the fingers rested are compared, so
// the line stays as it is while a number is typed.
import { boxes, filledIn, fillIn, isShown, shownOf } from './fields.js';

/** @typedef {{ typed: string, label: string, number: string, shown: [string, string][] }} Rested an answer: what was typed, what it is of, its number, each field's name and what it shows */

/** @param {HTMLFormElement} form @returns {[string, string][]} each field that is not blank */
function shownIn(form) {
  const asked = boxes(form).filter(box => box.name && box.name !== 'units' && !box.name.endsWith('_unit') && !box.closest('[hidden]') && isShown(box));
  return asked.map(box => /** @type {[string, string]} */ ([box.name, shownOf(box)])).filter(([, shown]) => shown);
}

/**
 * What was changed since, as it was then: nothing where nothing was, '' for what was blank then.
 * @param {[string, string][]} then @param {[string, string][]} now
 */
export function changed(then, now) {
  const [before, after] = [new Map(then), new Map(now)];
  const names = [...before.keys(), ...[...after.keys()].filter(name => !before.has(name))];
  return names.filter(name => before.get(name) !== after.get(name)).map(name => before.get(name) ?? '');
}

/**
 * The answer to compare with: the last at which the fingers rested, unless it is the one that shows or of something else.
 * @param {Rested[]} rested @param {[string, string][]} now @param {string} label
 */
export const comparedWith = (rested, now, label) => rested.filter(each => each.label === label && changed(each.shown, now).length).pop();

/**
 * @param {HTMLFormElement} form @param {HTMLElement} answer @param {() => void} ask @param {() => string} numberOf the headline's number
 * @returns {{ show: () => void, rest: () => void }} what to do with a new answer, and when the fingers rest
 */
export function watchBefore(form, answer, ask, numberOf) {
  /** @type {Rested[]} */
  let rested = [];
  let pressed = false;
  const labelOf = () => answer.querySelector('.headline-label')?.textContent ?? '';
  const show = () => {
    const place = answer.querySelector('[data-before]');
    if (!(place instanceof HTMLElement)) return;
    const now = shownIn(form);
    const then = comparedWith(rested, now, labelOf());
    if (!then || then.number === numberOf()) return;
    // A number and its unit stay on one line.
    const typed = changed(then.shown, now).filter(Boolean).map(each => each.replace(/ (?=\S+$)/, '\u00a0')).join(' \u00b7 ');
    const words = (typed ? place.dataset.before : place.dataset.plain) ?? '';
    const [text, button] = place.children;
    if (text) text.textContent = words.replace('{number}', () => then.number).replace('{typed}', () => typed);
    button?.addEventListener('click', () => {
      pressed = true;
      fillIn(form, then.typed);
      ask();
    });
    place.hidden = false;
    // The button that was pressed is gone; this one takes it back.
    if (pressed && button instanceof HTMLElement) button.focus({ preventScroll: true });
    pressed = false;
  };
  const rest = () => {
    const number = numberOf();
    if (!/\d/.test(number) || !answer.querySelector('[data-before]')) return;
    const shown = shownIn(form);
    rested = [...rested.filter(each => changed(each.shown, shown).length), { typed: filledIn(form), label: labelOf(), number, shown }].slice(-2);
  };
  return { show, rest };
}
