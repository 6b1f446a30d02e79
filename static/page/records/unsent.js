// @ts-check
// How much is not on the server: on every page, beside the way to the log.
import { recall } from '../memory.js';

export const PAIRED = 'paired';
export const UNSENT = 'unsent';

/** A number for the eye, a sentence for the ear; nothing while there is nothing to send or nobody to send it to. */
export function showUnsent() {
  const left = recall(PAIRED) ? (recall(UNSENT) ?? '') : '';
  for (const shown of document.querySelectorAll('[data-unsent]')) {
    if (!(shown instanceof HTMLElement)) continue;
    shown.textContent = left && `\u2191${left}`;
    const link = shown.closest('a');
    if (!link) continue;
    if (left) link.setAttribute('aria-label', `${link.firstChild?.textContent?.trim()}, ${(shown.dataset.unsent ?? '').replace('#', left)}`);
    else link.removeAttribute('aria-label');
  }
}
