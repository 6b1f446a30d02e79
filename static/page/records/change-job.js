// @ts-check
// One more revision of a job, by a script: it follows the version that stands first.
import { revisionsOf, save } from './database.js';
import { SCHEMA, bodyOf, bodyText, heads } from './revision.js';

/** @typedef {Record<string, string>} Fields */

/**
 * @param {string} id @param {(fields: Fields) => Fields | undefined} changed undefined: nothing is to be kept
 * @returns {Promise<boolean>} whether it was kept
 */
export async function changeJob(id, changed) {
  const leading = heads(await revisionsOf(id))[0];
  const body = leading && bodyOf(leading);
  if (!leading || leading.deleted || !body) return false;
  const fields = changed(body.fields);
  if (!fields) return false;
  const build = document.querySelector('.build code')?.textContent ?? '';
  await save({ id, parents: [leading.rev], body: bodyText({ ...body, schema: SCHEMA, build, fields }) });
  return true;
}
