// @ts-check
// Most pages need no records: their script is fetched where they are kept, shown, or have to be sent.
import { recall } from '../memory.js';
import { RECORDS, purpose } from '../opened.js';
import { PAIRED, UNSENT, showUnsent } from './unsent.js';

export function loadRecords() {
  const left = recall(UNSENT);
  showUnsent();
  const forms = RECORDS.map(name => `form[data-calculator=${name}]`).join();
  const load = () => {
    // Of a type that no browser runs, until it is needed.
    const address = document.querySelector('script[type="records"]')?.getAttribute('src');
    // Every page that shows records says what it needs where there is no script.
    const needed = document.querySelector(`[data-no-log], [data-record], ${forms}`) || purpose() || (left && recall(PAIRED));
    if (!address || !needed || document.querySelector('script[data-records]')) return;
    const script = document.createElement('script');
    script.src = address;
    script.dataset.records = '';
    document.head.append(script);
  };
  load();
  document.addEventListener('htmx:after:swap', load);
}
