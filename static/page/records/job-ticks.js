// @ts-check
// Ticks on a list that was opened from a job: kept in the job, each with its time, and what was not ticked beside them.
import { openedFor } from '../opened.js';
import { clockTime, watchTicks } from '../ticks.js';
import { changeJob } from './change-job.js';
import { row } from './database.js';
import { exchangeNow } from './sending.js';

/** @typedef {Record<string, string>} Fields */
/** @typedef {[string, string, string]} Item id, what is to be done, when it was ticked or '' */
/** @typedef {{ name: string, heading: string, items: Item[] }} List `name` of the calculator that has it */

const OF_LIST = 'ticks.';
const LONGEST_TEXT = 4000; // characters of one field, on the wire
const LONGEST_ITEM = 160;

/** A list as a job keeps it; undefined for what is none. @param {Fields} fields @param {string} name @returns {List | undefined} */
export function listOf(fields, name) {
  try {
    const [heading, ...items] = JSON.parse(fields[OF_LIST + name] ?? '');
    const sound = items.filter((/** @type {unknown} */ each) => Array.isArray(each) && each.length === 3 && each.every(part => typeof part === 'string'));
    return typeof heading === 'string' && sound.length ? { name, heading, items: sound } : undefined;
  } catch {
    return undefined;
  }
}

/** Every list that a job keeps. @param {Fields} fields @returns {List[]} */
export const listsOf = fields =>
  Object.keys(fields).flatMap(each => (each.startsWith(OF_LIST) ? (listOf(fields, each.slice(OF_LIST.length)) ?? []) : []));

/**
 * A list with ticks set and taken away. It says what was asked when this was ticked: what an older list had and this one
 * has not stays if it was ticked.
 * @param {List | undefined} old @param {string} heading @param {[string, string][]} asked @param {Map<string, string>} changed id -> when it was ticked, '' if no longer
 */
export function withTicks(old, heading, asked, changed) {
  const before = new Map(old?.items.map(([id, what, at]) => [id, { what, at }]));
  /** @type {Item[]} */
  const items = asked.map(([id, what]) => [id, what.slice(0, LONGEST_ITEM), changed.get(id) ?? before.get(id)?.at ?? '']);
  const here = new Set(asked.map(([id]) => id));
  for (const [id, { what, at }] of before) if (at && !here.has(id)) items.push([id, what, at]);
  const text = () => JSON.stringify([heading, ...items]);
  while (text().length > LONGEST_TEXT && items.length > asked.length) items.pop();
  return text();
}

/** @param {List} list @returns {{ done: number, all: number, last: string, left: string[] }} `last`: when the newest was ticked */
export function stand({ items }) {
  const times = items.map(([, , at]) => at).filter(Boolean).sort();
  return { done: times.length, all: items.length, last: times.at(-1) ?? '', left: items.filter(([, , at]) => !at).map(([, what]) => what) };
}

/** @param {string} at */
export const tickedAt = at => (Number.isNaN(Date.parse(at)) ? at : clockTime(Date.parse(at)));

/** A list in one line. @param {List} list @param {DOMStringMap} words `ticked` with two #, `last` with #, `notTicked` */
export function inWords(list, words) {
  const { left } = stand(list);
  return `${summary(list, words)}${left.length ? `. ${words.notTicked} ${left.join(' | ')}` : ''}`;
}

/** How many of how many, and when the last. @param {List} list @param {DOMStringMap} words */
export function summary(list, words) {
  const { done, all, last } = stand(list);
  const when = last ? (words.last ?? '').replace('#', () => tickedAt(last)) : '';
  return `${(words.ticked ?? '').replace('#', String(done)).replace('#', String(all))}${when}`;
}

