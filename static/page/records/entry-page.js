// @ts-check
// One entry with all its versions: what stands, what was before, what stands beside it; correct, delete, bring back.
import { whenHashChanges } from '../opened.js';
import { photo, revisionsOf, rowOf } from './database.js';
import { formAddress, repeatAddress, shownTime } from './log-page.js';
import { bodyOf, heads } from './revision.js';
import { save } from './database.js';
import { inWords, listOf } from './job-ticks.js';
import { cannotOpen, exchangeNow } from './sending.js';

/** @typedef {import('./revision.js').Revision} Revision */

export function showEntry() {
  const shown = document.querySelector('[data-entry]');
  if (!(shown instanceof HTMLElement)) return;
  whenHashChanges(shown, () => show(shown).catch(cannotOpen));
  const remove = /** @type {HTMLButtonElement} */ (shown.querySelector('[data-delete]'));
  const undo = /** @type {HTMLButtonElement} */ (shown.querySelector('[data-undo-delete]'));
  /** @param {boolean} deleted */
  const change = async deleted => {
    const all = await revisionsOf(location.hash.slice(1));
    const found = heads(all);
    const leading = found[0];
    if (!leading) return;
    await save({ id: leading.id, parents: found.map(each => each.rev), body: leading.body, deleted });
    await show(shown);
    exchangeNow();
  };
  remove.addEventListener('click', () => change(true).catch(cannotOpen));
  undo.addEventListener('click', () => change(false).catch(cannotOpen));
  show(shown).catch(cannotOpen);
}

/** @param {HTMLElement} shown */
async function show(shown) {
  const all = await revisionsOf(location.hash.slice(1));
  const said = /** @type {HTMLElement} */ (shown.querySelector('[data-said]'));
  shown.hidden = false;
  const list = /** @type {HTMLElement} */ (shown.querySelector('[data-versions]'));
  list.replaceChildren();
  const found = heads(all);
  const leading = found[0];
  for (const name of ['data-correct', 'data-repeat', 'data-delete']) {
    const part = shown.querySelector(`[${name}]`);
    if (part instanceof HTMLElement) part.hidden = !leading || leading.deleted || !bodyOf(leading);
  }
  const undo = shown.querySelector('[data-undo-delete]');
  if (undo instanceof HTMLElement) undo.hidden = !leading?.deleted;
  if (!leading) {
    said.textContent = shown.dataset.gone ?? '';
    return;
  }
  said.textContent = (leading.deleted ? shown.dataset.deleted : bodyOf(leading) ? '' : shown.dataset.newer) ?? '';
  const row = rowOf(all);
  const correct = shown.querySelector('[data-correct]');
  const repeat = shown.querySelector('[data-repeat]');
  if (correct instanceof HTMLAnchorElement) correct.href = formAddress(row, `#correct=${leading.id}&rev=${leading.rev}`);
  if (repeat instanceof HTMLAnchorElement) repeat.href = repeatAddress(row);
  const heading = new Map(found.map((each, place) => [each.rev, place ? shown.dataset.beside : shown.dataset.leading]));
  const order = [...found, ...all.filter(each => !heading.has(each.rev)).reverse()];
  list.append(...order.map(each => version(shown, each, heading.get(each.rev) ?? shown.dataset.older ?? '', found)));
  await showPhotos(/** @type {HTMLElement} */ (shown.querySelector('[data-photos]')), row.fields.photos ?? '', shown.dataset);
}

/** Kept for a script, and nothing that a reader could read. */
const NOT_FOR_EYES = ['photos', 'job_id', 'spool', 'cylinder', 'signature', 'copied_from', 'demo', 'units'];
const TIMES = ['welded_at', 'closed_at', 'counted_at', 'signed_at', 'watch.from', 'watch.until'];

/** What of a record is shown line by line. @param {string} name */
export const isForEyes = name => !NOT_FOR_EYES.includes(name) && !name.startsWith('card_');

/** A field's text as it is read: what was chosen in words, a time as a clock says it. @param {HTMLElement} shown @param {string} name @param {string} text */
export function readable(shown, name, text) {
  if (TIMES.includes(name)) return shownTime(text);
  const list = name.startsWith('ticks.') ? listOf({ [name]: text }, name.slice('ticks.'.length)) : undefined;
  return list ? inWords(list, shown.dataset) : (labelOf(shown, `${name}.${text}`) ?? text);
}

/** @param {HTMLElement} shown @param {Revision} revision @param {string} words @param {Revision[]} beside */
export function version(shown, revision, words, beside) {
  const pattern = /** @type {HTMLTemplateElement} */ (shown.querySelector('[data-pattern]'));
  const made = /** @type {HTMLElement} */ (/** @type {Element} */ (pattern.content.firstElementChild).cloneNode(true));
  const [heading, state, list, take] = ['h2', '.state', 'dl', '[data-take]'].map(each => /** @type {HTMLElement} */ (made.querySelector(each)));
  if (!heading || !state || !list || !take) return made;
  heading.textContent = words;
  const mark = bodyOf(revision)?.fields.demo ? `${shown.dataset.mark} \u00b7 ` : '';
  state.textContent = `${mark}${shownTime(revision.saved_at)} \u00b7 ${revision.rev.slice(0, 10)}`;
  for (const [name, text] of Object.entries(bodyOf(revision)?.fields ?? {})) {
    if (!isForEyes(name) || !text) continue;
    const term = document.createElement('dt');
    const value = document.createElement('dd');
    term.textContent = labelOf(shown, name) ?? name;
    value.textContent = readable(shown, name, text);
    list.append(term, value);
  }
  take.hidden = beside.length < 2 || !beside.includes(revision);
  take.addEventListener('click', async () => {
    try {
      await save({ id: revision.id, parents: beside.map(each => each.rev), body: revision.body });
      await show(shown);
      exchangeNow();
    } catch {
      cannotOpen();
    }
  });
  return made;
}

/** What a field, or what was chosen in it, is called; of a row, with its number. @param {HTMLElement} shown @param {string} name @returns {string | undefined} */
export function labelOf(shown, name) {
  const labels = shown.querySelector('[data-labels]');
  const root = labels instanceof HTMLTemplateElement ? labels.content : labels;
  const [, rows, number, rest] = /^([a-z_]+)-(\d+)-(.+)$/.exec(name) ?? [];
  const found = root?.querySelector(`[data-label="${CSS.escape(rest ? `${rows}-${rest}` : name)}"]`)?.textContent;
  return found && rest && !rest.includes('.') ? `${found} ${number}` : (found ?? undefined);
}

/** Photos stay on the phone that took them: another one says how many there are. @param {HTMLElement} place @param {string} names @param {DOMStringMap} words */
export async function showPhotos(place, names, words) {
  const asked = names.split(' ').filter(Boolean);
  const found = await Promise.all(asked.map(name => photo(name)));
  const images = found.flatMap((blob, at) => {
    if (!blob) return [];
    const image = document.createElement('img');
    image.src = URL.createObjectURL(blob);
    image.alt = (words.photo ?? '').replace('#', String(at + 1));
    return [image];
  });
  place.replaceChildren(...images);
  if (images.length === asked.length) return;
  const elsewhere = document.createElement('p');
  elsewhere.textContent = (words.elsewhere ?? '').replace('#', String(asked.length - images.length));
  place.append(elsewhere);
}
