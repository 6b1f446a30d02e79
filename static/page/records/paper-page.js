// @ts-check
// The page that a job is printed, signed and shared from.
import { keep, recall } from '../memory.js';
import { photo, revisionsOf, rowOf, save, since, waitingAmong } from './database.js';
import { shownTime } from './log-page.js';
import { paperOf } from './paper.js';
import { signedOn } from './paper-facts.js';
import { SCHEMA, bodyOf, bodyText } from './revision.js';
import { cannotOpen, exchangeNow } from './sending.js';
import { signatureText, watchPad } from './signature.js';
import { typedOf } from './typed.js';

/** @typedef {import('./paper.js').Job} Job */
/** @typedef {import('./paper.js').Kind} Kind */
const LETTERHEAD = 'letterhead';
const LONGEST_TEXT = 400;

export function showPaper() {
  const shown = document.querySelector('[data-paper]');
  if (!(shown instanceof HTMLElement)) return;
  shown.hidden = false;
  /** @template {Element} T @param {string} selector @returns {T} */
  const part = selector => /** @type {T} */ (/** @type {unknown} */ (shown.querySelector(selector)));
  const said = /** @type {HTMLElement} */ (part('[data-said]'));
  const letterhead = /** @type {HTMLInputElement} */ (part('#letterhead'));
  letterhead.value = recall(LETTERHEAD) ?? '';
  const kinds = /** @type {HTMLButtonElement[]} */ ([...shown.querySelectorAll('[data-kind]')]);
  /** @type {Job | undefined} */
  let job;
  /** @type {Kind} */
  let kind = 'sheet';
  const page = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, page];

  const draw = () => {
    if (!job) return;
    for (const button of kinds) button.setAttribute('aria-pressed', String(button.dataset.kind === kind));
    part('[data-sheet]').replaceChildren(...paperOf({ ...job, letterhead: letterhead.value.trim() }, kind));
    page.replaceSync(pageRule(job));
    document.title = `${job.word(kind)} ${job.row.fields.title ?? ''}`;
    const signing = /** @type {HTMLElement} */ (part('[data-signing]'));
    signing.hidden = kind === 'invoice' || job.row.newer || job.row.versions > 1;
  };
  const fresh = async () => {
    job = await read(shown, location.hash.slice(1));
    said.textContent = job ? '' : (said.dataset.gone ?? '');
    for (const each of shown.querySelectorAll('[data-of-job]')) if (each instanceof HTMLElement) each.hidden = !job;
    /** @type {HTMLAnchorElement} */ (part('[data-back]')).href = job ? `work#${job.row.id}` : 'jobs';
    if (!job) return part('[data-sheet]').replaceChildren();
    if (job.row.versions > 1) said.textContent = said.dataset.versions ?? '';
    draw();
    const shownJob = job;
    const [photos, sketches] = await Promise.all([photosOf(shownJob), sketchesOf(shownJob)]);
    if (job !== shownJob || !(photos.length || sketches.length)) return;
    Object.assign(job, { photos, sketches });
    draw();
  };
  for (const button of kinds) {
    button.addEventListener('click', () => {
      kind = /** @type {Kind} */ (button.dataset.kind);
      draw();
    });
  }
  letterhead.addEventListener('input', () => {
    keep(LETTERHEAD, letterhead.value || null);
    draw();
  });
  part('[data-print]').addEventListener('click', () => window.print());
  part('[data-share]').addEventListener('click', async () => {
    if (job) share(document.title, await withPhotos(fileOf(part('[data-sheet]'), document.title, pageRule(job))));
  });
  watchSigning(shown, () => ({ job, on: signedOn(kind) }), fresh);
  window.addEventListener('hashchange', () => fresh().catch(cannotOpen));
  fresh().catch(cannotOpen);
}

/** @param {HTMLElement} shown @param {string} id @returns {Promise<Job | undefined>} */
async function read(shown, id) {
  const all = await revisionsOf(id);
  if (!all.length) return undefined;
  const row = rowOf(all);
  if (row.kind !== 'job') return undefined;
  const [waits] = await waitingAmong([row]);
  const entries = await since({ kind: 'weld-entry', by: 'job_id', value: id });
  /** @param {string} name */
  const label = name => shown.querySelector(`[data-label="${CSS.escape(name)}"]`)?.textContent ?? undefined;
  /** @param {string} name */
  const word = name => label(`paper.${name}`) ?? name;
  const leading = all.find(each => each.rev === row.rev);
  const build = (leading && bodyOf(leading)?.build) ?? '';
  const where = row.fields.demo ? word('demo') : waits ? word('not-sent') : word('sent');
  const foot = [`${word('record')} ${row.id.slice(0, 8)}`, row.rev.slice(0, 10), shownTime(leading?.saved_at ?? row.at), `${word('build')} ${build}`, where].join(' \u00b7 ');
  return { row, all, entries, sketches: [], photos: [], letterhead: '', now: new Date(), word, label, factors: shown.dataset, foot };
}

