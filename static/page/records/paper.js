// @ts-check
// A job on paper: the sheet, the quote, the invoice, all from what its record keeps, built as text alone.
import { listsOf, stand, tickedAt } from './job-ticks.js';
import { shownTime } from './log-page.js';
import { changedSinceSigned, dayOf, signedOn } from './paper-facts.js';
import { drawn, strokesOf } from './signature.js';
import { amountOf, shownAmount } from './stock.js';
import { cardsOf } from './typed.js';
import { begunFor, watchTime } from './work-site.js';

/** @typedef {import('./database.js').Row} Row */
/** @typedef {'sheet' | 'quote' | 'invoice'} Kind */
/**
 * @typedef {{ row: Row, all: import('./revision.js').Revision[], entries: Row[], sketches: Element[], photos: string[], letterhead: string,
 *   now: Date, word: (id: string) => string, label: (id: string) => string | undefined, factors: DOMStringMap, foot: string }} Job
 *   `photos` are addresses of the page's own; `word` gives a sentence of the paper, `label` what a field or an option is called, if it has a name here
 */
/** @typedef {string | Node} Part */

/** Told elsewhere on the paper, or of no use on it. */
const ELSEWHERE = ['title', 'customer', 'place', 'wps', 'welder', 'qualification', 'qualified_until', 'not_done', 'spool_left', 'gas_left', 'units'];
const OF_JOINT = ['name', 'joint', 'thickness', 'weld_length', 'position', 'leg'];
const OF_ENTRY = ['welded_at', 'joint', 'weld_pass', 'voltage', 'current', 'travel_speed', 'shown', 'preheat_measured', 'visual_result', 'shown_verdict'];
const OF_PRICE = 'price';
const STRONG = ['total', 'due'];
/** What a quote does not speak of. */
const AFTERWARDS = ['paid', 'due'];

/** @param {string} name @param {Part[]} parts @param {string} [style] */
export function element(name, parts, style = '') {
  const made = document.createElement(name);
  if (style) made.className = style;
  made.append(...parts);
  return made;
}

/** @param {string} heading @param {string[]} columns @param {string[][]} rows @param {(row: string[]) => boolean} [isStrong] */
function table(heading, columns, rows, isStrong = () => false) {
  const made = document.createElement('table');
  made.append(element('caption', [heading]));
  if (columns.some(Boolean)) {
    const titles = element('tr', columns.map(each => element('th', [each])));
    for (const cell of titles.children) cell.setAttribute('scope', 'col');
    made.append(element('thead', [titles]));
  }
  const lines = rows.map(row => {
    const cells = row.map((text, place) => element(columns.some(Boolean) || place ? 'td' : 'th', [text]));
    if (!columns.some(Boolean)) cells[0]?.setAttribute('scope', 'row');
    return element('tr', cells, isStrong(row) ? 'strong' : '');
  });
  made.append(element('tbody', lines));
  const place = element('div', [made], columns.some(Boolean) ? 'table' : 'table pairs');
  if (!columns.some(Boolean)) return place;
  // On a narrow screen it scrolls sideways: a keyboard has to reach it.
  for (const [name, text] of [['role', 'region'], ['tabindex', '0'], ['aria-label', heading]]) place.setAttribute(name ?? '', text ?? '');
  return place;
}

/** @param {Job} job @param {Kind} kind @returns {HTMLElement[]} what the paper says, from top to bottom */
export function paperOf(job, kind) {
  const parts = kind === 'sheet' ? sheet(job) : priced(job, kind);
  return [head(job, kind), ...parts.filter(each => each !== undefined), element('p', [job.foot], 'foot')];
}

/** @param {Job} job @param {Kind} kind */
function head(job, kind) {
  const { fields } = job.row;
  const about = [fields.customer, fields.place].filter(Boolean).map(each => element('p', [each ?? '']));
  const mark = fields.demo ? [element('p', [job.word('demo')], 'mark')] : [];
  const from = job.letterhead ? [element('p', [job.letterhead], 'letterhead')] : [];
  const day = element('p', [`${job.word('date')} ${shownDay(dateOf(job))}`]);
  return element('header', [...mark, ...from, element('h2', [`${job.word(kind)}: ${fields.title ?? ''}`]), ...about, day]);
}

/** When the work was closed, or else today. @param {Job} job */
const dateOf = job => new Date(job.row.fields.closed_at || job.now);

/** @param {Date} day */
const shownDay = day => new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: 'long' }).format(day);

