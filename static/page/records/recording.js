// @ts-check
// Keeping what was typed as a record: the button under an answer of a calculator that is one.
import { keep, recall } from '../memory.js';
import { keepFact, keepPhoto, revisionsOf, save } from './database.js';
import { SCHEMA, bodyOf, bodyText } from './revision.js';
import { exchangeNow } from './sending.js';

const ASKED_TO_PERSIST = 'asked-to-persist';
const LONGEST_WAIT_MS = 5000;

/** What was kept last, and what was said of it: the answer may be drawn anew right after. */
let last = { query: '', words: '' };

/** Which entry the page corrects, after the #: it never leaves the phone. @returns {{ id: string, rev: string } | null} */
function corrected() {
  const found = /^#correct=([0-9a-f-]{36})&rev=(\d+-[0-9a-f]{32})$/.exec(document.documentElement.dataset.opened ?? '');
  return found ? { id: found[1] ?? '', rev: found[2] ?? '' } : null;
}

const query = () => document.querySelector('#answer a.share')?.getAttribute('href')?.split('?')[1] ?? '';

export function offerRecord() {
  const offer = document.querySelector('[data-record]');
  const button = offer?.querySelector('[data-record-save]');
  const said = offer?.querySelector('[data-record-said]');
  if (!(offer instanceof HTMLElement && button instanceof HTMLButtonElement && said instanceof HTMLElement)) return;
  if (offer.dataset.offered) return;
  offer.dataset.offered = 'yes';
  offer.hidden = false;
  if (corrected()) button.textContent = button.dataset.corrects ?? '';
  if (query() === last.query) {
    button.disabled = true;
    said.textContent = last.words;
  }
  button.addEventListener('click', async () => {
    button.disabled = true;
    await answered();
    // The answer region was drawn anew: what was typed last counts, and if it is no answer, nothing is kept.
    const now = document.querySelector('[data-record]');
    if (!(now instanceof HTMLElement)) return;
    try {
      const asked = query();
      const versions = await keepRecord(now);
      last = { query: asked, words: (versions > 1 ? said.dataset.versions : said.dataset.saved) ?? '' };
      document.documentElement.dataset.opened = ''; // a correction is one; what comes next is an entry of its own
      tell(last.words, true);
      exchangeNow();
    } catch (error) {
      const full = error instanceof Error && error.name === 'QuotaExceededError';
      tell((full ? said.dataset.full : said.dataset.refused) ?? '', false);
    }
  });
}

/** @param {string} words @param {boolean} kept */
function tell(words, kept) {
  const said = document.querySelector('[data-record-said]');
  const button = document.querySelector('[data-record-save]');
  if (said) said.textContent = words;
  if (button instanceof HTMLButtonElement) button.disabled = kept;
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

/** Keep what the answer on this page is about; return how many versions of it stand beside each other. @param {HTMLElement} offer */
async function keepRecord(offer) {
  const typed = new URLSearchParams(query());
  const correcting = corrected();
  const now = new Date();
  /** @type {Record<string, string>} */
  const fields = Object.fromEntries(typed);
  const isEntry = offer.dataset.record === 'weld-entry';
  if (isEntry) fields.welded_at = now.toISOString();
  const before = correcting && (await revisionsOf(correcting.id)).find(each => each.rev === correcting.rev);
  const old = before && bodyOf(before);
  if (old) {
    if (isEntry) fields.welded_at = old.fields.welded_at ?? before.saved_at;
    if (old.fields.photos) fields.photos = old.fields.photos;
  }
  for (const [name, selector] of [['shown', '.headline .number'], ['shown_verdict', '.verdict']]) {
    const words = document.querySelector(`#answer ${selector}`)?.textContent?.replace(/\s+/g, ' ').trim();
    if (name && words) fields[name] = words.slice(0, 400);
  }
  Object.assign(fields, cardsShown());
  const photo = offer.querySelector('input[type=file]');
  const file = photo instanceof HTMLInputElement ? photo.files?.[0] : undefined;
  if (file) {
    const name = crypto.randomUUID();
    await keepPhoto(name, file);
    fields.photos = [...(fields.photos ?? '').split(' '), name].join(' ').trim();
  }
  const build = document.querySelector('.build code')?.textContent ?? '';
  const body = bodyText({ kind: offer.dataset.record ?? '', schema: SCHEMA, build, fields });
  const { versions } = await save({ id: correcting?.id, parents: correcting ? [correcting.rev] : [], body, at: now });
  await askToPersist();
  return versions;
}

/**
 * The cards of the answer as fields: what a closed record shows for good, and what a later answer is held against.
 * @returns {Record<string, string>} card_<name> -> JSON of [heading, [key, label, value], ...]
 */
export function cardsShown(root = document.getElementById('answer')) {
  const text = (/** @type {Element | null | undefined} */ each) => each?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
  const cards = [...(root?.querySelectorAll('[data-card]') ?? [])].map(card => {
    const lines = [...card.querySelectorAll('[data-line]')].map(line => [line.getAttribute('data-line'), text(line.querySelector('dt')), text(line.querySelector('dd'))]);
    return [`card_${card.getAttribute('data-card')}`, JSON.stringify([text(card.querySelector('h2')), ...lines])];
  });
  return Object.fromEntries(cards);
}

/** Once, after the first record: whether the browser promises not to clear it. */
async function askToPersist() {
  if (recall(ASKED_TO_PERSIST) || !navigator.storage?.persist) return;
  keep(ASKED_TO_PERSIST, 'yes');
  await keepFact('persist', await navigator.storage.persist().catch(() => false));
}

