// @ts-check
// Pages of records opened from a link into the page that is there: a new page costs a slow phone more than all the work
// of a list. Only from a page with no form: what is typed, and a timer that runs, are left as they always were.

/**
 * @typedef {{ ask: (name: string, id: string) => Promise<any>, show: (asked: Promise<any>) => Promise<void>, then: () => void }} Records
 *   how they are asked for, shown, and what comes after
 * @typedef {{ main: Element, title: string }} Page
 */

/** The pages that are opened so; each has a part with `data-<name>`, and is made anew whenever it is come back to. */
const SOFT = ['log', 'jobs', 'work', 'entry', 'truck'];
/** What may be half typed in, or drawn. */
const TYPED_IN = 'form[data-calculator], [data-joining], [data-paper]';
const PATIENCE_MS = 150; // for what is asked for, so that the page comes with it
const IDLE_MS = 1000;

/** The main parts that were left, for the way back. @type {Map<number, Page>} */
const left = new Map();
/** As they were read: what stands in them is filled in. @type {Map<string, Page>} */
const frames = new Map();
let number = 0;
let turns = 0;

/** @param {string} address */
const nameOf = address => new URL(address).pathname.split('/').pop() ?? '';
const here = () => location.pathname + location.search;
const isSoft = () => document.querySelector(SOFT.map(name => `[data-${name}]`).join()) !== null;

/** @param {Records} records */
export function openSoftly(records) {
  document.addEventListener('click', event => {
    const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
    const plain = !event.defaultPrevented && event.button === 0 && !(event.ctrlKey || event.metaKey || event.shiftKey || event.altKey);
    if (!(link instanceof HTMLAnchorElement) || !plain || link.target || link.search || link.getAttribute('href')?.startsWith('#')) return;
    if (link.origin !== location.origin || !SOFT.includes(nameOf(link.href))) return;
    if (document.querySelector(TYPED_IN)) return;
    event.preventDefault();
    open(link.href, records, true);
  });
  document.addEventListener('page:back', event => {
    const kept = left.get(history.state.soft);
    event.preventDefault();
    document.documentElement.dataset.softly = here(); // another step may follow before the page is there
    if (!kept) return void open(location.href, records, false);
    turns++;
    put(kept);
    document.dispatchEvent(new Event('page:again')); // what it says of records may be of another one by now
    scrollBack();
  });
}

/** Read the pages that may be asked for next, once this one has been shown. */
export function expectNext() {
  if (!navigator.serviceWorker?.controller || document.querySelector(TYPED_IN)) return;
  setTimeout(async () => {
    for (const name of SOFT) await frameOf(new URL(name, location.href).href).catch(() => {});
  }, IDLE_MS);
}

/** @param {string} address @returns {Promise<Page>} */
async function frameOf(address) {
  const name = nameOf(address);
  const known = frames.get(name);
  if (known) return known;
  if (!SOFT.includes(name)) throw new Error('another kind of page');
  const reply = await fetch(address);
  const page = new DOMParser().parseFromString(await reply.text(), 'text/html');
  const main = page.querySelector('main');
  const build = (/** @type {Document} */ of) => of.querySelector('.build code')?.textContent;
  if (!main?.querySelector(`[data-${name}]`) || build(page) !== build(document)) throw new Error('another kind of page');
  const read = { main: document.adoptNode(main), title: page.title };
  frames.set(name, read);
  return read;
}

/** @param {string} address @param {Records} records @param {boolean} onwards whether this is a step to take back */
async function open(address, records, onwards) {
  const turn = ++turns;
  const asked = records.ask(nameOf(address), new URL(address).hash.slice(1));
  const answered = asked.catch(() => {}); // told where it is shown
  try {
    const { main, title } = await frameOf(address);
    await Promise.race([answered, new Promise(done => setTimeout(done, PATIENCE_MS))]);
    if (turn !== turns) return;
    if (onwards) leaveFor(address);
    put({ main: document.importNode(main, true), title });
  } catch {
    if (turn !== turns) return;
    if (onwards) location.assign(address);
    else location.reload();
    return;
  }
  await records.show(asked);
  if (turn !== turns) return;
  if (!onwards) scrollBack();
  records.then();
}

/** @param {string} address */
function leaveFor(address) {
  if (address === location.href) return history.replaceState({ soft: history.state?.soft }, '');
  number = Math.max(number, history.state?.soft ?? 0) + 1;
  const main = document.querySelector('main');
  if (main && !isSoft()) left.set(number, { main, title: document.title });
  // Not htmx's: it would take a step back to here for its own.
  history.replaceState({ ...history.state, htmx: undefined, soft: number, y: window.scrollY }, '');
  history.pushState({ soft: ++number }, '', address);
  window.scrollTo(0, 0);
}

/** Where the page was left; a list is longer only a little later, and whoever touches it meanwhile goes where he wants. */
function scrollBack(turn = turns) {
  const y = history.state?.y ?? 0;
  const done = new AbortController();
  const grown = new ResizeObserver(() => {
    // Further down than wanted, too: at the end of a short list the browser goes along with what comes in above the foot.
    if (turn === turns) window.scrollTo(0, y);
    if (turn !== turns || Math.abs(window.scrollY - y) < 1) done.abort();
  });
  done.signal.addEventListener('abort', () => grown.disconnect());
  for (const moved of ['pointerdown', 'wheel', 'keydown']) addEventListener(moved, () => done.abort(), { signal: done.signal, passive: true });
  grown.observe(document.body);
}

/** @param {Page} page */
function put({ main, title }) {
  document.querySelector('main')?.replaceWith(main);
  document.title = title;
  document.documentElement.dataset.softly = here(); // back.js reads it
  // Whoever listens to the page is told what has come.
  const heading = main.querySelector('h1');
  if (!heading) return;
  heading.tabIndex = -1;
  heading.focus({ preventScroll: true });
}