/** On a page with a list that was opened from a job. */
export async function offerTicks() {
  const { job } = openedFor();
  const form = document.querySelector('form[data-calculator]');
  const answer = document.getElementById('answer');
  if (!job || !(form instanceof HTMLFormElement) || !answer || answer.dataset.ticksOf) return;
  answer.dataset.ticksOf = job;
  const name = form.dataset.calculator ?? '';
  const found = await row(job).catch(() => undefined);
  // What cannot be kept with its job stays on the phone, as that of no job does.
  if (!found || found.kind !== 'job' || found.newer || found.deleted) return watchTicks(answer, name);
  const ticks = new JobTicks(answer, name, job, found.fields);
  ticks.show = watchTicks(answer, name, ticks);
}

class JobTicks {
  /** @param {HTMLElement} answer @param {string} name @param {string} job @param {Fields} fields */
  constructor(answer, name, job, fields) {
    this.answer = answer;
    this.name = name;
    this.job = job;
    this.closed = fields.status === 'closed';
    /** @type {Map<string, string>} */
    this.times = new Map();
    this.read(fields);
    /** What is not yet in the store. @type {Map<string, string>} */
    this.changed = new Map();
    this.saving = false;
    this.show = () => {};
  }

  /** @param {Fields} fields */
  read(fields) {
    this.times = new Map((listOf(fields, this.name)?.items ?? []).flatMap(([id, , at]) => (at ? [[id, at]] : [])));
  }

  /** @returns {import('../ticks.js').Ticks} */
  of() {
    const times = [...this.times.values()].map(Date.parse).filter(Number.isFinite);
    return { since: Math.min(...times), ids: [...this.times.keys()] };
  }

  /** @param {import('../ticks.js').Ticks} ticks */
  put(ticks) {
    const now = new Date().toISOString();
    for (const id of ticks.ids) if (!this.times.has(id)) this.change(id, now);
    for (const id of [...this.times.keys()]) if (!ticks.ids.includes(id)) this.change(id, '');
    this.save();
  }

  /** @param {string} id @param {string} at */
  change(id, at) {
    this.changed.set(id, at);
    if (at) this.times.set(id, at);
    else this.times.delete(id);
  }

  /** One after the other, each on the disk before the next; what is ticked meanwhile goes together. */
  async save() {
    if (this.saving) return;
    this.saving = true;
    try {
      while (this.changed.size) {
        const changed = new Map(this.changed);
        const [heading, asked] = this.asked();
        const kept = await changeJob(this.job, fields =>
          fields.status === 'closed' ? undefined : { ...fields, [OF_LIST + this.name]: withTicks(listOf(fields, this.name), heading, asked, changed) },
        );
        for (const [id, at] of changed) if (this.changed.get(id) === at) this.changed.delete(id);
        if (!kept) {
          this.changed.clear();
          await this.again();
        }
      }
      exchangeNow();
    } catch {
      this.changed.clear();
      await this.again().catch(() => this.times.clear()); // nothing stands ticked that is not kept
      this.show();
      this.tell('refused');
    } finally {
      this.saving = false;
    }
  }

  /** As the store has it: closed meanwhile, or gone. */
  async again() {
    const found = await row(this.job);
    this.closed = !found || found.deleted || found.fields.status === 'closed';
    this.read(found?.fields ?? {});
    this.show();
  }

  /** The list that stands there now: its heading, and what is to be done. @returns {[string, [string, string][]]} */
  asked() {
    const list = this.answer.querySelector('[data-checklist]');
    const boxes = [...(list?.querySelectorAll('input[data-tick]') ?? [])];
    const words = (/** @type {Element | null | undefined} */ each) => each?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
    return [words(list?.querySelector('legend')), boxes.map(each => [each.getAttribute('data-tick') ?? '', words(each.parentElement)])];
  }

  /** @param {'kept' | 'closed' | 'refused'} word */
  tell(word) {
    const said = this.answer.querySelector('[data-checklist] [data-job]');
    if (said instanceof HTMLElement) said.textContent = said.dataset[word] ?? '';
  }
}
