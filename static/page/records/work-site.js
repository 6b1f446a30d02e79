// @ts-check
// On a job's page: the lists that were ticked for it, its fire watch by the clock, and its photos.
import { left as timeLeft, waitKey, waitOf } from '../countdown.js';
import { keep, recall } from '../memory.js';
import { clockTime } from '../ticks.js';
import { changeJob } from './change-job.js';
import { keepPhoto } from './database.js';
import { listOf, listsOf, stand, summary, tickedAt } from './job-ticks.js';
import { exchangeNow } from './sending.js';

/** @typedef {import('./database.js').Row} Row */
/** @typedef {Record<string, string>} Fields */

/** The lists that every job is asked for; any other is shown once it was ticked. */
const ALWAYS = ['make-safe', 'hot-work'];
const AGAIN_MS = 1000;

/** @param {string} name @param {(string | Node)[]} parts */
function element(name, ...parts) {
  const made = document.createElement(name);
  made.append(...parts);
  return made;
}

// ---------------------------------------------------------------- ticks

/**
 * @param {HTMLElement} place @param {Row} job @param {(name: string) => string} called what a list is called
 * @param {ParentNode} cards where the links to the lists are, once the job is worked out
 */
export function paintTicks(place, job, called, cards) {
  const kept = listsOf(job.fields).map(each => each.name);
  const isOpen = !job.deleted && !job.newer && job.fields.status !== 'closed';
  place.querySelector('[data-lists]')?.replaceChildren(
    ...[...new Set([...ALWAYS, ...kept])].map(name => {
      const list = listOf(job.fields, name);
      const parts = [element('h3', called(name)), element('p', list ? summary(list, place.dataset) : (place.dataset.none ?? ''))];
      if (list) parts.push(...told(place, list));
      if (isOpen) parts.push(element('p', way(place, name, job.id, cards)));
      const made = element('div', ...parts);
      made.dataset.list = name;
      return made;
    }),
  );
}

/** What was not ticked in the open, what was with its time folded away. @param {HTMLElement} place @param {import('./job-ticks.js').List} list */
function told(place, list) {
  const { left } = stand(list);
  const parts = left.length ? [element('p', element('strong', place.dataset.notTicked ?? '')), element('ul', ...left.map(each => element('li', each)))] : [];
  const done = list.items.filter(([, , at]) => at);
  if (!done.length) return parts;
  const lines = done.map(([, what, at]) => element('li', `${tickedAt(at)}: ${what}`));
  return [...parts, element('details', element('summary', place.dataset.when ?? ''), element('ul', ...lines))];
}

/** @param {HTMLElement} place @param {string} name @param {string} id @param {ParentNode} cards */
function way(place, name, id, cards) {
  const link = /** @type {HTMLAnchorElement} */ (element('a', place.dataset.openList ?? ''));
  link.className = 'action';
  // Its own line, or any other that was worked out by it: with what the job says to it.
  const led = cards.querySelector(`[data-line="${CSS.escape(name)}"] a`) ?? cards.querySelector(`a[href^="${CSS.escape(name)}?"]`);
  link.href = led?.getAttribute('href') ?? `${name}#job=${id}`;
  return link;
}

// ---------------------------------------------------------------- the fire watch

/**
 * When the watch ends: so long after the last spark that is known of, a weld in the log or a button.
 * @param {Fields} fields of the job @param {string} welded when the last weld was logged, or '' @param {number} [seconds] how long it is; else as it was kept
 * @param {import('../countdown.js').Wait} [begun] what was started on the job's list
 * @returns {import('../countdown.js').Wait | undefined}
 */
export function watchTime(fields, welded, seconds, begun) {
  const [from, until] = [fields['watch.from'], fields['watch.until']].map(each => Date.parse(each ?? ''));
  if (fields.status === 'closed') return from && until ? { start: from, end: until } : undefined;
  const own = from && until && from < until ? { start: from, end: until } : undefined;
  const tapped = begun && !(own && own.start > begun.start) ? begun : own;
  const length = seconds ? seconds * 1000 : tapped ? tapped.end - tapped.start : 0;
  const start = Math.max(...[from, begun?.start, Date.parse(welded)].map(each => each || 0));
  // The longest rules: what the list counts down to is not cut short here.
  const end = Math.max(start + length, begun?.start === start ? begun.end : 0);
  return length > 0 && start > 0 ? { start, end } : undefined;
}

const listKey = (/** @type {string} */ id) => waitKey('hot-work', 'timer', id);

/** The watch that was started on a job's list, on this phone. @param {string} id of the job */
export const begunFor = id => waitOf(recall(listKey(id)));

/** As fields of the job. @param {{ start: number, end: number } | undefined} watch @returns {Fields} */
export const watchFields = watch =>
  watch ? { 'watch.from': new Date(watch.start).toISOString(), 'watch.until': new Date(watch.end).toISOString() } : {};

