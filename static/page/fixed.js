// @ts-check
// What fixed it: kept on this phone, said again beside the causes the next time, and taken back.
import { fixes, keepFixes } from './memory.js';

/** @param {HTMLElement} answer */
export function offerFixes(answer) {
  const block = answer.querySelector('[data-remember]');
  const picker = block?.querySelector('select');
  const undo = block?.querySelector('button');
  const before = block?.querySelector('.remark');
  if (!(block instanceof HTMLElement && picker && undo && before instanceof HTMLElement)) return;
  const asked = block.dataset.remember ?? '';
  /** @type {import('./memory.js').Fix | undefined} */
  let last;

  const show = () => {
    const fix = fixes()[asked];
    picker.value = fix?.cause ?? '';
    // What fixed it once may be no cause of this setting: then it is not spoken of.
    const known = picker.selectedIndex > 0 ? picker.selectedOptions[0] : undefined;
    if (!known) picker.selectedIndex = 0;
    before.hidden = !known;
    const told = before.querySelector('strong');
    if (!told || !known || !fix) return;
    const when = new Date(fix.at).toLocaleDateString(document.documentElement.lang, { dateStyle: 'medium' });
    told.textContent = `${known.text}, ${when}`;
  };
  /** @param {import('./memory.js').Fix | undefined} fix */
  const put = fix => {
    const kept = fixes();
    last = kept[asked];
    if (fix) kept[asked] = fix;
    else delete kept[asked];
    keepFixes(kept);
    undo.hidden = false;
    show();
  };
  picker.addEventListener('change', () => put(picker.value ? { cause: picker.value, at: Date.now() } : undefined));
  undo.addEventListener('click', () => {
    put(last);
    undo.hidden = true;
    picker.focus(); // a keyboard's place is not on what is gone
  });
  if (picker.parentElement?.parentElement) picker.parentElement.parentElement.hidden = false;
  show();
}
