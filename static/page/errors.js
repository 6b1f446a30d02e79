// @ts-check
// When an error may be seen. Not while its box is being typed in: half a number is no mistake. And not while a
// finger is down: the words would push the button that it means to press away from under it.

/** @param {HTMLFormElement} form @param {HTMLElement} answer */
export function watchErrors(form, answer) {
  let typing = ''; // the box in which a key was just pressed
  let pressed = false;
  const place = () => {
    if (!pressed) placeErrors(form, answer, typing);
  };
  const left = () => {
    typing = '';
    // A tap moves the focus before it clicks: later, so that both meet the same page.
    setTimeout(place);
  };
  form.addEventListener('input', event => {
    typing = event.target instanceof HTMLInputElement ? event.target.name : '';
  });
  for (const end of ['change', 'submit', 'focusout']) form.addEventListener(end, left);
  document.addEventListener('htmx:after:swap', () => {
    forgetOpeningProblem();
    place();
  });
  document.addEventListener('pointerdown', () => (pressed = true));
  for (const end of ['pointerup', 'pointercancel']) {
    document.addEventListener(end, () => {
      pressed = false;
      setTimeout(place);
    });
  }
}

/** A page that opened with a problem says so on top and in its title; what was mended since is said by the answer. */
function forgetOpeningProblem() {
  const summary = document.querySelector('main > .summary');
  if (!summary) return;
  summary.remove();
  document.title = document.querySelector('h1')?.textContent ?? document.title;
}

/** @param {HTMLFormElement} form @param {HTMLElement} answer @param {string} typing */
function placeErrors(form, answer, typing) {
  /** @type {Map<string, string>} */
  const errors = new Map();
  for (const item of answer.querySelectorAll('[data-field]')) {
    const name = item.getAttribute('data-field') ?? '';
    const held = name !== '' && name === typing;
    item.toggleAttribute('hidden', held);
    if (!held) errors.set(name, item.textContent ?? '');
  }
  const summary = answer.querySelector('.summary');
  if (summary) {
    const quiet = errors.size === 0;
    summary.toggleAttribute('hidden', quiet);
    answer.querySelector('.still-typing')?.toggleAttribute('hidden', !quiet);
  }
  for (const slot of form.querySelectorAll('.error')) {
    const name = slot.id.slice(0, -'-error'.length);
    showError(slot, document.getElementById(name), errors.get(name) ?? '');
  }
}

/** @param {Element} slot @param {Element | null} box @param {string} text */
function showError(slot, box, text) {
  slot.textContent = text;
  slot.toggleAttribute('hidden', text === '');
  slot.closest('.field')?.classList.toggle('wrong', text !== '');
  if (text) slot.closest('details')?.setAttribute('open', '');
  if (!(box instanceof HTMLInputElement || box instanceof HTMLSelectElement)) return;
  if (text) box.setAttribute('aria-invalid', 'true');
  else box.removeAttribute('aria-invalid');
}
