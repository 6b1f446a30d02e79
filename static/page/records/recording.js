// @ts-check
// Keeping what was typed as a record: the button under an answer of a calculator that is one, or a part of one.
import { keep, recall } from '../memory.js';
import { inputsName, openedFor, setPurpose } from '../opened.js';
import { keepFact, keepPhoto, revisionsOf, row, save } from './database.js';
import { forgetDraft } from './drafts.js';
import { repeatAddress } from './log-page.js';
import { SCHEMA, bodyOf, bodyText } from './revision.js';
import { exchangeNow } from './sending.js';
import { chosenStock, countedStock } from './stock-choice.js';
import { cardsShown, changes, isShown, languageOf, languageShown, partOf, typedOf } from './typed.js';

/** @typedef {import('./typed.js').Fields} Fields */

const ASKED_TO_PERSIST = 'asked-to-persist';
const LONGEST_WAIT_MS = 5000;
/** What was kept last, what was said of it, and where it can be seen: the answer may be drawn anew right after. */
let last = { query: '', words: '', id: '' };
/** The photo that was chosen: the answer is drawn anew, with an empty box, before it is kept. @type {FileList | null} */
let chosen = null;

const query = () => document.querySelector('#answer a.share')?.getAttribute('href')?.split('?')[1] ?? '';
const calculatorOf = () => document.querySelector('form[data-calculator]')?.getAttribute('data-calculator') ?? '';

export function offerRecord() {
  const offer = document.querySelector('[data-record]');
  const button = offer?.querySelector('[data-record-save]');
  const said = offer?.querySelector('[data-record-said]');
  if (!(offer instanceof HTMLElement && button instanceof HTMLButtonElement && said instanceof HTMLElement)) return;
  if (offer.dataset.offered) return;
  offer.dataset.offered = 'yes';
  const { correct, job } = openedFor();
  const isPart = partOf(calculatorOf(), offer.dataset.record ?? '') !== '';
  if (isPart && !correct && !job) return; // a part of nothing
  offer.hidden = false;
  const photo = photoBox(offer);
  photo?.addEventListener('change', () => (chosen = photo.files));
  if (photo && chosen?.length) photo.files = chosen;
  if (correct) button.textContent = button.dataset.corrects ?? '';
  showWay(offer, last.query === query() ? last.id : '');
  if (query() === last.query) {
    button.disabled = true;
    said.textContent = last.words;
  } else if (correct || isPart) showChanges(offer, correct || job);
  button.addEventListener('click', async () => {
    button.disabled = true;
    await answered();
    // The answer region was drawn anew: what was typed last counts, and if it is no answer, nothing is kept.
    const now = document.querySelector('[data-record]');
    if (!(now instanceof HTMLElement)) return;
    try {
      const asked = query();
      const { versions, id } = await keepRecord(now);
      chosen = null;
      const box = photoBox(document.querySelector('[data-record]'));
      if (box) box.value = '';
      last = { query: asked, words: (versions > 1 ? said.dataset.versions : said.dataset.saved) ?? '', id };
      tell(last.words, true);
      showWay(document.querySelector('[data-record]'), id);
      exchangeNow();
    } catch (error) {
      const full = error instanceof Error && error.name === 'QuotaExceededError';
      tell((full ? said.dataset.full : said.dataset.refused) ?? '', false);
    }
  });
}

/** @param {Element | null} offer @returns {HTMLInputElement | null} */
const photoBox = offer => offer?.querySelector('input[type=file]') ?? null;

/** @param {string} words @param {boolean} kept */
function tell(words, kept) {
  const said = document.querySelector('[data-record-said]');
  const button = document.querySelector('[data-record-save]');
  if (said) said.textContent = words;
  if (button instanceof HTMLButtonElement) button.disabled = kept;
}

/** Where what was kept can be seen: in its list, or on the page of the job that it is or belongs to. @param {Element | null} offer @param {string} id of a job just kept */
function showWay(offer, id) {
  const way = offer?.querySelector('[data-record-open]');
  const { correct, job } = openedFor();
  const isJob = offer instanceof HTMLElement && offer.dataset.record === 'job';
  showAgain(offer?.querySelector('[data-record-again]'), id);
  const shown = (isJob && (id || correct)) || job;
  if (!(way instanceof HTMLAnchorElement && shown)) return;
  way.href = `work#${shown}`;
  way.textContent = way.dataset.job ?? '';
}