/** The fire watch of one job, from the question that says how long it is. */
export class FireWatch {
  /** @param {HTMLElement} place @param {() => Promise<unknown>} fresh */
  constructor(place, fresh) {
    this.place = place;
    this.fresh = fresh;
    this.timer = 0;
    /** @type {Row | undefined} */
    this.job = undefined;
    this.welded = '';
    /** @type {number | undefined} */
    this.seconds = undefined;
  }

  /** @param {string} name @returns {HTMLElement} */
  part(name) {
    return /** @type {HTMLElement} */ (this.place.querySelector(`[data-${name}]`));
  }

  /** @param {Row | undefined} job */
  start(job) {
    if (job?.id !== this.job?.id) {
      this.seconds = undefined;
      this.welded = '';
      this.part('watch-length').textContent = '';
      this.part('watch-sources').replaceChildren();
    }
    this.job = job;
    this.paint();
  }

  /** How long it is, by whose word. @param {HTMLElement | null} answer of the hot-work question */
  take(answer) {
    const found = answer?.querySelector('[data-countdown]');
    const seconds = Number(found?.getAttribute('data-seconds'));
    if (!found || !(seconds > 0)) return;
    this.seconds = seconds;
    this.part('watch-length').textContent = found.querySelector('h2')?.textContent ?? '';
    const cited = [...(answer?.querySelectorAll('details') ?? [])].find(each => each.querySelector('cite'));
    this.part('watch-sources').replaceChildren(...(cited ? [cited] : []));
    this.paint();
  }

  /** @param {string} at of the newest weld in the log */
  last(at) {
    this.welded = at;
    this.paint();
  }

  time() {
    return this.job && watchTime(this.job.fields, this.welded, this.seconds, begunFor(this.job.id));
  }

  paint() {
    window.clearTimeout(this.timer);
    const { job } = this;
    this.place.hidden = !job;
    if (!job) return;
    const isOpen = !job.deleted && !job.newer && job.fields.status !== 'closed';
    const watch = this.time();
    this.part('watch-now').hidden = !isOpen || !this.seconds;
    this.part('watch-unknown').hidden = !isOpen || Boolean(this.seconds || watch);
    const [until, since, over] = ['watch-until', 'watch-since', 'watch-over'].map(each => this.part(each));
    if (!until || !since || !over) return;
    const now = Date.now();
    const ended = !watch || now >= watch.end;
    const clock = watch ? (until.dataset.until ?? '').replace('#', () => clockTime(watch.end)) : (until.dataset.none ?? '');
    if (until.textContent !== clock) until.textContent = clock;
    const byLog = watch && Date.parse(this.welded) === watch.start;
    since.textContent = watch ? ((byLog ? since.dataset.weld : since.dataset.tap) ?? '').replace('#', () => clockTime(watch.start)) : '';
    over.hidden = !watch || !ended || !isOpen;
    this.part('watch-left').textContent = isOpen && watch && !ended ? timeLeft(watch, now) : '';
    if (isOpen && watch && !ended) this.timer = window.setTimeout(() => this.place.isConnected && this.paint(), AGAIN_MS);
  }

  /** The last spark is now. */
  async now() {
    const { job, seconds } = this;
    if (!job || !seconds) return;
    const start = Date.now();
    await changeJob(job.id, fields => (fields.status === 'closed' ? undefined : { ...fields, ...watchFields({ start, end: start + seconds * 1000 }) }));
    keep(listKey(job.id), `${start} ${start + seconds * 1000}`);
    await this.fresh();
    exchangeNow();
  }
}

// ---------------------------------------------------------------- photos

/** @param {HTMLElement} place @param {() => string} job its id @param {() => Promise<unknown>} fresh */
export function watchPhotos(place, job, fresh) {
  const box = place.querySelector('input');
  const said = place.querySelector('[role=status]');
  if (!(box instanceof HTMLInputElement && said instanceof HTMLElement)) return;
  box.addEventListener('change', async () => {
    const files = [...(box.files ?? [])];
    if (!files.length) return;
    try {
      /** @type {string[]} */
      const names = [];
      for (const file of files) {
        const name = crypto.randomUUID();
        await keepPhoto(name, file);
        names.push(name);
      }
      const kept = await changeJob(job(), fields =>
        fields.status === 'closed' ? undefined : { ...fields, photos: [...(fields.photos ?? '').split(' '), ...names].join(' ').trim() },
      );
      said.textContent = (kept ? said.dataset.saved : said.dataset.refused) ?? '';
      box.value = '';
      await fresh();
      exchangeNow();
    } catch (error) {
      const full = error instanceof Error && error.name === 'QuotaExceededError';
      said.textContent = (full ? said.dataset.full : said.dataset.refused) ?? '';
    }
  });
}
