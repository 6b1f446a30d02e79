// @ts-check
// One job from top to bottom: as it was kept at once, and as it works out now; what was welded for it; its versions.
import { keepJobAtHand } from '../memory.js';
import { whenHashChanges } from '../opened.js';
import { page, revisionsOf, row, save, waitingAmong } from './database.js';
import { isForEyes, labelOf, readable, showPhotos, version } from './entry-page.js';
import { againAddress, changeAddress, stateOf } from './jobs-page.js';
import { repeatAddress, shownTime } from './log-page.js';
import { changeItem } from './recording.js';
import { SCHEMA, bodyOf, bodyText, heads } from './revision.js';
import { cannotOpen, exchangeNow } from './sending.js';
import { cardsOf, cardsShown, changes, isShown, languageOf, typedOf } from './typed.js';
import { FireWatch, paintTicks, watchFields, watchPhotos } from './work-site.js';

/** @typedef {import('./revision.js').Revision} Revision */
/** @typedef {import('./database.js').Row} Row */
/** @typedef {import('./typed.js').Fields} Fields */

const A_PAGE = 30;
const PRICE = 'price.';
const idShown = () => location.hash.slice(1);

/** @param {Promise<Row | undefined>} [early] what was asked for before the frame was there */
export function showWork(early) {
  const shown = document.querySelector('[data-work]');
  if (shown instanceof HTMLElement) new Work(shown).watch(early);
}

class Work {
  /** @param {HTMLElement} shown */
  constructor(shown) {
    this.shown = shown;
    this.turn = 0;
    /** The cards as they work out now, once they do. @type {Fields} */
    this.live = {};
    /** The parts of the answer's links that carry on to the log and to the price. @type {Record<string, URLSearchParams>} */
    this.onward = {};
    /** @type {Row | undefined} */
    this.last = undefined;
    /** What stood before the last change. @type {Fields} */
    this.before = {};
    this.fire = new FireWatch(this.part('[data-fire-watch]'), () => this.draw());
  }

  /** @template {Element} T @param {string} selector @returns {T} */
  part(selector) {
    return /** @type {T} */ (this.shown.querySelector(selector));
  }

  /** @param {Promise<Row | undefined>} [early] */
  watch(early) {
    whenHashChanges(this.shown, () => this.show());
    /** @param {string} name @param {() => Promise<unknown>} work */
    const on = (name, work) => this.part(`[data-${name}]`).addEventListener('click', () => work().catch(cannotOpen));
    on('close', () => this.change(fields => ({ ...without(fields, this.live), ...this.live, ...watchFields(this.fire.time()), status: 'closed', closed_at: new Date().toISOString() })));
    on('undo-change', () => this.change(fields => asBefore(fields, this.before)));
    on('reopen', () => this.change(fields => ({ ...fields, status: 'open', closed_at: '' })));
    on('delete', () => this.change(fields => fields, true));
    on('undo-delete', () => this.change(fields => fields, false));
    on('more', () => this.addEntries());
    on('watch-now', () => this.fire.now());
    watchPhotos(this.part('[data-photographing]'), idShown, () => this.draw());
    this.part('[data-history]').addEventListener('toggle', () => this.showHistory().catch(cannotOpen));
    this.show(early);
  }

  /** Follow all versions with one more. @param {(fields: Fields) => Fields} changed @param {boolean} [deleted] */
  async change(changed, deleted) {
    const all = await revisionsOf(idShown());
    const found = heads(all);
    const leading = found[0];
    const body = leading && bodyOf(leading);
    if (!leading || !body) return;
    const fields = changed(body.fields);
    const text = fields === body.fields ? leading.body : bodyText({ ...body, schema: SCHEMA, build: buildShown(), fields });
    // Deleting or bringing back is about all that there is; anything else is about the version that stands first.
    const parents = deleted === undefined ? [leading.rev] : found.map(each => each.rev);
    await save({ id: leading.id, parents, body: text, deleted: deleted ?? false });
    await this.draw();
    exchangeNow();
  }

  /** @param {Promise<Row | undefined>} [early] */
  show(early) {
    this.draw(early).catch(cannotOpen);
  }

