// @ts-check
// Keeping the book on this phone: the service worker, and saying plainly how far that got.

const WAKE_AFTER_MS = 100;
// The worker lies beside the first page, wherever in the book this page is.
const script = document.currentScript;
const WORKER = script instanceof HTMLScriptElement ? new URL('../../worker.js', script.src).href : 'worker.js';

/** Register the worker, say when the book is on the phone, and offer a new version when one waits. */
export async function keepOnPhone() {
  const state = document.querySelector('[data-phone-state]');
  if (!(state instanceof HTMLElement)) return;
  /** @param {string} word @param {string} name */
  const say = (word, name) => {
    state.textContent = word;
    state.dataset.phoneState = name;
  };
  if (!('serviceWorker' in navigator)) return say(state.dataset.unsupported ?? '', 'unsupported');
  // A page that the worker gave is on the phone, signal or none.
  if (navigator.serviceWorker.controller) say(state.dataset.ready ?? '', 'ready');
  else say(state.dataset.notYet ?? '', 'not-yet');
  navigator.serviceWorker.ready.then(keepAwake);
  try {
    const registration = await navigator.serviceWorker.register(WORKER, { updateViaCache: 'none' });
    await navigator.serviceWorker.ready;
    say(state.dataset.ready ?? '', 'ready');
    if (arrived()) return;
    watchForUpdate(registration, say);
  } catch {
    // Registering asks for a new version, which fails without a signal; the book may be here all the same.
    if (!navigator.serviceWorker.controller) say(state.dataset.failed ?? '', 'failed');
  }
}

/** Open what was asked for of a book that is files: now the worker can answer it. */
function arrived() {
  const address = document.querySelector('[data-arrive]')?.getAttribute('data-arrive');
  if (address) location.replace(address + location.search + location.hash);
  return Boolean(address);
}

/**
 * Have Python started before a question needs it: once the page that is opening needs nothing more, and at the touch
 * of a box, since the browser ends a worker that rests. At a key it would be too late, and get in the way.
 * @param {ServiceWorkerRegistration} registration
 */
function keepAwake(registration) {
  const wake = () => registration.active?.postMessage('wake');
  const wakeOnceDrawn = () => setTimeout(wake, WAKE_AFTER_MS);
  if (document.readyState === 'complete') wakeOnceDrawn();
  else window.addEventListener('load', wakeOnceDrawn);
  document.addEventListener('focusin', wake);
}

/** @param {ServiceWorkerRegistration} registration @param {(word: string, name: string) => void} say */
function watchForUpdate(registration, say) {
  const offer = document.querySelector('[data-update]');
  if (!(offer instanceof HTMLElement)) return;
  const show = () => {
    if (!registration.waiting || !navigator.serviceWorker.controller) return;
    offer.hidden = false;
    say(offer.textContent ?? '', 'update');
  };
  const watch = () => registration.installing?.addEventListener('statechange', show);
  show();
  watch(); // it may have been found before this script ran
  registration.addEventListener('updatefound', watch);
  // Never by itself: a reload in the middle of a form is the reader's to choose.
  let reloading = false;
  offer.addEventListener('click', () => {
    reloading = true;
    registration.waiting?.postMessage('take over');
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (!reloading) return;
    reloading = false;
    location.reload();
  });
}
