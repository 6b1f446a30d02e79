// @ts-check
// On a page that was opened from a job: the way back to it, and what was changed here taken along into it.
import { openedFor, purpose, setPurpose } from '../opened.js';
import { row } from './database.js';
import { changeJob } from './change-job.js';
import { changeAddress } from './jobs-page.js';
import { shownIn } from './recording.js';
import { isShown, typedOf } from './typed.js';
import { asked } from './work-page.js';

export async function offerJob() {
  const { job, said } = openedFor();
  const form = document.querySelector('form[data-calculator]');
  const pattern = document.querySelector('[data-from-job]');
  if (!(job && form instanceof HTMLFormElement && pattern instanceof HTMLTemplateElement)) return;
  const found = await row(job).catch(() => undefined);
  const bar = pattern.content.cloneNode(true);
  if (!found || found.newer || !(bar instanceof DocumentFragment)) return;
  const [title, back, take] = ['.from-job p', 'a', 'button'].map(each => bar.querySelector(each));
  if (!(title && back instanceof HTMLAnchorElement && take instanceof HTMLButtonElement)) return;
  title.textContent = (pattern.dataset.from ?? '').replace('#', () => found.fields.title ?? '');
  back.href = `work#${job}`;
  document.querySelector('main .work')?.before(bar);
  const pairs = (said.get('take') ?? '').split(',').map(each => each.split(':')).filter(each => each.length === 2);
  if (!pairs.length || found.deleted || found.fields.status === 'closed') return;
  /** What stands in the boxes that can be taken along. @returns {[string, string][]} [field of the job, text] */
  const now = () => pairs.map(([there = '', here = '']) => [here, textOf(form, there)]);
  // What the job put here, not what was typed here since: kept in the address, so that it is known after a reload too.
  if (!said.has('was')) {
    const put = pairs.map(([there = '', here = '']) => [here, putInto(form, there)]).filter(([, text]) => text);
    setPurpose(`${purpose()}&was=${encodeURIComponent(JSON.stringify(put))}`);
  }
  const was = new Map(asPairs(openedFor().said.get('was') ?? ''));
  const changed = () => now().filter(([here, text]) => text && text !== (was.get(here) ?? ''));
  const show = () => {
    take.parentElement?.toggleAttribute('hidden', changed().length === 0);
  };
  for (const type of ['input', 'change']) form.addEventListener(type, () => setTimeout(show));
  take.addEventListener('click', async () => {
    take.disabled = true;
    const latest = (await row(job).catch(() => undefined)) ?? found;
    const taken = Object.fromEntries(changed());
    // What the job cannot be worked out with stands in its form, where it says why.
    location.assign((await keepTaken(latest, taken).catch(() => false)) ? `work#${job}` : changeAddress(latest, taken));
    take.disabled = false;
  });
  show();
}

/** Keep a job with what was taken into it, and what it says with that. @param {import('./database.js').Row} job @param {Record<string, string>} taken */
async function keepTaken(job, taken) {
  const answer = await asked(`job?${new URLSearchParams({ ...typedOf(job.fields), ...taken })}`);
  if (!answer?.querySelector('[data-card]')) return false;
  return changeJob(job.id, fields =>
    fields.status === 'closed' ? undefined : { ...Object.fromEntries(Object.entries(fields).filter(([name]) => !isShown(name, ''))), ...taken, ...shownIn(answer, '') },
  );
}

/** The form of a job that is there already: headed by its title, with the field in sight that a line of its page waits for. */
export async function headForm() {
  const { correct, said } = openedFor();
  const form = document.querySelector('form[data-calculator=job]');
  const [heading, pattern] = [document.querySelector('h1'), document.querySelector('[data-from-job]')];
  if (!(correct && form instanceof HTMLFormElement && heading && pattern instanceof HTMLTemplateElement)) return;
  const wanted = said.get('field') ?? '';
  const box = [...form.elements].find(each => wanted && `${each.getAttribute('name')}-`.startsWith(`${wanted}-`));
  if (box instanceof HTMLElement) {
    box.closest('details')?.setAttribute('open', '');
    box.focus();
  }
  const title = (await row(correct))?.fields.title ?? '';
  heading.textContent = document.title = (pattern.dataset.heading ?? '').replace('#', () => title);
}

/** @param {string} text @returns {[string, string][]} */
function asPairs(text) {
  try {
    const list = JSON.parse(text);
    return Array.isArray(list) ? list.filter(each => Array.isArray(each) && each.length === 2).map(each => [String(each[0]), String(each[1])]) : [];
  } catch {
    return [];
  }
}

/** A number with its unit, as a record says it. @param {string} text @param {string} unit */
const withUnit = (text, unit) => (text && unit && text !== 'unknown' ? `${text} ${unit}` : text);

/** A field of a form as a record says it. @param {HTMLFormElement} form @param {string} name */
function textOf(form, name) {
  const data = new FormData(form);
  return withUnit(String(data.get(name) ?? '').trim(), String(data.get(`${name}_unit`) ?? ''));
}

/** A field as the page came with it, before anything that was remembered was filled in. @param {HTMLFormElement} form @param {string} name */
function putInto(form, name) {
  /** @param {string} field */
  const came = field => {
    for (const box of form.querySelectorAll(`[name="${CSS.escape(field)}"]`)) {
      if (box instanceof HTMLSelectElement) return ([...box.options].find(each => each.defaultSelected) ?? box.options[0])?.value ?? '';
      if (box instanceof HTMLInputElement && (box.type !== 'radio' || box.defaultChecked)) return box.defaultValue.trim();
    }
    return '';
  };
  return withUnit(came(name), came(`${name}_unit`));
}