/** @param {Job} job @returns {(HTMLElement | undefined)[]} */
function sheet(job) {
  const { word } = job;
  const { fields } = job.row;
  const cards = cardsOf(fields).filter(each => !each.name.startsWith(OF_PRICE));
  const told = call(job);
  return [
    joints(job),
    job.sketches.length ? element('div', job.sketches, 'sketches') : undefined,
    element('div', [...(told ? [told] : []), ...cards.map(card => table(card.heading, [], card.lines.map(([, label, value]) => [label, value])))], 'cards'),
    ...ticked(job),
    watched(job),
    welds(job),
    photos(job),
    element('section', [element('h3', [word('not-done')]), element('p', [fields.not_done || word('not-done.none')])]),
    procedure(job),
    signed(job, 'sheet'),
  ];
}

/** @param {Job} job @param {Kind} kind @returns {(HTMLElement | undefined)[]} */
function priced(job, kind) {
  const { word } = job;
  const { fields } = job.row;
  const cards = cardsOf(fields).filter(each => each.name.startsWith(OF_PRICE));
  const lines = cards.flatMap(card => card.lines).filter(([key]) => kind === 'invoice' || !AFTERWARDS.includes(key));
  const sums = lines.filter(([key]) => key !== 'exclusions');
  const strong = new Set(sums.filter(([key]) => STRONG.includes(key)).map(([, label]) => label));
  const excluded = lines.filter(([key]) => key === 'exclusions');
  return [
    fields.broken ? element('p', [fields.broken]) : undefined,
    lines.length
      ? element('div', [table(cards[0]?.heading ?? '', [], sums.map(([, label, value]) => [label, value]), row => strong.has(row[0] ?? ''))], 'money')
      : element('p', [word('no-price')]),
    ...excluded.map(([, label, value]) => element('section', [element('h3', [label]), element('p', [value])])),
    kind === 'quote' ? element('p', [word('quote.note')]) : undefined,
    kind === 'quote' ? signed(job, kind) : undefined,
  ];
}

/** What was told on the telephone. @param {Job} job */
function call({ row: { fields }, label, word }) {
  const rows = Object.entries(fields).flatMap(([name, text]) => {
    const called = label(`job.${name}`);
    return called && text && !ELSEWHERE.includes(name) ? [[called, label(`job.${name}.${text}`) ?? text]] : [];
  });
  return rows.length ? table(word('call'), [], rows) : undefined;
}

/** @param {Job} job */
function joints({ row: { fields }, label, word }) {
  const numbers = [...new Set(Object.keys(fields).flatMap(name => /^joints-(\d+)-/.exec(name)?.[1] ?? []))].sort();
  const rows = numbers.map(number =>
    OF_JOINT.map(each => {
      const text = fields[`joints-${number}-${each}`] ?? '';
      return label(`job.${each}.${text}`) ?? text;
    }),
  );
  return rows.length ? table(word('joints'), OF_JOINT.map(each => label(`job.${each}`) ?? each), rows) : undefined;
}

/** What was ticked of each list, and what was not. @param {Job} job */
function ticked({ row: { fields }, word, label }) {
  const lists = listsOf(fields);
  const called = (/** @type {string} */ name) => label(`ticks.${name}`) ?? name;
  const missing = ['make-safe', 'hot-work'].filter(name => !lists.some(each => each.name === name));
  const none = missing.length ? [element('p', [word('ticks.none').replace('#', () => missing.map(called).join(', '))])] : [];
  const tables = lists.map(list => {
    const { done, all } = stand(list);
    const heading = `${called(list.name)}: ${word('ticks.ticked').replace('#', String(done)).replace('#', String(all))}`;
    return table(heading, [], list.items.map(([, what, at]) => [what, at ? tickedAt(at) : word('ticks.not')]), row => row[1] === word('ticks.not'));
  });
  return [element('section', [...tables, ...none, element('p', [word('ticks.note')])], 'ticked')];
}

/** Until when the fire watch was to last. @param {Job} job */
function watched({ row, entries, word }) {
  const watch = watchTime(row.fields, entries[0]?.at ?? '', undefined, begunFor(row.id));
  if (!watch) return undefined;
  const [start, end] = [watch.start, watch.end].map(each => shownTime(new Date(each).toISOString()));
  return element('p', [word('watch').replace('#', () => end ?? '').replace('#', () => start ?? '')]);
}

