// @ts-check
// What stands in the fields of a record: what was typed, what scripts keep beside it, and the cards of its answer.

/** @typedef {Record<string, string>} Fields */
/** @typedef {{ name: string, heading: string, lines: [string, string, string][] }} Card lines are [key, label, value] */
/** @typedef {{ card: string, label: string, before: string, now: string }} Change */

/** Not typed into a form: kept beside it by scripts. */
const BESIDE = [
  'shown', 'shown_verdict', 'shown_language', 'photos', 'welded_at', 'counted_at', 'left', 'gas_words', 'job_id', 'spool', 'cylinder', 'used_wire', 'used_gas',
  'status', 'closed_at', 'signature', 'signed_by', 'signed_at', 'demo', 'copied_from',
  'said', // what the job put to its price, for telling what was typed over it
];
const LONGEST_TEXT = 4000; // characters of one field, on the wire
const LONGEST_VALUE = 400;

/** What was typed, of the record's own form or of a part of it (`price.`), without the part's name. @param {Fields} fields @param {string} [part] @returns {Fields} */
export function typedOf(fields, part = '') {
  const names = Object.keys(fields).filter(name =>
    part ? name.startsWith(part) && !BESIDE.includes(name.slice(part.length)) : !/^card_|[.]/.test(name) && !BESIDE.includes(name),
  );
  return Object.fromEntries(names.map(name => [name.slice(part.length), fields[name] ?? '']));
}

/** Which part of a record a calculator asks for: '' for the record's own form, `price.` for the price of a job. @param {string} calculator @param {string} kind */
export const partOf = (calculator, kind) => (calculator.startsWith(`${kind}-`) ? `${calculator.slice(kind.length + 1)}.` : '');

/** Whether a field is of the answer that was shown for a part, and goes when that part is answered anew. @param {string} name @param {string} part */
export const isShown = (name, part) =>
  part
    ? name.startsWith(`card_${part.slice(0, -1)}`) || [`${part}shown`, `${part}shown_verdict`, `${part}shown_language`].includes(name)
    : ['shown', 'shown_verdict', 'shown_language', 'used_wire', 'used_gas'].includes(name) || (name.startsWith('card_') && !name.startsWith('card_price'));

const FIRST_LANGUAGE = 'en'; // of records from before there was another

/** The language that an answer is kept in. @param {Fields} fields @param {string} [part] */
export const languageOf = (fields, part = '') => fields[`${part}shown_language`] || FIRST_LANGUAGE;

/** The field that says which language an answer is kept in. @param {string} [part] @returns {Fields} */
export function languageShown(part = '') {
  const { lang } = document.documentElement;
  return lang === FIRST_LANGUAGE ? {} : { [`${part}shown_language`]: lang };
}

/** @param {Element | null | undefined} each */
const textOf = each => (each?.textContent?.replace(/\s+/g, ' ').trim() ?? '').slice(0, LONGEST_VALUE);

/**
 * The cards of an answer as fields: what a closed record shows for good, and what a later answer is held against.
 * @param {ParentNode | null} root @param {string} [part] @returns {Fields} card_<name> -> JSON of [heading, [key, label, value], ...];
 *   what does not fit into one field goes on in card_<name>~1
 */
export function cardsShown(root, part = '') {
  /** @type {Fields} */
  const fields = {};
  for (const card of root?.querySelectorAll('[data-card]') ?? []) {
    const own = card.getAttribute('data-card') ?? '';
    const word = part.slice(0, -1);
    const name = `card_${own.startsWith(word) ? own : `${word}-${own}`}`;
    const lines = [...card.querySelectorAll('[data-line]')].map(line => [line.getAttribute('data-line'), textOf(line.querySelector('dt')), textOf(line.querySelector('dd'))]);
    const heading = textOf(card.querySelector('h2'));
    let kept = [heading, ...lines];
    for (let more = 0; kept.length; more++) {
      let count = kept.length;
      while (JSON.stringify(kept.slice(0, count)).length > LONGEST_TEXT && count > 2) count--;
      fields[more ? `${name}~${more}` : name] = JSON.stringify(kept.slice(0, count));
      kept = count < kept.length ? [heading, ...kept.slice(count)] : [];
    }
  }
  return fields;
}

/** The cards that a record keeps, in the order they were shown in; whatever is none is left out. @param {Fields} fields @returns {Card[]} */
export function cardsOf(fields) {
  /** @type {Map<string, Card>} */
  const cards = new Map();
  for (const [field, text] of Object.entries(fields)) {
    if (!field.startsWith('card_')) continue;
    const name = field.slice('card_'.length).replace(/~\d+$/, '');
    const [heading, ...lines] = asList(text);
    const card = cards.get(name) ?? { name, heading: String(heading ?? ''), lines: [] };
    for (const line of lines) if (Array.isArray(line) && line.length === 3) card.lines.push(/** @type {[string, string, string]} */ (line.map(String)));
    cards.set(name, card);
  }
  return [...cards.values()];
}

/** @param {string} text @returns {unknown[]} */
function asList(text) {
  try {
    const list = JSON.parse(text);
    return Array.isArray(list) ? list : [];
  } catch {
    return [];
  }
}

/** What the cards of an answer say that the kept ones did not, line by line; '' where one of them has no such line. @param {Fields} before @param {Fields} now @returns {Change[]} */
export function changes(before, now) {
  const old = byLine(before);
  const fresh = byLine(now);
  return [...new Set([...fresh.keys(), ...old.keys()])].flatMap(key => {
    const [one, other] = [old.get(key), fresh.get(key)];
    const [was, is] = [one?.value ?? '', other?.value ?? ''];
    return was === is ? [] : [{ card: (other ?? one)?.card ?? '', label: (other ?? one)?.label ?? '', before: was, now: is }];
  });
}

/** @param {Fields} fields */
const byLine = fields =>
  new Map(cardsOf(fields).flatMap(({ name, heading, lines }) => lines.map(([key, label, value]) => [`${name} ${key}`, { card: heading, label, value }])));