  /** @param {Promise<Row | undefined>} [early] */
  async draw(early) {
    const turn = ++this.turn;
    const id = idShown();
    const known = await (early ?? row(id));
    if (turn !== this.turn || !this.shown.isConnected) return;
    this.shown.hidden = false;
    this.live = {};
    this.onward = {};
    this.last = undefined;
    this.paint(known, id);
    this.fire.start(known);
    this.part('[data-ticks]').toggleAttribute('hidden', !known);
    if (!known) return;
    this.paintLists(known);
    this.part('[data-entries]').replaceChildren();
    const asking = known.deleted || known.newer || known.fields.status === 'closed' ? undefined : this.workOut(known, turn);
    const all = await revisionsOf(id);
    if (turn !== this.turn) return;
    this.showVersions(all);
    await this.addEntries(true);
    const [waits] = await waitingAmong([known]);
    const state = /** @type {HTMLElement} */ (this.part('.state'));
    if (turn === this.turn) state.textContent = stateOf(state, known, waits);
    await showPhotos(this.part('[data-photos]'), known.fields.photos ?? '', this.shown.dataset);
    await asking;
  }

  /** As it was kept. @param {Row | undefined} known @param {string} id */
  paint(known, id) {
    const { shown } = this;
    const fields = known?.fields ?? {};
    const isOpen = Boolean(known && !known.deleted && !known.newer);
    const isClosed = fields.status === 'closed';
    /** @param {string} names @param {boolean} wanted */
    const only = (names, wanted) => names.split(' ').forEach(name => this.part(`[data-${name}]`).toggleAttribute('hidden', !wanted));
    only('change price close', isOpen && !isClosed);
    only('on-paper again', isOpen);
    only('reopen', isOpen && isClosed);
    only('delete', Boolean(known && !known.deleted));
    only('undo-delete', Boolean(known?.deleted));
    only('passes photographing', isOpen && !isClosed);
    only('different two moved history undo-change', false);
    only('decides', true);
    // The demo's jobs are nobody's work, and it goes away without a trace.
    keepJobAtHand({ id, title: fields.title ?? '' }, isOpen && !isClosed && !fields.demo);
    const title = document.querySelector('[data-title]');
    if (title && fields.title) title.textContent = document.title = fields.title;
    /** @param {string} selector @param {string | undefined} words */
    const put = (selector, words) => (this.part(selector).textContent = words ?? '');
    put('[data-details]', known && [shownTime(known.at), fields.customer, fields.place, fields.broken].filter(Boolean).join(' \u00b7 '));
    put('[data-shown]', [fields.shown, fields.shown_verdict].filter(Boolean).join('. '));
    const closed = isClosed ? (shown.dataset.closed ?? '').replace('#', () => shownTime(fields.closed_at ?? '')) : shown.dataset.asking;
    put('[data-said]', !known ? shown.dataset.gone : known.deleted ? shown.dataset.deleted : known.newer ? shown.dataset.newer : closed);
    this.paintCards('[data-cards]', cardsOf(ofPart(fields, '')));
    this.paintCards('[data-price-cards]', cardsOf(ofPart(fields, PRICE)));
    this.part('[data-cards]').setAttribute('data-worked-out', isOpen && !isClosed ? 'no' : 'kept');
    if (known) this.setLinks(known);
  }

  /** @param {Row} known */
  paintLists(known) {
    const called = (/** @type {string} */ name) => labelOf(this.shown, `ticks.${name}`) ?? name;
    paintTicks(this.part('[data-ticks]'), known, called, this.part('[data-cards]'));
  }

  /** @param {string} selector @param {import('./typed.js').Card[]} cards */
  paintCards(selector, cards) {
    this.part(selector).replaceChildren(
      ...cards.map(({ name, heading, lines }) => {
        const card = element('section', '', 'card');
        card.dataset.card = name;
        const list = element('dl', '', 'results');
        for (const [key, label, value] of lines) {
          const line = element('div');
          line.dataset.line = key;
          line.append(element('dt', label), element('dd', value));
          list.append(line);
        }
        card.append(element('h2', heading), list);
        return card;
      }),
    );
  }