/** What was just logged may be run again. @param {Element | null | undefined} again @param {string} id of an entry just kept */
async function showAgain(again, id) {
  const found = id && again instanceof HTMLAnchorElement ? await row(id).catch(() => undefined) : undefined;
  if (!(found && again instanceof HTMLAnchorElement)) return;
  again.href = repeatAddress(found);
  again.hidden = false;
  // Another part after the # alone would open nothing.
  again.onclick = () => again.search === location.search && setTimeout(() => location.reload());
}

/** Say line by line what the answer says now and the kept record did not. @param {HTMLElement} offer @param {string} id */
async function showChanges(offer, id) {
  const place = offer.querySelector('[data-record-changed]');
  const list = place?.querySelector('ul');
  const found = await row(id).catch(() => undefined);
  if (!(place instanceof HTMLElement && list && found)) return;
  const part = partOf(calculatorOf(), offer.dataset.record ?? '');
  const kept = Object.fromEntries(Object.entries(found.fields).filter(([name]) => name.startsWith('card_') && isShown(name, part)));
  const sameWords = languageOf(found.fields, part) === document.documentElement.lang;
  const changed = sameWords && Object.keys(kept).length ? changes(kept, cardsShown(document.getElementById('answer'), part)) : [];
  place.hidden = changed.length === 0;
  list.replaceChildren(...changed.map(changeItem));
}

/** A change as an item of a list. @param {import('./typed.js').Change} change */
export function changeItem(change) {
  const item = document.createElement('li');
  for (const [name, text] of [['span', `${change.card}: ${change.label}`], ['del', change.before || '\u2013'], ['ins', change.now || '\u2013']]) {
    const part = document.createElement(name ?? '');
    part.textContent = text ?? '';
    item.append(part, name === 'ins' ? '' : name === 'del' ? ' \u2192 ' : ' ');
  }
  return item;
}

/** Ask once more and wait for the answer: a thumb is quicker than the pause after the last key. */
function answered() {
  const form = document.querySelector('form[data-calculator]');
  if (!form) return Promise.resolve();
  return new Promise(done => {
    const timer = setTimeout(done, LONGEST_WAIT_MS);
    document.addEventListener('htmx:after:swap', () => (clearTimeout(timer), done(undefined)), { once: true });
    form.dispatchEvent(new Event('change', { bubbles: true }));
  });
}

/**
 * Keep what the answer on this page is about.
 * @param {HTMLElement} offer @returns {Promise<{ id: string, versions: number }>} `versions`: how many of it stand beside each other
 */
async function keepRecord(offer) {
  const kind = offer.dataset.record ?? '';
  const calculator = calculatorOf();
  const part = partOf(calculator, kind);
  const { correct, rev, job, said } = openedFor();
  const now = new Date();
  const name = inputsName(calculator);
  // A part goes into its record as that stands now; the whole follows what it was opened from.
  const id = correct || (part ? job : '');
  const follows = part && id ? ((await row(id))?.rev ?? '') : correct ? rev : '';
  const before = id ? (await revisionsOf(id)).find(each => each.rev === follows) : undefined;
  if (part && !before) throw new Error('a part of nothing');
  const old = (before && bodyOf(before)?.fields) ?? {};
  /** @type {Fields} */
  const fields = { ...besides(old, part), ...shownIn(document.getElementById('answer'), part), ...(kind === 'job' && !part ? choicesInRows() : {}) };
  for (const [field, text] of new URLSearchParams(query())) fields[part + field] = text;
  if (part && said.has('said')) fields[`${part}said`] = said.get('said') ?? '';
  if (!part) await addKept(kind, fields, old, before?.saved_at ?? now.toISOString(), now);
  const file = photoBox(offer)?.files?.[0];
  if (file) {
    const photoName = crypto.randomUUID();
    await keepPhoto(photoName, file);
    fields.photos = [...(fields.photos ?? '').split(' '), photoName].join(' ').trim();
  }
  const build = document.querySelector('.build code')?.textContent ?? '';
  const body = bodyText({ kind, schema: SCHEMA, build, fields });
  const { revision, versions } = await save({ id: id || undefined, parents: follows ? [follows] : [], body, at: now });
  // The next entry starts with the numbers of the last; a job and a thing on the truck do not, and no half of a pass is left.
  if (kind !== 'weld-entry') await forgetDraft(name, `?${new URLSearchParams(typedOf(fields, part))}`).catch(() => {});
  else if (name !== calculator) await forgetDraft(name).catch(() => {});
  // What comes next on this page: an entry of its own, of the same job; a job goes on being the same job.
  if (kind !== 'job') setPurpose(job ? `#job=${job}` : '');
  else if (!part) setPurpose(`#correct=${revision.id}&rev=${revision.rev}`);
  await askToPersist();
  return { id: revision.id, versions };
}

