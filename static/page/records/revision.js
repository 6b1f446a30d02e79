// @ts-check
// What a revision of a record is: made once, named by all that it says, never changed. webapp/revisions.py is the same
// for the server, and tests hold the two together.

/**
 * @typedef {{ id: string, rev: string, parents: string[], device: string, seq_on_device: number, saved_at: string,
 *   deleted: boolean, body: string }} Revision
 * @typedef {{ kind: string, schema: number, build: string, fields: Record<string, string> }} Body
 */

export const SCHEMA = 1;

/** @param {string} rev */
export const depth = rev => Number(rev.slice(0, rev.indexOf('-')));

/** @param {Omit<Revision, 'rev'>} said */
export async function revisionName(said) {
  const parents = [...said.parents].sort();
  const text = [
    said.id,
    parents.join(','),
    said.device,
    String(said.seq_on_device),
    said.saved_at,
    said.deleted ? 'deleted' : 'kept',
    said.body,
  ].join('\n');
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
  const hex = [...digest].map(byte => byte.toString(16).padStart(2, '0')).join('');
  return `${1 + Math.max(0, ...parents.map(depth))}-${hex.slice(0, 32)}`;
}

/** @param {Omit<Revision, 'rev'>} said @returns {Promise<Revision>} */
export async function named(said) {
  const sorted = { ...said, parents: [...said.parents].sort() };
  return { ...sorted, rev: await revisionName(sorted) };
}

/** The text of a body; half of a surrogate pair, which no file can hold, becomes a sign that says so. @param {Body} body */
export const bodyText = body => JSON.stringify(body).replace(/\\ud[89a-f][0-9a-f]{2}/g, '\ufffd');

/** What a body says, or null if it is of a newer kind. @param {Revision} revision @returns {Body | null} */
export function bodyOf(revision) {
  try {
    const body = JSON.parse(revision.body);
    return body?.schema <= SCHEMA && typeof body.kind === 'string' && body.fields instanceof Object ? body : null;
  } catch {
    return null;
  }
}

/** Whether a revision is of the demo, which stays on this phone: no text that somebody typed reads like this in JSON. @param {{ body: string }} revision */
export const isDemo = revision => revision.body.includes('"demo":"yes"');

/** Which list a record belongs to, also if a newer Puddlebook wrote it: then it can be named there, if not read. @param {Revision} revision */
export function kindOf(revision) {
  try {
    const kind = JSON.parse(revision.body)?.kind;
    return typeof kind === 'string' ? kind : 'newer';
  } catch {
    return 'newer';
  }
}

/** The revisions that no other follows, the one that shows first: kept before deleted, deeper before less deep. @param {Revision[]} all */
export function heads(all) {
  const followed = new Set(all.flatMap(each => each.parents));
  return all
    .filter(each => !followed.has(each.rev))
    .sort((one, other) => Number(one.deleted) - Number(other.deleted) || depth(other.rev) - depth(one.rev) || (one.rev < other.rev ? 1 : -1));
}
