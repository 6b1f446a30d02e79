// Makes static/built/ from the npm parts and our own service worker: `node static/build.mjs`.
//
//   htmx.min.js         as shipped
//   micropython.wasm    as shipped
//   micropython.mjs     its loader without the command line at its end and without its assertions; for bundling alone
//   micropython.d.mts   what the type checker is to know of the loader
//   worker.js           static/worker.js and the loader as one classic script
//   app.js              static/page/*.js as one classic script
//   log.js              static/page/records/*.js, for the pages that keep or show records
//
// The loader as shipped ends in a command line for node, with a top-level await that no service
// worker may have anywhere in its module graph. Declaring `process` undefined lets esbuild drop it,
// and with it all that the loader does for node: node can not load static/built/micropython.mjs, so
// whatever runs the phone's Python under node imports the untouched loader from node_modules, where
// the command line stays quiet because it is not the script that node was started with.

import { access, mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const built = join(here, 'built');
const parts = join(here, 'node_modules');
const micropython = join(parts, '@micropython', 'micropython-webassembly-pyscript');

// One classic script, because not every browser that we care for takes a module as a service worker.
const browsers = ['firefox102', 'chrome100', 'safari15'];
const banner = '/*! With MicroPython, copyright Damien P. George and others, MIT licence. */';

// What the loader says to somebody who builds MicroPython: assertions, and what to do about a missing export. Nobody is
// there to read it on a phone, and it is a tenth of the loader.
const FOR_ITS_AUTHORS = [
  [/function assert\(condition,text\)\{[^{}]*\}/, 'function assert(){}'],
  [/\["[^\]]*"\]\.forEach\(unexportedRuntimeSymbol\)[;,]/, ''],
  [/\["[^\]]*"\]\.forEach\(function\(sym\)\{unexportedRuntimeSymbol\(sym\)\}\)[;,]/, ''],
];

class BuildProblem extends Error {}

/** Write by renaming, so that a server reading at the same time never sees half a file. */
async function put(name, contents) {
  const path = join(built, name);
  await writeFile(`${path}.new`, contents);
  await rename(`${path}.new`, path);
}

async function makeLoader(esbuild) {
  let shipped = await readFile(join(micropython, 'micropython.mjs'), 'utf8');
  for (const [pattern, less] of FOR_ITS_AUTHORS) {
    if (!pattern.test(shipped)) throw new BuildProblem(`micropython.mjs has no ${pattern} in it any more`);
    shipped = shipped.replace(pattern, less);
  }
  const { code } = await esbuild.transform(shipped, {
    format: 'esm',
    define: { process: 'undefined', 'globalThis.process': 'undefined' },
    minifySyntax: true,
    minifyWhitespace: true,
    legalComments: 'none',
  });
  if (code.includes('await import("path")')) {
    throw new BuildProblem('the command line of micropython.mjs, and its top-level await, could not be removed');
  }
  await put('micropython.mjs', code);
}

async function makeWorker(esbuild) {
  const { outputFiles } = await esbuild.build({
    entryPoints: [join(here, 'worker.js')],
    bundle: true,
    write: false,
    format: 'iife',
    target: browsers,
    minify: true,
    banner: { js: banner },
    legalComments: 'inline',
    logLevel: 'error',
    // A classic script has no import.meta; the loader only asks it for the folder that it came from.
    define: { 'import.meta.url': 'location.href' },
    // Named in branches for node, which a browser never takes.
    external: ['module', 'fs'],
  });
  await put('worker.js', outputFiles[0].contents);
}

async function makePage(esbuild, entry, name) {
  const { outputFiles } = await esbuild.build({
    entryPoints: [join(here, 'page', ...entry)],
    bundle: true,
    write: false,
    format: 'iife',
    target: browsers,
    minify: true,
    logLevel: 'error',
  });
  await put(name, outputFiles[0].contents);
}

async function main() {
  const worker = join(here, 'worker.js');
  await access(worker).catch(() => {
    throw new BuildProblem('static/worker.js, the service worker that it bundles, is missing');
  });
  // Imported late, so that a missing npm part is told in words.
  const esbuild = await import('esbuild').catch(() => {
    throw new BuildProblem('the npm parts are missing: ./webapp/start installs them');
  });
  await mkdir(built, { recursive: true });
  await put('htmx.min.js', await readFile(join(parts, 'htmx.org', 'dist', 'htmx.min.js')));
  await put('micropython.wasm', await readFile(join(micropython, 'micropython.wasm')));
  await put('micropython.d.mts', await readFile(join(here, 'micropython.d.mts')));
  await makeLoader(esbuild);
  await makeWorker(esbuild);
  await makePage(esbuild, ['main.js'], 'app.js');
  await makePage(esbuild, ['records', 'main.js'], 'log.js');
}

main().catch((problem) => {
  // esbuild has already shown its own errors, with the line each is in.
  const said = problem instanceof BuildProblem ? problem.message : problem.errors ? 'see above' : problem.stack;
  console.error(`static/build.mjs can not build static/built: ${said}.`);
  process.exitCode = 1;
});