  /** @param {Row} known */
  setLinks(known) {
    /** @param {string} name @param {string} address */
    const lead = (name, address) => /** @type {HTMLAnchorElement} */ (this.part(`[data-${name}]`)).setAttribute('href', address);
    lead('change', changeAddress(known));
    lead('again', againAddress(known));
    lead('on-paper', `paper#${known.id}`);
    // What the job says now takes the place of what it said then, but of nothing that was typed over that.
    const price = typedOf(known.fields, PRICE);
    const then = new URLSearchParams(known.fields[`${PRICE}said`] ?? '');
    const said = this.onward['job-price'] ?? then;
    for (const [name, text] of said) if (!price[name] || price[name] === then.get(name)) price[name] = text;
    const query = new URLSearchParams(price).toString();
    lead('price', `job-price${query && `?${query}`}#job=${known.id}&said=${encodeURIComponent(said.toString())}`);
    const passes = /** @type {HTMLElement} */ (this.part('[data-passes]'));
    const places = jointsOf(known.fields);
    passes.replaceChildren(
      ...(places.length ? places : [0]).map(place => {
        const link = /** @type {HTMLAnchorElement} */ (element('a', '', 'action'));
        const name = known.fields[`joints-${place}-name`] || String(place);
        link.textContent = places.length > 1 ? (passes.dataset.passOf ?? '').replace('#', () => name) : (passes.dataset.pass ?? '');
        link.href = `weld-entry?${this.passOf(known.fields, place)}#job=${known.id}`;
        return link;
      }),
    );
  }

  /** What a pass of one of its joints starts with. @param {Fields} fields @param {number} place */
  passOf(fields, place) {
    const joint = (/** @type {string} */ name) => fields[`joints-${place}-${name}`] ?? '';
    const given = new URLSearchParams(this.onward['weld-entry'] ?? '');
    const known = {
      joint: joint('name') || (place ? `${labelOf(this.shown, 'joints') ?? ''} ${place}`.trim() : (fields.title ?? '')),
      job: fields.title,
      thickness: joint('thickness') === 'unknown' ? '' : joint('thickness'),
      wire_material: ['mild-steel', 'stainless', 'aluminum'].includes(fields.base_metal ?? '') ? fields.base_metal : '',
      wire_diameter: fields.wire_diameter,
      units: fields.units,
    };
    for (const [name, text] of Object.entries(known)) if (text && !given.has(name)) given.set(name, text.slice(0, 60));
    return given;
  }

  /** Ask the same questions again, and say what is not as it was kept. @param {Row} known @param {number} turn */
  async workOut(known, turn) {
    const address = `job?${new URLSearchParams(typedOf(known.fields))}`;
    const answer = await asked(address);
    if (turn !== this.turn) return;
    const cards = [...(answer?.querySelectorAll('[data-card]') ?? [])];
    const said = /** @type {HTMLElement} */ (this.part('[data-said]'));
    if (!answer || !cards.length) return void (said.textContent = this.shown.dataset.kept ?? '');
    for (const link of answer.querySelectorAll('.next a')) {
      const [name = '', query = ''] = (link.getAttribute('href') ?? '').split('?');
      this.onward[name] = new URLSearchParams(query);
    }
    this.live = cardsShown(answer);
    const kept = ofPart(known.fields, '');
    let different = Object.keys(kept).length ? await this.changesSince(known.fields, kept, this.live, address, '') : [];
    if (turn !== this.turn) return;
    for (const each of cards) {
      leadBack(each, known.id);
      leadToField(each, known);
    }
    const more = [...answer.querySelectorAll('.drawing, .cautions')];
    this.part('[data-cards]').replaceChildren(...cards, ...more);
    this.part('[data-decides]').toggleAttribute('hidden', more.some(each => each.matches('.cautions')));
    this.part('[data-shown]').textContent = [...answer.querySelectorAll('.headline .number, .headline .verdict')].map(textOf).join('. ');
    this.setLinks(known);
    this.paintLists(known);
    const fire = this.part('[data-cards]').querySelector('[data-line=fire_watch] a')?.getAttribute('href') ?? '';
    if (fire) {
      const watch = await asked(fire.split('#')[0] ?? '');
      if (turn !== this.turn) return;
      this.fire.take(watch);
    }
    if (Object.keys(typedOf(known.fields, PRICE)).length) {
      const priced = (this.part('[data-price]').getAttribute('href') ?? '').split('#')[0] ?? '';
      const price = await asked(priced);
      if (turn !== this.turn) return;
      const lines = [...(price?.querySelectorAll('[data-card]') ?? [])];
      if (price && lines.length) {
        const now = cardsShown(price, PRICE);
        different = [...different, ...(await this.changesSince(known.fields, ofPart(known.fields, PRICE), now, priced, PRICE))];
        if (turn !== this.turn) return;
        Object.assign(this.live, now);
        for (const each of lines) leadBack(each, known.id);
        this.part('[data-price-cards]').replaceChildren(...lines);
      }
    }
    said.textContent = '';
    this.part('[data-different]').toggleAttribute('hidden', different.length === 0);
    this.part('[data-different] ul').replaceChildren(...different.map(changeItem));
    this.part('[data-cards]').setAttribute('data-worked-out', 'yes');
  }

