// @ts-check
// What stays in this browser: last inputs, recent answers, running timers. A browser may refuse storage (private
// mode, full disk); the book then simply forgets.
import { RECORDS } from './opened.js';

/** @param {string} key @returns {string | null} */
export function recall(key) {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** @param {string} key @param {string | null} value null forgets */
export function keep(key, value) {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch {
    // refused: nothing to do, nothing to say
  }
}

/** @param {string} calculator */
export const inputsKey = calculator => `inputs:${calculator}`;
/** Where the address of the answer to these inputs is kept, once there is one. @param {string} calculator */
export const linkKey = calculator => `link:${calculator}`;

/** @typedef {{ calculator: string, href: string, label: string, number: string, given?: string, at: number }} RecentAnswer */
const RECENT = 'recent';
const MOST_RECENT = 12;

/** @returns {RecentAnswer[]} */
export function recentAnswers() {
  try {
    const list = JSON.parse(recall(RECENT) ?? '[]');
    return Array.isArray(list) ? list.filter(each => typeof each?.href === 'string' && typeof each?.number === 'string') : [];
  } catch {
    return [];
  }
}

/**
 * Put an answer on top of the recent ones. While somebody is still on the same page, the newer answer replaces the
 * one before it: twenty key presses are one question. A record is none: it is found again in its own list.
 * @param {RecentAnswer} answer @param {number} since when this page was opened
 */
export function keepRecent(answer, since) {
  const others = recentAnswers().filter(each => !(each.calculator === answer.calculator && each.at >= since) && each.href !== answer.href);
  const asked = [answer, ...others].filter(each => !RECORDS.includes(each.calculator));
  keep(RECENT, JSON.stringify(asked.slice(0, MOST_RECENT)));
}

export const forgetRecent = () => keep(RECENT, null);

/** The newest answer of each question, the newest first. @returns {RecentAnswer[]} */
export const lastOfEach = () => {
  const answers = recentAnswers();
  return answers.filter((each, index) => answers.findIndex(other => other.calculator === each.calculator) === index);
};

const PINNED = 'pinned';
/** A pinned question has its name there as well: the page may not list it. @typedef {{ calculator: string, title: string }} Pin */

/** @returns {Pin[]} in the order in which they were pinned */
export function pinned() {
  try {
    const list = JSON.parse(recall(PINNED) ?? '[]');
    return Array.isArray(list) ? list.filter(each => typeof each?.calculator === 'string' && typeof each?.title === 'string') : [];
  } catch {
    return [];
  }
}

/** Pin a question, or take it off if it was pinned. @param {Pin} pin */
export function turnPin(pin) {
  const others = pinned().filter(each => each.calculator !== pin.calculator);
  keep(PINNED, JSON.stringify(others.length < pinned().length ? others : [...others, pin]));
}

const JOB_AT_HAND = 'job-at-hand';

/** The open job that was looked at last. @returns {{ id: string, title: string } | undefined} */
export function jobAtHand() {
  try {
    const job = JSON.parse(recall(JOB_AT_HAND) ?? 'null');
    return typeof job?.id === 'string' && typeof job?.title === 'string' ? job : undefined;
  } catch {
    return undefined;
  }
}

/** @param {{ id: string, title: string }} job @param {boolean} open whether there is still work on it */
export function keepJobAtHand({ id, title }, open) {
  if (open) keep(JOB_AT_HAND, JSON.stringify({ id, title }));
  else if (jobAtHand()?.id === id) keep(JOB_AT_HAND, null);
}

/** @typedef {{ name: string, fields: Record<string, string> }} Machine the fields as they are typed into a form */
const MACHINES = 'machines';

/** @returns {Machine[]} the welder's own machines, in the order of their names */
export function machines() {
  try {
    const list = JSON.parse(recall(MACHINES) ?? '[]');
    return Array.isArray(list) ? list.filter(each => typeof each?.name === 'string' && each.fields instanceof Object) : [];
  } catch {
    return [];
  }
}

/** @param {Machine[]} list */
export const keepMachines = list =>
  keep(MACHINES, list.length ? JSON.stringify([...list].sort((one, other) => one.name.localeCompare(other.name))) : null);

const PICKED = 'machine';

/** The name of the machine last picked, on whatever page: '' for no machine, null if none ever was. */
export const pickedMachine = () => recall(PICKED);

/** @param {string | null} name */
export const keepPicked = name => keep(PICKED, name);

const FOLLOWED = 'followed';

/** Remember that a link of the book's own is followed, until the page it leads to asks. @param {string} from @param {string} address */
export const follow = (from, address) => keep(FOLLOWED, `${from} ${address}`);

/** From which list of the book's own this address was opened; '' if it came from elsewhere. @param {string} address */
export function followed(address) {
  const [from, to] = (recall(FOLLOWED) ?? '').split(' ');
  keep(FOLLOWED, null);
  return from && to === address ? from : '';
}

/**
 * Add what is known of a machine to what was known of it: its dial may be measured today and its melting tomorrow.
 * @param {Machine[]} list @param {string} name @param {Record<string, string>} fields @returns {Machine[]}
 */
export function withMachine(list, name, fields) {
  const before = list.find(each => each.name === name);
  return [...list.filter(each => each !== before), { name, fields: { ...before?.fields, ...fields, machine: name } }];
}

/** @typedef {{ cause: string, at: number }} Fix what mended a fault, and when that was told */
const FIXES = 'fixes';

/** @returns {Record<string, Fix>} by what was asked */
export function fixes() {
  try {
    const kept = JSON.parse(recall(FIXES) ?? '{}');
    const pairs = Object.entries(kept ?? {}).filter(([, each]) => typeof each?.cause === 'string' && Number.isFinite(each.at));
    return Object.fromEntries(pairs);
  } catch {
    return {};
  }
}

/** @param {Record<string, Fix>} kept */
export const keepFixes = kept => keep(FIXES, Object.keys(kept).length ? JSON.stringify(kept) : null);