/** The joints as the book draws them, for a paper that has them typed; without the book's Python, none. @param {Job} job @returns {Promise<Element[]>} */
async function sketchesOf(job) {
  try {
    const reply = await fetch(`job?${new URLSearchParams(typedOf(job.row.fields))}`, { headers: { 'HX-Request': 'true' } });
    if (!reply.ok) return [];
    const made = new DOMParser().parseFromString(await reply.text(), 'text/html');
    return [...made.querySelectorAll('figure.drawing')].map(each => document.importNode(each, true));
  } catch {
    return [];
  }
}

/** What the addresses of photos on this page stand for. @type {Map<string, Blob>} */
const blobs = new Map();

/** The photos of it that are on this phone. @param {Job} job */
async function photosOf(job) {
  for (const address of blobs.keys()) URL.revokeObjectURL(address);
  blobs.clear();
  const found = await Promise.all((job.row.fields.photos ?? '').split(' ').filter(Boolean).map(name => photo(name)));
  for (const each of found) if (each) blobs.set(URL.createObjectURL(each), each);
  return [...blobs.keys()];
}

/** A page's text with the photos in it, for a file that has to stand alone. @param {string} html */
async function withPhotos(html) {
  let text = html;
  for (const [address, blob] of blobs) {
    if (!text.includes(address)) continue;
    const data = await new Promise((done, fail) => {
      const reader = new FileReader();
      reader.onload = () => done(String(reader.result));
      reader.onerror = fail;
      reader.readAsDataURL(blob);
    });
    text = text.replace(address, () => data);
  }
  return text;
}

/** What stands at the foot of each page, where the browser prints such. @param {Job} job */
function pageRule(job) {
  const [before = '', between = '', after = ''] = job.word('page').split('#');
  const count = `${text(before)} counter(page) ${text(between)} counter(pages) ${text(after)}`;
  const how = 'font: 8pt sans-serif; font-variant-ligatures: none; color: #000';
  return `@page { margin: 15mm 14mm 18mm; @bottom-left { content: ${text(job.foot)}; ${how}; width: 80% } @bottom-right { content: ${count}; ${how}; width: 20% } }`;
}

/** Text as a string of a style sheet. @param {string} said */
const text = said => `"${said.replace(/[\\"<\n\r\f]/g, each => `\\${each.charCodeAt(0).toString(16)} `)}"`;

// ---------------------------------------------------------------- signing

/** @param {HTMLElement} shown @param {() => { job: Job | undefined, on: string }} current `on`: the paper that is signed @param {() => Promise<void>} fresh */
function watchSigning(shown, current, fresh) {
  const pad = shown.querySelector('[data-pad]');
  const name = shown.querySelector('#signed-by');
  const said = shown.querySelector('[data-signed-said]');
  if (!(pad instanceof SVGSVGElement && name instanceof HTMLInputElement && said instanceof HTMLElement)) return;
  const pen = watchPad(pad);
  shown.querySelector('[data-clear-signature]')?.addEventListener('click', pen.clear);
  shown.querySelector('[data-sign]')?.addEventListener('click', async () => {
    const { job, on } = current();
    const leading = job?.all.find(each => each.rev === job.row.rev);
    const body = leading && bodyOf(leading);
    if (!job || !leading || !body) return;
    const signature = signatureText(pen.strokes());
    const by = name.value.trim().slice(0, LONGEST_TEXT);
    if (!signature && !by) return void (said.textContent = said.dataset.nothing ?? '');
    const now = new Date();
    const fields = { ...body.fields, [`${on}signature`]: signature, [`${on}signed_by`]: by, [`${on}signed_at`]: now.toISOString() };
    try {
      await save({ id: leading.id, parents: [leading.rev], body: bodyText({ ...body, schema: SCHEMA, fields }), at: now });
      pen.clear();
      name.value = '';
      said.textContent = said.dataset.kept ?? '';
      await fresh();
      exchangeNow();
    } catch {
      said.textContent = said.dataset.refused ?? '';
    }
  });
}

// ---------------------------------------------------------------- a file of its own

/** The paper as a page that needs nothing else. @param {Element} sheet @param {string} title @param {string} rule @returns {string} */
function fileOf(sheet, title, rule) {
  const heading = document.createElement('title');
  heading.textContent = title;
  // Put together as text: a document made here would be bound by this page's policy, which lets no style into it.
  const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width">${heading.outerHTML}<style>${style()}\n${rule}</style>`;
  return `<!doctype html>\n<html lang="${document.documentElement.lang}"><head>${head}</head><body>${sheet.outerHTML}</body></html>\n`;
}

/** The book's own style sheet, so that the file looks and prints as the page does. */
const style = () => [...document.styleSheets].flatMap(sheet => [...sheet.cssRules].map(each => each.cssText)).join('\n');

/** @param {string} title @param {string} html */
async function share(title, html) {
  const name = `${title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '').slice(0, 60) || 'paper'}.html`;
  const file = new File([html], name, { type: 'text/html' });
  if (navigator.canShare?.({ files: [file] })) {
    // Refused or put away: a phone says so itself.
    return navigator.share({ files: [file], title }).catch(() => {});
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
