// @ts-check
// Most pages need no records: their script is fetched where they are kept, shown, or have to be sent.
import { recall } from '../memory.js';
import { PAIRED, UNSENT, showUnsent } from './unsent.js';

export function loadRecords() {
  const left = recall(UNSENT);
  showUnsent();
  // Read before the page puts the answer's own address in the place of this one.
  document.documentElement.dataset.opened = location.hash;
  const load = () => {
    // Of a type that no browser runs, until it is needed.
    const address = document.querySelector('script[type="records"]')?.getAttribute('src');
    const needed = document.querySelector('[data-log], [data-entry], [data-crew], [data-record], form[data-calculator=weld-entry]') || (left && recall(PAIRED));
    if (!address || !needed || document.querySelector('script[data-records]')) return;
    const script = document.createElement('script');
    script.src = address;
    script.dataset.records = '';
    document.head.append(script);
  };
  load();
  document.addEventListener('htmx:after:swap', load);
}
