// @ts-check
// Most pages need no records: their script is fetched where they are kept, shown, or have to be sent.
import { recall } from '../memory.js';
import { RECORDS, purpose } from '../opened.js';
import { PAIRED, UNSENT, showUnsent } from './unsent.js';

/** Set once this phone has a record: then the log is opened again. */
export const USED = 'records-used';
const AFTER_MS = 1000; // the page that opens now comes first, and Python

export function loadRecords() {
  const left = recall(UNSENT);
  showUnsent();
  const forms = RECORDS.map(name => `form[data-calculator=${name}]`).join();
  const load = (early = false) => {
    // Of a type that no browser runs, until it is needed.
    const address = document.querySelector('script[type="records"]')?.getAttribute('src');
    // Every page that shows records says what it needs where there is no script.
    const needed = early || document.querySelector(`[data-no-log], [data-record], ${forms}`) || purpose() || (left && recall(PAIRED));
    if (!address || !needed || document.querySelector('script[data-records]')) return;
    const script = document.createElement('script');
    script.src = address;
    script.dataset.records = early ? 'early' : '';
    document.head.append(script);
  };
  load();
  document.addEventListener('htmx:after:swap', () => load());
  // Read and its store opened before the log is asked for: that takes a slow phone as long as the log itself.
  const early = () => load(true);
  if (recall(USED)) window.addEventListener('load', () => setTimeout(early, AFTER_MS));
  document.querySelector('header nav')?.addEventListener('pointerdown', early, { once: true });
}
