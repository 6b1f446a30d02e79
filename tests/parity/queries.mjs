// How the service worker reads a query: one per line of standard input, its pairs as JSON per line of output.
import { createInterface } from 'node:readline';

for await (const line of createInterface({ input: process.stdin })) {
  const url = new URL(`http://localhost/specimen?${JSON.parse(line)}`);
  process.stdout.write(`${JSON.stringify([...url.searchParams])}\n`);
}
