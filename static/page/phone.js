// @ts-check
// Keeping the book on this phone: the service worker, and saying plainly how far that got.

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
  if (!navigator.serviceWorker.controller) say(state.dataset.notYet ?? '', 'not-yet');
  try {
    const registration = await navigator.serviceWorker.register('worker.js', { updateViaCache: 'none' });
    await navigator.serviceWorker.ready;
    say(state.dataset.ready ?? '', 'ready');
    watchForUpdate(registration);
  } catch {
    // Registering checks for a new version, which fails without a signal; the book may be here all the same.
    if (navigator.serviceWorker.controller) say(state.dataset.ready ?? '', 'ready');
    else say(state.dataset.failed ?? '', 'failed');
  }
}

/** @param {ServiceWorkerRegistration} registration */
function watchForUpdate(registration) {
  const offer = document.querySelector('[data-update]');
  const now = document.querySelector('[data-update-now]');
  if (!(offer instanceof HTMLElement && now instanceof HTMLElement)) return;
  const show = () => {
    if (registration.waiting && navigator.serviceWorker.controller) offer.hidden = false;
  };
  show();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', show);
  });
  // Never by itself: a reload in the middle of a form is the reader's to choose.
  let reloading = false;
  now.addEventListener('click', () => {
    reloading = true;
    registration.waiting?.postMessage('take over');
  });
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (!reloading) return;
    reloading = false;
    location.reload();
  });
}
