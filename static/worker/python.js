// @ts-check
// The phone's Python: MicroPython with the book in it, from its sources or from a kept image of its memory.
//
// Reading the sources is most of a cold opening. Once that is done the whole memory is only some 100 pages that are
// not empty; laid over the memory of a new instance of the same program, they are the same Python with everything
// imported. An image that does not fit is not used, and nothing depends on there being one.
import { loadMicroPython } from '../built/micropython.mjs';

/** @typedef {(path: string, pairs: string, partial: string, language: string, build: string) => string} Respond */
/** @typedef {import('../built/micropython.mjs').MicroPython} MicroPython */

const HEAP_BYTES = 2 * 1024 * 1024;
const STACK_WORDS = 4096;
const PAGE_BYTES = 4096;

/** @type {WebAssembly.Memory | undefined} the memory of the instance made last; the loader keeps it to itself */
let memory;
/** @type {number[]} the pages that were in use before Python read any source */
let usedAtFirst = [];

for (const name of /** @type {const} */ (['instantiate', 'instantiateStreaming'])) {
  const plainly = /** @type {any} */ (WebAssembly)[name];
  if (!plainly) continue;
  /** @type {any} */ (WebAssembly)[name] = async (/** @type {any[]} */ ...all) => {
    const made = await plainly.apply(WebAssembly, all);
    memory = Object.values(made.instance.exports).find(each => each instanceof WebAssembly.Memory);
    return made;
  };
}

// Of all that JavaScript knows about the inside of that memory, only the handles of Python objects last beyond a
// call. The loader makes the same few each time, and none is made by a question, since only text crosses. Freeing
// one would take it out of one instance's memory and not out of its image, so none is ever freed.
/** @type {any} */ (self).FinalizationRegistry = class {
  register() {}
};

/**
 * @param {string} wasm address of MicroPython
 * @param {Promise<ArrayBuffer | undefined>} image a kept one, if there is one
 * @param {() => Promise<Record<string, string>>} sources module path -> source; asked for if the image is of no use
 * @returns {Promise<{ respond: Respond, micropython: MicroPython, fromImage: boolean }>}
 */
export async function start(wasm, image, sources) {
  const [micropython, kept] = await Promise.all([
    loadMicroPython({ url: wasm, heapsize: HEAP_BYTES, pystack: STACK_WORDS, stdout: console.log, stderr: console.warn }),
    image,
  ]);
  const fromImage = Boolean(kept && memory && layOver(memory.buffer, kept));
  if (!fromImage) {
    usedAtFirst = memory ? pagesInUse(memory.buffer) : [];
    writeFiles(micropython, await sources());
    micropython.runPython('import sys\nsys.path.insert(0, "/book")\nfrom webapp.pocket import respond_text');
  }
  return { respond: micropython.globals.get('respond_text'), micropython, fromImage };
}

/** @param {MicroPython} micropython @param {Record<string, string>} files */
function writeFiles(micropython, files) {
  const encoder = new TextEncoder(); // writing bytes is two to three times faster than writing strings
  const made = new Set();
  micropython.FS.mkdir('/book');
  for (const [path, source] of Object.entries(files)) {
    const parts = path.split('/').slice(0, -1);
    for (let depth = 1; depth <= parts.length; depth++) {
      const folder = '/book/' + parts.slice(0, depth).join('/');
      if (!made.has(folder)) micropython.FS.mkdir(folder);
      made.add(folder);
    }
    micropython.FS.writeFile('/book/' + path, encoder.encode(source));
  }
}

/** @param {ArrayBuffer} buffer @returns {number[]} the pages that hold anything but zeros */
function pagesInUse(buffer) {
  const words = new Uint32Array(buffer);
  const pages = [];
  for (let at = 0; at < words.length; at++) {
    if (words[at] === 0) continue;
    const page = Math.floor((at * 4) / PAGE_BYTES);
    pages.push(page);
    at = ((page + 1) * PAGE_BYTES) / 4 - 1;
  }
  return pages;
}

/**
 * Import what is not imported yet and return an image of the memory: its size, how many pages follow, which they
 * are, and the pages themselves. A page that has been emptied again is among them, so that it will be empty again.
 * @param {MicroPython} micropython one that was started from its sources @param {string[]} paths of all modules
 * @returns {Blob | undefined}
 */
export function takeImage(micropython, paths) {
  const modules = paths.map(path => path.replace(/(\/__init__)?\.py$/, '').replaceAll('/', '.'));
  micropython.runPython(modules.map(name => `import ${name}\n`).join('') + 'import gc\ngc.collect()');
  if (!memory) return undefined;
  const { buffer } = memory;
  const pages = [...new Set([...usedAtFirst, ...pagesInUse(buffer)])];
  const head = new Uint32Array([buffer.byteLength, pages.length, ...pages]);
  return new Blob([head, ...pages.map(page => new Uint8Array(buffer, page * PAGE_BYTES, PAGE_BYTES))]);
}

/** @param {ArrayBuffer} buffer the memory of a new instance @param {ArrayBuffer} image @returns {boolean} whether it fits */
function layOver(buffer, image) {
  const [size = 0, count = 0] = new Uint32Array(image, 0, 2);
  const first = 8 + 4 * count;
  if (size !== buffer.byteLength || image.byteLength !== first + count * PAGE_BYTES) return false;
  const bytes = new Uint8Array(buffer);
  new Uint32Array(image, 8, count).forEach((page, at) => {
    bytes.set(new Uint8Array(image, first + at * PAGE_BYTES, PAGE_BYTES), page * PAGE_BYTES);
  });
  return true;
}