/** What a record keeps although its form, or a part of it, was filled in anew: all that this form does not ask. @param {Fields} old @param {string} part @returns {Fields} */
function besides(old, part) {
  const form = document.querySelector('form[data-calculator]');
  const asked = new Set(form instanceof HTMLFormElement ? [...form.elements].map(each => part + (each.getAttribute('name') ?? '')) : []);
  return Object.fromEntries(Object.entries(old).filter(([name]) => !asked.has(name) && name !== `${part}units` && !isShown(name, part)));
}

/** The choices that stand in the rows that say something: one that is as it came was reckoned with too. @returns {Fields} */
function choicesInRows() {
  /** @type {Fields} */
  const fields = {};
  for (const each of document.querySelectorAll('form[data-calculator] [data-row]')) {
    const boxes = [...each.querySelectorAll('input, select')];
    if (!boxes.some(box => box instanceof HTMLInputElement && box.type === 'text' && box.value.trim())) continue;
    for (const box of boxes) {
      if (!(box instanceof HTMLSelectElement || box instanceof HTMLInputElement) || box.disabled || !box.value) continue;
      if (box instanceof HTMLSelectElement ? !box.name.endsWith('_unit') : box.type === 'radio' && box.checked) fields[box.name] = box.value;
    }
  }
  return fields;
}

/** What an answer says. @param {HTMLElement | null} answer @param {string} part @returns {Fields} */
export function shownIn(answer, part) {
  const fields = { ...cardsShown(answer, part), ...languageShown(part) };
  for (const [name, selector] of [['shown', '.headline .number'], ['shown_verdict', '.verdict']]) {
    const words = answer?.querySelector(selector ?? '')?.textContent?.replace(/\s+/g, ' ').trim();
    if (name && words) fields[part + name] = words.slice(0, 400);
  }
  return fields;
}

/**
 * What a script knows and nobody types.
 * @param {string} kind @param {Fields} fields @param {Fields} old @param {string} saved when the revision before was saved @param {Date} now
 */
async function addKept(kind, fields, old, saved, now) {
  const { job, copy, correct, said } = openedFor();
  const at = now.toISOString();
  if (kind === 'weld-entry') {
    fields.welded_at = correct ? old.welded_at || saved : at;
    const used = new URLSearchParams(document.querySelector('[data-results]')?.getAttribute('data-results') ?? '');
    for (const [name, result] of [['used_wire', 'wire_used'], ['used_gas', 'gas_used_volume']]) {
      const amount = used.get(result ?? '');
      if (name && amount) fields[name] = amount;
    }
    if (job && !correct) {
      const of = (await row(job))?.fields ?? {};
      fields.job_id = job;
      for (const name of ['spool', 'cylinder', 'demo']) if (of[name]) fields[name] = of[name];
    }
    Object.assign(fields, chosenStock());
  } else if (kind === 'stock') {
    // Another name for a spool is no new count, nor is another number for the old one: a count says that it is one.
    fields.counted_at = correct && old.counted_at && !said.has('count') ? old.counted_at : at;
    Object.assign(fields, countedStock(document.getElementById('answer')));
  } else if (kind === 'job') {
    Object.assign(fields, chosenStock());
    fields.status = old.status || 'open';
    if (copy && !correct) {
      const from = (await row(copy))?.fields ?? {};
      fields.copied_from = copy;
      // Its price starts from the other's lines, not from what was paid there.
      for (const [name, text] of Object.entries(from)) if (name.startsWith('price.') && !NOT_COPIED.test(name)) fields[name] = text;
    }
  }
}

/** What of a price is of one job alone, and what its answer said. */
const NOT_COPIED = /^price\.(shown|said|paid|deposit$|wire_mass|gas_volume|arc_time)/;

/** Once, after the first record: whether the browser promises not to clear it. */
async function askToPersist() {
  if (recall(ASKED_TO_PERSIST) || !navigator.storage?.persist) return;
  keep(ASKED_TO_PERSIST, 'yes');
  await keepFact('persist', await navigator.storage.persist().catch(() => false));
}