  /**
   * What is not as it was kept. What was kept in another language is held against the answer in that language; a phone
   * that does not have it cannot tell, and says nothing.
   * @param {Fields} fields @param {Fields} kept @param {Fields} now @param {string} address of the question @param {string} part
   */
  async changesSince(fields, kept, now, address, part) {
    const language = languageOf(fields, part);
    if (language === document.documentElement.lang) return changes(kept, now);
    const then = await asked(`${address}&lang=${language}`);
    const other = then ? cardsShown(then, part) : now;
    return JSON.stringify(other) === JSON.stringify(now) ? [] : changes(kept, other);
  }

  /** Two versions beside each other, and what the last change moved. @param {Revision[]} all */
  showVersions(all) {
    const found = heads(all);
    const leading = found[0];
    if (!leading) return;
    if (found.length > 1) this.showBeside(found);
    const before = all.find(each => leading.parents.includes(each.rev));
    const [old, now] = [before, leading].map(each => cardFields((each && bodyOf(each)?.fields) ?? {}));
    const moved = found.length === 1 && old && now && Object.keys(old).length ? changes(old, now) : [];
    this.part('[data-moved]').toggleAttribute('hidden', moved.length === 0);
    this.part('[data-moved] ul').replaceChildren(...moved.map(changeItem));
    this.before = (found.length === 1 && before && bodyOf(before)?.fields) || {};
    const fields = bodyOf(leading)?.fields;
    const canUndo = fields && !leading.deleted && fields.status !== 'closed' && Object.keys(typedOf(this.before)).length > 0;
    this.part('[data-undo-change]').toggleAttribute('hidden', !canUndo || sameTyped(fields, this.before));
    this.part('[data-history]').toggleAttribute('hidden', all.length < 2);
    if (this.part('[data-history]').hasAttribute('open')) this.showHistory().catch(cannotOpen);
  }

  /** @param {Revision[]} found */
  showBeside(found) {
    const { shown } = this;
    const beside = this.part('[data-two]');
    const bodies = found.map(each => (each.deleted ? {} : (bodyOf(each)?.fields ?? {})));
    const names = [...new Set(bodies.flatMap(each => Object.keys(each)))].filter(name => isForEyes(name) && new Set(bodies.map(each => each[name] ?? '')).size > 1);
    const headings = found.map((each, place) => `${(place ? shown.dataset.beside : shown.dataset.leading) ?? ''}, ${shownTime(each.saved_at)}`);
    const cells = headings.map(each => element('th', each));
    for (const each of cells) each.setAttribute('scope', 'col');
    beside.querySelector('thead tr')?.replaceChildren(element('td'), ...cells);
    beside.querySelector('tbody')?.replaceChildren(
      ...names.map(name => {
        const line = element('tr');
        const heading = element('th', labelOf(shown, name) ?? name);
        heading.setAttribute('scope', 'row');
        line.append(heading, ...bodies.map(each => element('td', each[name] ? readable(shown, name, each[name] ?? '') : '\u2013')));
        return line;
      }),
    );
    const takes = /** @type {HTMLElement} */ (this.part('[data-takes-one]'));
    takes.replaceChildren(
      ...found.map((each, place) => {
        const take = /** @type {HTMLButtonElement} */ (element('button', `${takes.dataset.take}: ${headings[place]}`));
        take.type = 'button';
        take.addEventListener('click', async () => {
          await save({ id: each.id, parents: found.map(one => one.rev), body: each.body, deleted: each.deleted });
          await this.draw();
          exchangeNow();
        });
        return take;
      }),
    );
    beside.toggleAttribute('hidden', false);
  }

