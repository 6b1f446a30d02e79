// @ts-check
// What fixed it: kept on this phone beside the causes of an answer, taken back, and shown the next time.
import { fixes, keepFixes } from './memory.js';

/** @param {HTMLElement} answer */
export function offerFixes(answer) {
  for (const block of answer.querySelectorAll('[data-remember]')) if (block instanceof HTMLElement) watch(block);
}

/** @param {HTMLElement} block */
function watch(block) {
  const asked = block.dataset.remember ?? '';
  const before = block.querySelector('.remark');
  const buttons = [...block.querySelectorAll('button')];
  const words = buttons.map(button => button.textContent);
  /** @param {HTMLButtonElement} button */
  const name = button => button.closest('li')?.querySelector('strong')?.textContent ?? '';

  const show = () => {
    const fix = fixes()[asked];
    const known = buttons.find(button => button.dataset.fixed === fix?.cause);
    buttons.forEach((button, place) => {
      button.parentElement?.removeAttribute('hidden');
      button.textContent = (button === known ? button.dataset.undo : words[place]) ?? '';
    });
    if (!(before instanceof HTMLElement)) return;
    before.hidden = !known;
    const told = before.querySelector('strong');
    if (!told || !known || !fix) return;
    const when = new Date(fix.at).toLocaleDateString(document.documentElement.lang, { dateStyle: 'medium' });
    told.textContent = `${name(known)}, ${when}`;
  };
  for (const button of buttons) {
    button.addEventListener('click', () => {
      const kept = fixes();
      if (kept[asked]?.cause === button.dataset.fixed) delete kept[asked];
      else kept[asked] = { cause: button.dataset.fixed ?? '', at: Date.now() };
      keepFixes(kept);
      show();
    });
  }
  show();
}
