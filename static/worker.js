// @ts-check
// The service worker: carries the book, and answers every dynamic GET by running the shared Python.
// Bundled by build.mjs into one classic script; the server writes `self.BUILD = {...}` as its first line.
import { start, takeImage } from './worker/python.js';

/** @type {{ build: string, language: string, languages: Record<string, string>, failed: string, policy: string, precache: Record<string, string> }} */
const BUILD = /** @type {any} */ (self).BUILD;
const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

const PREFIX = 'puddlebook-';
const CARRIED = PREFIX + BUILD.build;
// Outlives every build: the language that the reader chose.
const CHOICES = PREFIX + 'choices';
const CHOSEN = 'language';
// Replies depend on address, language and build alone, so a reply once made may be given again, exactly.
const REMEMBERED = PREFIX + 'replies-' + BUILD.build + '-';
const MOST_REMEMBERED = 60;
const PYTHON = 'pocket.json';
const WASM = 'static/built/micropython.wasm';
const IMAGE = 'python.image';
const NOT_OURS = ['worker.js', 'healthz'];
const HTML = 'text/html; charset=utf-8';

const base = new URL('./', worker.location.href);
/** @param {string} address */
const absolute = address => new URL(address, base).href;
/** @param {string} address */
const carried = address => caches.match(absolute(address), { cacheName: CARRIED });

// ---------------------------------------------------------------- carrying

/** @param {ArrayBuffer} content */
async function fingerprint(content) {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', content));
  return [...digest].map(byte => byte.toString(16).padStart(2, '0')).join('').slice(0, 16);
}

/**
 * Put one file into the new cache: from an older version's cache if it is the same, else from the network, and only
 * if it is what this build names. Anything else fails the install, so that a half-deployed server is never carried.
 * @param {Cache} cache @param {string} address @param {string} hash
 */
async function carry(cache, address, hash) {
  for (const name of await caches.keys()) {
    const old = name.startsWith(PREFIX) ? await (await caches.open(name)).match(absolute(address)) : undefined;
    if (old && (await fingerprint(await old.clone().arrayBuffer())) === hash) return cache.put(absolute(address), old);
  }
  // If what came is not it, once more past the browser's own cache, where a spoilt copy may lie under a good name.
  for (const how of /** @type {RequestCache[]} */ (['no-cache', 'reload'])) {
    const fresh = await fetch(absolute(address), { cache: how, credentials: 'same-origin' });
    if (!fresh.ok || fresh.redirected) throw new Error('carrying ' + address + ': ' + fresh.status);
    if ((await fingerprint(await fresh.clone().arrayBuffer())) === hash) return cache.put(absolute(address), fresh);
  }
  throw new Error('carrying ' + address + ': another build');
}

worker.addEventListener('install', event => {
  // Where the browser can, static files come straight from the cache without waking this script.
  const routes = /** @type {any} */ (event);
  if (routes.addRoutes) {
    const pattern = new URL('static/', base).pathname + '*';
    routes.addRoutes([{ condition: { urlPattern: { pathname: pattern }, requestMethod: 'get' }, source: { cacheName: CARRIED } }]);
  }
  event.waitUntil(
    (async () => {
      const cache = await caches.open(CARRIED);
      await Promise.all(Object.entries(BUILD.precache).map(([address, hash]) => carry(cache, address, hash)));
      const other = await wanted();
      if (other !== BUILD.language) await carryLanguage(other);
    })(),
  );
});

worker.addEventListener('activate', event => {
  event.waitUntil(
    (async () => {
      for (const name of await caches.keys()) {
        const ours = name === CARRIED || name === CHOICES || name.startsWith(REMEMBERED);
        if (name.startsWith(PREFIX) && !ours) await caches.delete(name);
      }
      await worker.clients.claim();
    })(),
  );
});

worker.addEventListener('message', event => {
  if (event.data === 'take over') worker.skipWaiting();
  // The next key press will want Python; not before, since starting it would hold up the page that asks.
  if (event.data === 'wake') event.waitUntil(wake().catch(() => {}));
  if (event.data === 'which build' && event.ports[0]) event.ports[0].postMessage(BUILD.build);
  if (event.data?.language) event.waitUntil(choose(event.data.language).then(language => event.ports[0]?.postMessage(language)));
});

// ---------------------------------------------------------------- languages

/** @type {Promise<string> | undefined} */
let language;

/** Which language to answer in: the one chosen, if its words are here. */
function inLanguage() {
  language ??= wanted().then(async one => (one === BUILD.language || (await carried(one + '.json')) ? one : BUILD.language));
  return language;
}

/** The language that the reader chose, else that of the phone if the book has it, else the book's own. */
async function wanted() {
  const chosen = await (await caches.match(absolute(CHOSEN), { cacheName: CHOICES }))?.text();
  const known = (/** @type {string | undefined} */ one) => one === BUILD.language || Boolean(one && one in BUILD.languages);
  return [chosen, navigator.language.split('-')[0]].find(known) ?? BUILD.language;
}

/** Carry the words of a language, which only its readers need. @param {string} one */
async function carryLanguage(one) {
  await carry(await caches.open(CARRIED), one + '.json', BUILD.languages[one] ?? '');
}

