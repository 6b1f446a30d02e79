// @ts-check
// A wait that ends at a time of the clock. It keeps that time, not a count, so lock, reload and restart change nothing.
import { keep, recall } from './memory.js';
import { openedFor } from './opened.js';
import { clockTime } from './ticks.js';

const TICK_MS = 500;

/** @typedef {{ start: number, end: number }} Wait */

/** @param {string | null} text as kept @returns {Wait | undefined} */
export function waitOf(text) {
  const [start, end] = (text ?? '').split(' ').map(Number);
  return start && end && start < end ? { start, end } : undefined;
}

/** Where a wait is kept: one that was started from a job is that job's. @param {string} calculator @param {string} name @param {string} job its id, or '' */
export const waitKey = (calculator, name, job) => `countdown:${calculator}:${name}${job && `#${job}`}`;

/** Hours, minutes and seconds that are left, never less than none. @param {Wait} wait @param {number} now */
export function left(wait, now) {
  const seconds = Math.max(0, Math.ceil((wait.end - now) / 1000));
  const parts = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  return (parts[0] ? parts : parts.slice(1)).map(part => String(part).padStart(2, '0')).join(':');
}

/** @param {HTMLElement} answer @param {string} calculator */
export function watchCountdown(answer, calculator) {
  let ticking = 0;
  /** @type {string | null | undefined} */
  let before;
  const key = (/** @type {HTMLElement} */ block) => waitKey(calculator, block.dataset.countdown ?? '', openedFor().job);

  const show = () => {
    window.clearTimeout(ticking);
    const block = answer.querySelector('[data-countdown]');
    if (!(block instanceof HTMLElement)) return;
    const [clock, ends, over, begin, end, back] = ['left', 'ends', 'over', 'begin', 'end', 'back'].map(
      word => /** @type {HTMLElement} */ (block.querySelector(`[data-${word}]`)),
    );
    if (!clock || !ends || !over || !begin || !end || !back) return;
    const wait = waitOf(recall(key(block)));
    const now = Date.now();
    begin.dataset.first ??= begin.textContent ?? '';
    begin.textContent = (wait ? begin.dataset.again : begin.dataset.first) ?? '';
    begin.hidden = false;
    end.hidden = clock.hidden = ends.hidden = !wait;
    back.hidden = before === undefined;
    over.hidden = !wait || now < wait.end;
    if (!wait) return;
    clock.textContent = left(wait, now);
    const said = (ends.dataset.ends ?? '').replace('{start}', clockTime(wait.start)).replace('{end}', clockTime(wait.end));
    if (ends.textContent !== said) ends.textContent = said; // spoken once, not at every tick
    ticking = window.setTimeout(show, TICK_MS);
  };

  answer.addEventListener('click', event => {
    const button = event.target instanceof Element ? event.target.closest('[data-begin], [data-end], [data-back]') : null;
    const block = button?.closest('[data-countdown]');
    if (!(button instanceof HTMLElement && block instanceof HTMLElement)) return;
    const kept = recall(key(block));
    const now = Date.now();
    if ('back' in button.dataset) {
      keep(key(block), before ?? null);
      before = undefined;
    } else {
      const starts = 'begin' in button.dataset;
      keep(key(block), starts ? `${now} ${now + Number(block.dataset.seconds) * 1000}` : null);
      before = kept || !starts ? kept : undefined;
    }
    show();
    const next = button.hidden ? block.querySelector('[data-begin]') : null;
    if (next instanceof HTMLElement) next.focus();
  });
  document.addEventListener('htmx:after:swap', show);
  show();
}
