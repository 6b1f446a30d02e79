// @ts-check
// The log opened from the page head into the page that is there: a new page costs a slow phone more than all the log's
// own work. Only from a page with no form: what is typed, and a timer that runs, are left as they always were.

/** @typedef {{ ask: () => Promise<any>, show: (asked: Promise<any>) => Promise<void>, then: () => void }} Log how it is asked for, shown, and what comes after */

/** The main parts that were left, for the way back; a list of records is made anew instead. @type {Map<number, { main: Element, title: string }>} */
const left = new Map();
let number = 0;
let busy = false;

/** @param {Log} log */
export function openSoftly(log) {
  document.addEventListener('click', event => {
    const link = event.target instanceof Element ? event.target.closest('header a[data-softly]') : null;
    const plain = !event.defaultPrevented && event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
    if (!(link instanceof HTMLAnchorElement) || !plain || document.querySelector('form[data-calculator]') || history.state?.htmx) return;
    event.preventDefault();
    if (busy) return;
    open(link.href, log, true).catch(() => location.assign(link.href));
  });
  document.addEventListener('page:back', event => {
    const kept = left.get(history.state.soft);
    event.preventDefault();
    if (kept) put(kept.main, kept.title);
    else open(location.href, log, false).catch(() => location.reload());
  });
}

/** @param {string} address @param {Log} log @param {boolean} onwards whether this is a step to take back */
async function open(address, log, onwards) {
  busy = true;
  const asked = log.ask();
  asked.catch(() => {}); // told where it is shown
  try {
    const reply = await fetch(address);
    const page = new DOMParser().parseFromString(await reply.text(), 'text/html');
    const main = page.querySelector('main');
    const build = (/** @type {Document} */ of) => of.querySelector('.build code')?.textContent;
    if (!main?.querySelector('[data-log]') || build(page) !== build(document)) throw new Error('another kind of page');
    if (onwards && address !== location.href) {
      number = Math.max(number, history.state?.soft ?? 0) + 1;
      if (!document.querySelector('[data-log]')) left.set(number, { main: /** @type {Element} */ (document.querySelector('main')), title: document.title });
      history.replaceState({ soft: number }, '');
      history.pushState({ soft: ++number }, '', address);
      window.scrollTo(0, 0);
    }
    put(document.adoptNode(main), page.title);
  } finally {
    busy = false;
  }
  await log.show(asked);
  log.then();
}

/** @param {Element} main @param {string} title */
function put(main, title) {
  document.querySelector('main')?.replaceWith(main);
  document.title = title;
  document.documentElement.dataset.softly = location.pathname + location.search; // back.js reads it
  // Whoever listens to the page is told what has come.
  const heading = main.querySelector('h1');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}
