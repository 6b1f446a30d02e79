// @ts-check
// Sending what waits and taking what is new. What was sent leaves the outbox only when the server has named it.
import { acknowledge, fact, keepFact, sendAllAgain, store, toSend, waiting } from './database.js';
import { SCHEMA, isDemo, revisionName } from './revision.js';

const MOST = 100;
const MOST_CHARACTERS = 1_500_000; // a message may have 2,000,000 bytes
const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 300_000;
const SILENCE_MS = 30_000;
const LOCK = 'puddlebook exchange';

/**
 * @typedef {{ state: 'done' | 'busy' | 'waits', reason: string, left: number }} Result reason: '' or
 *   `no-signal`, `portal`, `pair`, `wait`, `server`, `older`
 * @typedef {(address: string, options: RequestInit) => Promise<Response>} Fetch
 */

/**
 * Exchange everything, unless another tab is at it.
 * @param {{ build: string, fetch?: Fetch, silence?: number }} how @returns {Promise<Result>}
 */
export async function exchange(how) {
  const locks = /** @type {LockManager | undefined} */ (navigator.locks);
  if (!locks) return run(how);
  return locks.request(LOCK, { ifAvailable: true }, lock => (lock ? run(how) : { state: 'busy', reason: '', left: -1 }));
}

/** @param {{ build: string, fetch?: Fetch, silence?: number }} how @returns {Promise<Result>} */
async function run(how) {
  for (;;) {
    const entries = fitting(await toSend(MOST));
    const sent = entries.map(each => each.revision);
    const known = (await fact('server')) ?? { store: '', after: 0, after_rev: '' };
    const message = { sync: 1, schema: SCHEMA, build: how.build, ...known, records: sent };
    const { reply, reason } = await post('sync', message, how.fetch, how.silence);
    if (!reply) return { state: 'waits', reason, left: await waiting() };
    // In this order: a page killed between any two steps does them again, and nothing is lost by it.
    await store(await genuine(reply.records), false);
    if (reply.reset) await sendAllAgain();
    else await acknowledge(reply.outcomes);
    await keepFact('server', { store: reply.store, after: reply.after, after_rev: reply.after_rev });
    // What is refused stays and is asked about once in each run, behind all others: it must not hold them up.
    const progress =
      entries.some(each => !each.waiting.problem) || reply.outcomes.some((/** @type {any} */ each) => each.outcome !== 'refused');
    const left = await waiting();
    if (!reply.more && !reply.reset && (left === 0 || !progress)) return { state: 'done', reason: '', left };
  }
}

/**
 * As many as fit into one message, the first always.
 * @param {{ waiting: import('./database.js').Waiting, revision: import('./revision.js').Revision }[]} entries
 */
function fitting(entries) {
  let room = MOST_CHARACTERS;
  const found = [];
  for (const each of entries) {
    room -= each.revision.body.length + 500;
    if (found.length && room < 0) break;
    found.push(each);
  }
  return found;
}

/** Those whose name belongs to their content; none that would be taken away with the demo. @param {import('./revision.js').Revision[]} revisions */
async function genuine(revisions) {
  const checked = await Promise.all(revisions.map(async each => (!isDemo(each) && (await revisionName(each)) === each.rev ? [each] : [])));
  return checked.flat();
}

/**
 * Send JSON and return what came back, if it came from our server and says so; else why not, in a word.
 * @param {string} address @param {unknown} message @param {Fetch} [ask] @param {number} [silence] ms
 * @returns {Promise<{ reply?: any, reason: string, status: number }>}
 */
export async function post(address, message, ask = fetch, silence = SILENCE_MS) {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), silence);
  try {
    const response = await ask(address, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'x-puddlebook': '1' },
      body: JSON.stringify(message),
      credentials: 'same-origin',
      redirect: 'error',
      signal: patience.signal,
    });
    const reply = await response.json().catch(() => undefined);
    const ours = reply?.sync === 1;
    if (response.status === 200 && ours && (address !== 'sync' || wellFormed(reply))) return { reply, reason: '', status: 200 };
    return { reason: ours ? reasonOf(response.status) : 'portal', status: response.status };
  } catch {
    return { reason: 'no-signal', status: 0 };
  } finally {
    clearTimeout(timer);
  }
}

/** @param {number} status */
function reasonOf(status) {
  if (status === 401) return 'pair';
  if (status === 429) return 'wait';
  return status === 422 ? 'older' : 'server';
}

/** @param {any} reply */
const wellFormed = reply =>
  Array.isArray(reply.outcomes) &&
  Array.isArray(reply.records) &&
  typeof reply.store === 'string' &&
  reply.store !== '' &&
  Number.isInteger(reply.after) &&
  typeof reply.after_rev === 'string' &&
  typeof reply.more === 'boolean' &&
  typeof reply.reset === 'boolean';

/** How long to wait after so many failures in a row. @param {number} failures */
export const waitAfter = failures => Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** Math.max(0, failures - 1));
