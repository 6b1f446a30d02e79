// @ts-check
// The pages that keep or show records, and the exchange that goes on behind them.
import { showCrew } from './crew-page.js';
import { keepDrafts } from './drafts.js';
import { showEntry } from './entry-page.js';
import { showLog } from './log-page.js';
import { offerRecord } from './recording.js';
import { exchangeNow } from './sending.js';

for (const note of document.querySelectorAll('[data-no-log]')) note.remove();
showLog();
showEntry();
showCrew();
offerRecord();
keepDrafts();
document.addEventListener('htmx:after:swap', offerRecord);
exchangeNow();
window.addEventListener('online', () => exchangeNow());
document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && exchangeNow());
