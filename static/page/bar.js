// @ts-check
// The answer's bar stays in sight at the bottom; what is being typed in must not end up behind it.

const AIR_PX = 16;

/** @param {HTMLFormElement} form @param {HTMLElement} answer */
export function keepClearOfBar(form, answer) {
  const clear = () => {
    const bar = answer.querySelector('.headline');
    if (!bar) return;
    const sticks = getComputedStyle(bar).position === 'sticky';
    const { top, bottom, height } = bar.getBoundingClientRect();
    document.documentElement.style.setProperty('--bar', sticks ? `${Math.ceil(height)}px` : '0px');
    // What is too long for its place scrolls, and a keyboard must be able to get there.
    if (bar.scrollHeight > bar.clientHeight && !bar.querySelector('a, button')) bar.setAttribute('tabindex', '0');
    else bar.removeAttribute('tabindex');
    const focused = document.activeElement;
    // Boxes alone: a button must stay under the finger that is on it, and the browser brings it out for a keyboard.
    const typed = focused instanceof HTMLInputElement || focused instanceof HTMLSelectElement;
    if (!sticks || !typed || !form.contains(focused)) return;
    const box = focused.getBoundingClientRect();
    if (box.bottom > top && box.top < bottom) window.scrollBy({ top: box.bottom - top + AIR_PX, behavior: 'instant' });
  };
  document.addEventListener('htmx:after:swap', clear);
  // The keyboard coming up takes half of the screen.
  window.addEventListener('resize', clear);
  form.addEventListener('focusin', () => setTimeout(clear));
  clear();
}
