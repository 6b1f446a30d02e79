// @ts-check
// The reader's language: the phone's worker is told, and fetches its words once; without a worker the server knows all.
import { filledIn } from './fields.js';

const A_YEAR_S = 31536000;
const COOKIE = 'language';

/** Tell the worker which language to answer in. @param {ServiceWorker} worker @param {string} language @returns {Promise<string>} the one it has */
function choose(worker, language) {
  return new Promise(done => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = event => done(event.data);
    worker.postMessage({ language }, [port2]);
  });
}

/** The language chosen before there was a worker: the server was told by a cookie. */
function chosenBefore() {
  return document.cookie.split('; ').find(each => each.startsWith(COOKIE + '='))?.slice(COOKIE.length + 1);
}

export function watchLanguage() {
  const part = document.querySelector('[data-languages]');
  const said = part?.querySelector('[data-language-said]');
  if (!(part && said instanceof HTMLElement)) return;
  part.addEventListener('click', async event => {
    const link = event.target instanceof Element ? event.target.closest('a[data-language]') : null;
    const worker = navigator.serviceWorker?.controller;
    if (!(link instanceof HTMLAnchorElement && worker)) return;
    event.preventDefault();
    said.textContent = said.dataset.fetching ?? '';
    const language = link.dataset.language ?? '';
    if ((await choose(worker, language)) !== language) return void (said.textContent = said.dataset.needsSignal ?? '');
    // For the server, should the worker ever be gone.
    document.cookie = `${COOKIE}=${language}; path=${new URL('./', link.href).pathname}; max-age=${A_YEAR_S}; samesite=lax`;
    // What was typed a moment ago may not stand in the address yet.
    const form = document.querySelector('form[data-calculator]');
    if (form instanceof HTMLFormElement) history.replaceState(history.state, '', `${location.pathname}?${filledIn(form)}${location.hash}`);
    location.reload();
  });
  const before = chosenBefore();
  const fromServer = !navigator.serviceWorker?.controller;
  navigator.serviceWorker?.ready.then(({ active }) => {
    if (!(before && active && (fromServer || before !== document.documentElement.lang))) return;
    said.textContent = said.dataset.fetching ?? '';
    choose(active, before).then(language => (said.textContent = (language === before ? '' : said.dataset.needsSignal) ?? ''));
  });
}
