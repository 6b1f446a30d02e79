// The phone's Python under node. Reads {"files": ...} from the bundle file named first, then one JSON array
// [path, pairs, partial, language, build] per line of standard input. Writes one line per reply: its SHA-256,
// or, with `bodies` as the second argument, the reply itself as a JSON string. What was raised is always told.
import { createHash } from 'node:crypto';
import { createInterface } from 'node:readline';
import { readFile } from 'node:fs/promises';
import { loadMicroPython } from '../../static/node_modules/@micropython/micropython-webassembly-pyscript/micropython.mjs';

const { files } = JSON.parse(await readFile(process.argv[2], 'utf8'));
const whole = process.argv[3] === 'bodies';
// The same heap and stack as the service worker gives it.
const python = await loadMicroPython({ heapsize: 2 * 1024 * 1024, pystack: 4096, stdout: line => console.error(line) });
const made = new Set();
python.FS.mkdir('/book');
for (const [path, source] of Object.entries(files)) {
  const parts = path.split('/').slice(0, -1);
  for (let depth = 1; depth <= parts.length; depth++) {
    const folder = `/book/${parts.slice(0, depth).join('/')}`;
    if (!made.has(folder)) python.FS.mkdir(folder);
    made.add(folder);
  }
  python.FS.writeFile(`/book/${path}`, new TextEncoder().encode(source));
}
python.runPython('import sys\nsys.path.insert(0, "/book")\nfrom webapp.pocket import respond_text');
const respond = python.globals.get('respond_text');

for await (const line of createInterface({ input: process.stdin })) {
  const [path, pairs, partial, language, build] = JSON.parse(line);
  let out;
  try {
    const reply = respond(path, JSON.stringify(pairs), partial, language, build);
    out = whole ? JSON.stringify(reply) : createHash('sha256').update(reply).digest('hex');
  } catch (error) {
    out = JSON.stringify(`raised ${error}`);
  }
  process.stdout.write(`${out}\n`);
}