  /** What stood before each change, once somebody wants to see it. */
  async showHistory() {
    const all = await revisionsOf(idShown());
    const found = heads(all);
    const older = all.filter(each => !found.includes(each)).reverse();
    this.part('div[data-versions]').replaceChildren(...older.map(each => version(this.shown, each, this.shown.dataset.older ?? '', found)));
  }

  /** The next page of what was welded for it. @param {boolean} [first] */
  async addEntries(first = false) {
    const turn = this.turn;
    const id = idShown();
    const rows = await page({ kind: 'weld-entry', by: 'job_id', value: id, most: A_PAGE, before: first ? undefined : this.last });
    if (turn !== this.turn) return;
    const pattern = /** @type {HTMLTemplateElement} */ (this.part('[data-entry-pattern]')).content.firstElementChild;
    const list = this.part('[data-entries]');
    list.append(...rows.map(each => entryLine(/** @type {HTMLElement} */ (pattern?.cloneNode(true)), each)));
    this.last = rows.at(-1) ?? this.last;
    this.part('[data-more]').toggleAttribute('hidden', rows.length < A_PAGE);
    this.part('[data-no-entries]').toggleAttribute('hidden', list.childElementCount > 0);
    if (first) this.fire.last(rows[0]?.at ?? '');
    if (first) await this.sayUsed(rows, turn);
  }

  /** The sum over all of its entries. @param {Row[]} rows the first page of them @param {number} turn */
  async sayUsed(rows, turn) {
    const all = [...rows];
    for (let more = rows; more.length === A_PAGE; all.push(...more)) {
      more = await page({ kind: 'weld-entry', by: 'job_id', value: idShown(), most: A_PAGE, before: all.at(-1) });
    }
    if (turn !== this.turn) return;
    const said = /** @type {HTMLElement} */ (this.part('[data-sum]'));
    const sums = ['used_wire', 'used_gas'].map(name => sumOf(all.map(each => each.fields[name] ?? ''))).filter(Boolean);
    const silent = all.filter(each => !each.fields.used_wire).length;
    const words = [sums.length ? said.dataset.used?.replace('#', () => sums.join(', ')) : '', all.length && silent ? said.dataset.usedUnknown?.replace('#', String(silent)) : ''];
    said.textContent = words.filter(Boolean).join(' ');
  }
}

/** Amounts of one unit, added up. @param {string[]} amounts like `0.214 kg` */
export function sumOf(amounts) {
  /** @type {Map<string, number>} */
  const sums = new Map();
  for (const each of amounts) {
    const [, number, unit] = /^([\d.]+(?:e-?\d+)?) (\S+)$/.exec(each) ?? [];
    if (number && unit && Number.isFinite(Number(number))) sums.set(unit, (sums.get(unit) ?? 0) + Number(number));
  }
  return [...sums].map(([unit, sum]) => `${Number(sum.toPrecision(3))}\u00a0${unit}`).join(' + ');
}

/** The numbers of the joints that a job names. @param {Fields} fields */
const jointsOf = fields => [1, 2, 3, 4].filter(place => Object.keys(fields).some(name => name.startsWith(`joints-${place}-`)));

