// @ts-check
// When to exchange, how long to wait after a failure, and saying how far it got.
import { keep, recall } from '../memory.js';
import { waiting } from './database.js';
import { exchange, waitAfter } from './exchange.js';
import { PAIRED, UNSENT, showUnsent } from './unsent.js';

let failures = 0;
let timer = 0;
let running = false;
/** @type {[() => void, Element][]} */
let watchers = [];

/** Have something done whenever the state of the exchange changes, while a part of the page is there. @param {() => void} watcher @param {Element} shown */
export const whenExchanged = (watcher, shown) => watchers.push([watcher, shown]);

/** What the exchange last said: a word of the catalogue's reasons, `sending`, or ''. */
export let reason = '';

/** @param {string} word */
function told(word) {
  reason = word;
  watchers = watchers.filter(([, shown]) => shown.isConnected);
  for (const [watcher] of watchers) watcher();
}

/** The phone's own store did not open: say so. */
export const cannotOpen = () => told('store');

/** Count what is not on the server, for every page to show. */
export async function count() {
  const left = await waiting();
  keep(UNSENT, left ? String(left) : null);
  showUnsent();
  return left;
}

/** Exchange now, unless this phone is in no crew; again by itself after a failure. @param {boolean} [asked] by the reader */
export async function exchangeNow(asked = false) {
  const left = await count().catch(() => -1);
  if (left < 0) return told('store');
  if (!recall(PAIRED)) return told('');
  if (running) return;
  running = true;
  window.clearTimeout(timer);
  if (left || asked) told('sending');
  try {
    const build = document.querySelector('.build code')?.textContent ?? '';
    const result = await exchange({ build });
    failures = result.state === 'waits' ? failures + 1 : 0;
    told(result.state === 'busy' ? 'busy' : result.reason);
    // After another tab too: it may have closed in the middle, or begun before what waits here was kept.
    if (result.state !== 'done' && result.reason !== 'pair') timer = window.setTimeout(() => exchangeNow(), waitAfter(failures));
  } catch {
    told('store'); // the phone's own store failed: nothing was lost, and the next try reads it anew
  } finally {
    running = false;
    await count().catch(() => {});
    told(reason);
  }
}