/** @param {Job} job */
function photos({ row: { fields }, photos: found, word }) {
  const count = (fields.photos ?? '').split(' ').filter(Boolean).length;
  if (!count) return undefined;
  const images = found.map((address, at) => {
    const image = document.createElement('img');
    image.src = address;
    image.alt = word('photos.photo').replace('#', String(at + 1));
    return image;
  });
  const elsewhere = count > found.length ? [element('p', [word('photos.elsewhere').replace('#', String(count - found.length))])] : [];
  return element('section', [element('h3', [word('photos')]), element('div', images, 'photos'), ...elsewhere]);
}

/** @param {Job} job */
function welds({ entries, row, label, word, factors }) {
  if (!entries.length) return element('section', [element('h3', [word('welds')]), element('p', [word('welds.none')])]);
  const asked = OF_ENTRY.filter(name => entries.some(each => each.fields[name]));
  const rows = [...entries].reverse().map(each =>
    asked.map(name => {
      const text = each.fields[name] ?? '';
      return name === 'welded_at' ? shownTime(text) : (label(`weld-entry.${name}.${text}`) ?? text);
    }),
  );
  const made = table(word('welds'), asked.map(name => label(`weld-entry.${name}`) ?? name), rows);
  /** @param {string} field @param {'kg' | 'L'} unit */
  const sum = (field, unit) => {
    const known = entries.flatMap(each => amountOf(each.fields[field], unit) ?? []);
    return known.length ? [shownAmount(known.reduce((one, other) => one + other, 0), unit, row.fields, factors)] : [];
  };
  const used = [...sum('used_wire', 'kg').map(each => `${word('used.wire')} ${each}`), ...sum('used_gas', 'L').map(each => `${word('used.gas')} ${each}`)];
  return element('section', [made, ...(used.length ? [element('p', [used.join(' \u00b7 ')])] : [])]);
}

/** The procedure, who welded, and whether the qualification had run out. @param {Job} job */
function procedure(job) {
  const { fields } = job.row;
  const rows = ['wps', 'welder', 'qualification', 'qualified_until'].map(name => [job.label(`job.${name}`) ?? name, fields[name] || '\u2013']);
  const until = fields.qualified_until;
  const last = dayOf(until);
  const isOver = last !== undefined && last < localDay(dateOf(job));
  const warning = isOver ? job.word('expired').replace('#', shownDay(new Date(`${last}T12:00:00`))) : until && !last ? job.word('no-date') : '';
  return element('section', [table(job.word('procedure'), [], rows), ...(warning ? [element('p', [warning], 'warning')] : [])]);
}

/** @param {Date} time */
const localDay = time => `${time.getFullYear()}-${String(time.getMonth() + 1).padStart(2, '0')}-${String(time.getDate()).padStart(2, '0')}`;

/** The customer's signature on this paper as it was drawn or typed, or lines for a pen. @param {Job} job @param {Kind} kind */
function signed(job, kind) {
  const { word } = job;
  const { fields } = job.row;
  const mine = signedOn(kind);
  const at = fields[`${mine}signed_at`];
  const parts = [element('h3', [word(`sign.${kind}`)])];
  if (at) {
    const strokes = strokesOf(fields[`${mine}signature`]);
    if (strokes.length) parts.push(/** @type {any} */ (drawn(strokes, word('signature'))));
    parts.push(element('p', [word('signed').replace('#', [fields[`${mine}signed_by`], shownTime(at)].filter(Boolean).join(', '))]));
    const changed = changedSinceSigned(job.all, fields, mine).map(name => changedName(job, name));
    if (changed.length) parts.push(element('p', [word('changed').replace('#', [...new Set(changed)].join(', '))], 'warning'));
  } else {
    parts.push(...['customer', 'name', 'day'].map(each => element('p', [word(`line.${each}`)], 'line')));
  }
  if (kind === 'sheet') parts.push(element('p', [word('line.welder')], 'line'));
  return element('section', parts, 'sign-off');
}

/** @param {Job} job @param {string} name */
function changedName(job, name) {
  const ofSite = job.label(name.startsWith('watch.') ? 'watch' : name);
  if (/^(ticks|watch)\./.test(name)) return ofSite ?? name;
  const [card] = name.startsWith('card_') ? cardsOf({ [name]: job.row.fields[name] ?? '' }) : [];
  return card?.heading || (job.label(`job.${name.replace(/^joints-\d+-/, '')}`) ?? name);
}
