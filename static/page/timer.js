// @ts-check
// A stop-watch beside a time box. It keeps its start across reloads and locks, since it stores when it began.
import { keep, recall } from './memory.js';

const TICK_MS = 100;

/** @param {HTMLFormElement} form @param {(name: string, value: string, unit: string) => void} fill */
export function watchTimers(form, fill) {
  for (const button of form.querySelectorAll('button[data-timer]')) {
    if (button instanceof HTMLButtonElement) watch(form, button, fill);
  }
}

/** @param {number} milliseconds */
export const seconds = milliseconds => (Math.max(0, milliseconds) / 1000).toFixed(1);

/** @param {HTMLFormElement} form @param {HTMLButtonElement} button @param {(name: string, value: string, unit: string) => void} fill */
function watch(form, button, fill) {
  const name = button.dataset.timer ?? '';
  const key = `timer:${form.dataset.calculator}:${name}`;
  const clock = form.querySelector(`[data-clock="${name}"]`);
  let ticking = 0;
  const show = () => {
    const began = recall(key);
    button.textContent = (began ? button.dataset.stop : button.dataset.start) ?? '';
    button.setAttribute('aria-pressed', String(Boolean(began)));
    if (clock) clock.textContent = began ? `${seconds(Date.now() - Number(began))} s` : '';
    window.clearTimeout(ticking);
    if (began) ticking = window.setTimeout(show, TICK_MS);
  };
  button.addEventListener('click', () => {
    const began = recall(key);
    if (began) {
      keep(key, null);
      fill(name, seconds(Date.now() - Number(began)), 's');
    } else keep(key, String(Date.now()));
    show();
  });
  show();
}
