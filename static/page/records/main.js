// @ts-check
// The pages that keep or show records, and the exchange that goes on behind them.
import { watchLinks } from '../machines.js';
import { readPurpose } from '../opened.js';
import { keepOnPhone } from '../phone.js';
import { watchTheme } from '../theme-choice.js';
import '../../theme.js';
import { watchBack } from './back.js';
import { showCrew } from './crew-page.js';
import { row, warm } from './database.js';
import { keepDrafts } from './drafts.js';
import { offerDemo } from './demo.js';
import { showEntry } from './entry-page.js';
import { offerTicks } from './job-ticks.js';
import { firstJobs, showJobs } from './jobs-page.js';
import { offerLastTime } from './last-time.js';
import { firstRows, showLog } from './log-page.js';
import { showPaper } from './paper-page.js';
import { offerRecord } from './recording.js';
import { exchangeNow, reason, whenExchanged } from './sending.js';
import { offerPairs } from './pairs.js';
import { expectNext, openSoftly } from './softly.js';
import { offerStock } from './stock-choice.js';
import { headForm, offerJob } from './take-back.js';
import { showTruck } from './truck-page.js';
import { showUnsent } from './unsent.js';
import { showWork } from './work-page.js';

const script = /** @type {HTMLScriptElement | null} */ (document.currentScript);
/** Whether this is the page's only script: it came before the page, and does what app.js does elsewhere. */
const alone = script?.hasAttribute('data-alone');
/** Whether nothing here is needed yet: the log may be opened next. */
const early = script?.dataset.records === 'early';

/** What a page of records shows first, asked for while the page around it is still on its way. @param {string} name @param {string} id @returns {Promise<any>} */
const ask = async (name, id) => (name === 'log' ? firstRows() : name === 'jobs' ? firstJobs() : name === 'work' ? row(id) : undefined);

/** @param {Promise<any>} [first] */
const show = async first => {
  for (const note of document.querySelectorAll('[data-no-log]')) note.remove();
  showEntry();
  showCrew();
  showJobs(first);
  showWork(first);
  showTruck();
  showPaper();
  offerDemo();
  // Where the phone's store does not open, keeping says so; what it would have offered is left out.
  offerStock().catch(() => {});
  offerJob().catch(() => {});
  headForm().catch(() => {});
  offerTicks().catch(() => {});
  offerRecord();
  keepDrafts();
  offerLastTime().catch(() => {});
  await showLog(first);
};

let exchanging = false;
const exchange = () => {
  exchangeNow();
  if (exchanging) return;
  exchanging = true;
  window.addEventListener('online', () => exchangeNow());
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && exchangeNow());
};

/** On every page of records but the log, which says more. */
const sayStore = () => {
  for (const said of document.querySelectorAll('[data-store-said]')) {
    if (said instanceof HTMLElement) said.textContent = reason === 'store' ? (said.dataset.storeSaid ?? '') : '';
  }
};

const begin = async () => {
  whenExchanged(sayStore, document.documentElement);
  document.addEventListener('htmx:after:swap', offerRecord);
  openSoftly({ ask, show, then: exchange });
  offerPairs();
  expectNext();
  if (early) return warm();
  await show(first);
  if (alone) {
    for (const element of document.querySelectorAll('[data-needs-script]')) element.removeAttribute('hidden');
    readPurpose();
    watchLinks();
    watchTheme();
    showUnsent();
    watchBack();
    keepOnPhone();
  }
  exchange();
};

const first = alone ? ask(location.pathname.split('/').pop() ?? '', location.hash.slice(1)) : undefined;
first?.catch(() => {}); // told where it is waited for
// Neither styles nor anything else is waited for: a frame that has been read can be filled in.
if (document.readyState === 'loading') document.addEventListener('readystatechange', begin, { once: true });
else begin();
