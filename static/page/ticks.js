// @ts-check
// Ticks in a checklist. They stay on this phone, by calculator and item, with the time of the first one: old ticks
// must be told from today's.
import { keep, recall } from './memory.js';

/** @typedef {{ since: number, ids: string[] }} Ticks */

/** @param {string} calculator */
const ticksKey = calculator => `ticks:${calculator}`;

/** @param {string} calculator @returns {Ticks} */
export function ticksOf(calculator) {
  try {
    const found = JSON.parse(recall(ticksKey(calculator)) ?? '{}');
    if (Number.isFinite(found?.since) && Array.isArray(found.ids)) {
      return { since: found.since, ids: found.ids.filter((/** @type {unknown} */ id) => typeof id === 'string') };
    }
  } catch {
    // whatever else lies there is no tick
  }
  return { since: 0, ids: [] };
}

/** @param {string} calculator @param {Ticks} ticks */
export const keepTicks = (calculator, ticks) => keep(ticksKey(calculator), ticks.ids.length ? JSON.stringify(ticks) : null);

/** @param {Ticks} ticks @param {string} id @param {boolean} on @param {number} now @returns {Ticks} */
export function withTick(ticks, id, on, now) {
  const others = ticks.ids.filter(each => each !== id);
  return { since: ticks.ids.length ? ticks.since : now, ids: on ? [...others, id] : others };
}

/** A day and a time as the reader writes them. @param {number} at */
export const clockTime = at => new Date(at).toLocaleString(document.documentElement.lang, { weekday: 'short', hour: '2-digit', minute: '2-digit' });

/**
 * Where ticks are kept: on the phone by calculator, or with a job (records/job-ticks.js). A job's say so, and are not all
 * taken away at once; a closed job's stand.
 * @typedef {{ of: () => Ticks, put: (ticks: Ticks) => void, tell?: (word: 'kept' | 'closed') => void, closed?: boolean }} Kept
 */

/**
 * Watch the boxes of every checklist that this answer region will ever show.
 * @param {HTMLElement} answer @param {string} calculator @param {Kept} [kept] @returns {() => void} what shows them as they are kept
 */
export function watchTicks(answer, calculator, kept = { of: () => ticksOf(calculator), put: ticks => keepTicks(calculator, ticks) }) {
  /** @type {Ticks | undefined} */
  let cleared;

  const show = () => {
    const list = answer.querySelector('[data-checklist]');
    const [count, clear, undo] = ['[data-done]', '[data-untick]', '[data-retick]'].map(which => list?.querySelector(which));
    if (!list || !(count instanceof HTMLElement && clear instanceof HTMLElement && undo instanceof HTMLElement)) return;
    const ticks = kept.of();
    let done = 0;
    for (const box of boxes(list)) {
      box.disabled = Boolean(kept.closed);
      box.checked = ticks.ids.includes(box.dataset.tick ?? '');
      done += Number(box.checked);
    }
    const since = ticks.ids.length ? `. ${(count.dataset.since ?? '').replace('{when}', clockTime(ticks.since))}` : '';
    count.textContent = (count.dataset.done ?? '').replace('{done}', String(done)) + since;
    count.hidden = false;
    clear.hidden = !ticks.ids.length || Boolean(kept.tell);
    undo.hidden = !cleared;
    kept.tell?.(kept.closed ? 'closed' : 'kept');
  };

  answer.addEventListener('change', event => {
    const box = event.target;
    if (!(box instanceof HTMLInputElement && box.dataset.tick)) return;
    kept.put(withTick(kept.of(), box.dataset.tick, box.checked, Date.now()));
    cleared = undefined;
    show();
  });
  answer.addEventListener('click', event => {
    const button = event.target instanceof Element ? event.target.closest('[data-untick], [data-retick]') : null;
    if (!(button instanceof HTMLElement)) return;
    const back = 'retick' in button.dataset;
    const before = back ? cleared : kept.of();
    kept.put(back && before ? before : { since: 0, ids: [] });
    cleared = back ? undefined : before;
    show();
    const next = answer.querySelector(back ? '[data-untick]' : '[data-retick]');
    if (next instanceof HTMLElement) next.focus(); // a keyboard's place is not on what is gone
  });
  document.addEventListener('htmx:after:swap', show);
  // What was ticked before anybody listened counts too.
  const early = kept.closed ? [] : boxes(answer).filter(each => each.checked);
  if (early.length) kept.put(early.reduce((ticks, each) => withTick(ticks, each.dataset.tick ?? '', true, Date.now()), kept.of()));
  show();
  return show;
}

/** @param {Element} list */
const boxes = list => [...list.querySelectorAll('input[data-tick]')].filter(each => each instanceof HTMLInputElement);