/** Answer in another language from now on. @param {string} one @returns {Promise<string>} the language there is */
async function choose(one) {
  if (one !== BUILD.language && !(one in BUILD.languages)) return inLanguage();
  try {
    if (one !== BUILD.language && !(await carried(one + '.json'))) {
      await carryLanguage(one);
      await forget(); // it knows nothing of what came just now
    }
    await (await caches.open(CHOICES)).put(absolute(CHOSEN), new Response(one));
    language = undefined;
  } catch (error) {
    console.warn('the words did not come', error);
  }
  return inLanguage();
}

// ---------------------------------------------------------------- Python

// A worker's own fetch does not pass through its fetch handler, so the wasm must be handed over from the cache.
const networkFetch = self.fetch.bind(self);
self.fetch = (input, options) =>
  String(input) === absolute(WASM) ? carried(WASM).then(found => found || networkFetch(input, options)) : networkFetch(input, options);

/** @type {ReturnType<typeof start> | undefined} */
let started;

function python() {
  started ??= start(
    absolute(WASM),
    carried(IMAGE).then(found => found?.arrayBuffer()),
    sources,
  ).catch(error => {
    forget(); // the next request tries again
    throw error;
  });
  return started;
}

/** @returns {Promise<Record<string, string>>} the book, and the words of every other language that is here */
async function sources() {
  const names = [PYTHON, ...Object.keys(BUILD.languages).map(each => each + '.json')];
  const found = await Promise.all(names.map(name => carried(name).then(file => file?.json())));
  return Object.assign({}, ...found.map(each => each?.files));
}

/** Start Python for the key press to come and, the first time, keep an image of it for all starts to come. */
async function wake() {
  if ((await python()).fromImage || (await carried(IMAGE))) return;
  const paths = Object.keys(await sources());
  const { micropython } = await python(); // asked again: the one before may have died meanwhile
  const image = takeImage(micropython, paths);
  if (image) await (await caches.open(CARRIED)).put(absolute(IMAGE), new Response(image));
}

/** Another start is needed, from the sources: the instance is dead, and the image may have killed it. */
async function forget() {
  started = undefined;
  await (await caches.open(CARRIED)).delete(absolute(IMAGE));
}

/**
 * Answer a request in Python. Only strings cross the border.
 * @param {URL} url @param {boolean} partial @param {string} inWhich language
 */
async function answer(url, partial, inWhich) {
  const { respond } = await python();
  const path = '/' + decoded(url.pathname.slice(base.pathname.length));
  const text = respond(path, JSON.stringify([...url.searchParams]), partial ? 'yes' : 'no', inWhich, BUILD.build);
  const head = text.slice(0, text.indexOf('\n'));
  return new Response(text.slice(head.length + 1), {
    status: Number(head.slice(0, 3)),
    headers: { 'content-type': head.slice(4), 'cache-control': 'no-store', 'content-security-policy': BUILD.policy, 'x-answered-by': 'phone' },
  });
}

/** The server reads an address this way too. @param {string} path */
function decoded(path) {
  try {
    return decodeURIComponent(path);
  } catch {
    return path; // no text at all: it is in the book under no name
  }
}

/** @param {URL} url @param {Response} reply @param {string} inWhich language it is */
async function remember(url, reply, inWhich) {
  const cache = await caches.open(REMEMBERED + inWhich);
  await cache.put(url.href, reply);
  const addresses = await cache.keys();
  for (const old of addresses.slice(0, Math.max(0, addresses.length - MOST_REMEMBERED))) await cache.delete(old);
}

// ---------------------------------------------------------------- requests

worker.addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== base.origin || !url.pathname.startsWith(base.pathname)) return;
  const address = url.pathname.slice(base.pathname.length);
  if (NOT_OURS.includes(address)) return;
  if (address + url.search in BUILD.precache) {
    event.respondWith(carried(address + url.search).then(found => found || networkFetch(event.request)));
  } else if (!address.startsWith('static/')) {
    event.respondWith(dynamic(event, url));
  }
});

/** @param {FetchEvent} event @param {URL} url */
async function dynamic(event, url) {
  const partial = event.request.headers.get('HX-Request') === 'true' && event.request.headers.get('HX-Request-Type') !== 'full';
  url.hash = '';
  try {
    const inWhich = await inLanguage(); // once: another may be chosen before the answer is there
    if (!partial) {
      const before = await caches.match(url.href, { cacheName: REMEMBERED + inWhich });
      if (before) return before;
    }
    const reply = await answer(url, partial, inWhich);
    if (!partial && reply.status === 200) event.waitUntil(remember(url, reply.clone(), inWhich));
    return reply;
  } catch (error) {
    console.warn('Python on the phone failed', error);
    // An error that Python raised leaves it usable; anything else leaves a dead instance.
    if (!(error instanceof Error && error.name === 'PythonError')) event.waitUntil(forget());
    return networkFetch(event.request).catch(() => failed(partial));
  }
}

/** What shows when neither Python nor the server can answer, and so can come from neither. @param {boolean} partial */
function failed(partial) {
  const said = `<div class="headline problem"><p>${BUILD.failed}</p></div>`;
  const page =
    `<!doctype html><html lang="${BUILD.language}"><meta charset="utf-8"><meta name="viewport" content="width=device-width">` +
    `<title>Puddlebook</title><main>${said}</main></html>`;
  return new Response(partial ? said : page, { status: 200, headers: { 'content-type': HTML } });
}