/** The kept cards of one part of a job. @param {Fields} fields @param {string} part @returns {Fields} */
const ofPart = (fields, part) => Object.fromEntries(Object.entries(fields).filter(([name]) => name.startsWith('card_') && isShown(name, part)));

/** @param {Fields} fields @returns {Fields} */
const cardFields = fields => Object.fromEntries(Object.entries(fields).filter(([name]) => name.startsWith('card_')));

/** A record's fields without the cards that others take the place of. @param {Fields} fields @param {Fields} live */
function without(fields, live) {
  const parts = ['', PRICE].filter(part => Object.keys(ofPart(live, part)).length);
  return Object.fromEntries(Object.entries(fields).filter(([name]) => !(name.startsWith('card_') && parts.some(part => isShown(name, part)))));
}

/** @param {Fields} one @param {Fields} other */
const sameTyped = (one, other) =>
  [...new Set([one, other].flatMap(each => Object.keys(typedOf(each))))].every(name => (one[name] ?? '') === (other[name] ?? ''));

/** A job with what was typed before, and what it said to that; all else as it is now. @param {Fields} fields @param {Fields} before */
function asBefore(fields, before) {
  const isTyped = (/** @type {string} */ name) => isShown(name, '') || name in typedOf({ [name]: '' });
  const kept = (/** @type {Fields} */ from, /** @type {boolean} */ typed) => Object.entries(from).filter(([name]) => isTyped(name) === typed);
  return Object.fromEntries([...kept(fields, false), ...kept(before, true)]);
}

/** A line that waits for a field of the job, and leads nowhere else, leads there. @param {Element} card @param {Row} job */
function leadToField(card, job) {
  for (const line of card.querySelectorAll('.missing[data-line]')) {
    const value = line.querySelector('dd');
    if (!value || value.querySelector('a')) continue;
    const link = /** @type {HTMLAnchorElement} */ (element('a', textOf(value)));
    link.href = `${changeAddress(job)}&field=${line.getAttribute('data-line')}`;
    value.replaceChildren(link);
  }
}

/** The links of a card lead to the same question, from where what is changed can be taken back. @param {Element} card @param {string} id */
function leadBack(card, id) {
  for (const link of card.querySelectorAll('a[href]')) {
    const takes = (link.getAttribute('data-takes') ?? '').split(' ').filter(Boolean).join(',');
    link.setAttribute('href', `${link.getAttribute('href')}#job=${id}${takes && `&take=${takes}`}`);
  }
}

/** The answer region to a question, as the form would be given it; null if there is none to be had. @param {string} address */
export async function asked(address) {
  try {
    const response = await fetch(address, { headers: { 'HX-Request': 'true' } });
    if (!response.ok) return null;
    return new DOMParser().parseFromString(await response.text(), 'text/html').body;
  } catch {
    return null;
  }
}

const buildShown = () => document.querySelector('.build code')?.textContent ?? '';

/** @param {Element} each */
const textOf = each => each.textContent?.replace(/\s+/g, ' ').trim() ?? '';

/** @param {string} name @param {string} [text] @param {string} [style] */
function element(name, text = '', style = '') {
  const made = document.createElement(name);
  made.textContent = text;
  if (style) made.className = style;
  return made;
}

/** @param {HTMLElement} item @param {Row} found */
function entryLine(item, found) {
  const [what, shown, details] = ['.what', '.number', '.details'].map(each => /** @type {HTMLElement} */ (item.querySelector(each)));
  const [repeat, open] = ['[data-repeat]', 'a[data-open]'].map(each => /** @type {HTMLAnchorElement} */ (item.querySelector(each)));
  if (!(what && shown && details && repeat && open)) return item;
  const { fields } = found;
  what.textContent = [fields.joint, fields.weld_pass].filter(Boolean).join(', ') || found.id.slice(0, 8);
  shown.textContent = fields.shown ?? '';
  details.textContent = [shownTime(found.at), fields.shown_verdict, fields.voltage, fields.current, fields.used_wire].filter(Boolean).join(' \u00b7 ');
  repeat.href = repeatAddress(found);
  open.href = `entry#${found.id}`;
  return item;
}
