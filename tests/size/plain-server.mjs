import { readFileSync } from 'node:fs';
import { open, rename } from 'node:fs/promises';
import { createServer } from 'node:http';

const [file = '', page = ''] = process.argv.slice(2);

/**
 * The least that can keep a file: gives a page and a build, and writes the build that comes back. Checks nothing, keeps
 * nothing of before and knows no one. Sends where to go, and ends with whoever began it.
 */
const server = createServer((request, response) => void answer(request, response));
server.listen(0, '127.0.0.1', () => {
  const address = server.address();
  if (address !== null && typeof address === 'object') process.send?.(`http://127.0.0.1:${address.port}/`);
});
process.once('disconnect', () => process.exit());

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
async function answer(request, response) {
  if (request.method === 'POST') {
    const chunks = [];
    for await (const chunk of request) chunks.push(chunk);
    await writeWhole(JSON.stringify(JSON.parse(Buffer.concat(chunks).toString('utf8')), null, 2));
    response.end('Saved.');
  } else if (request.url === '/build.json') response.end(readFileSync(file));
  else {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(readFileSync(page));
  }
}

/**
 * Beside it, flushed, and renamed over it.
 * @param {string} text
 */
async function writeWhole(text) {
  const beside = await open(`${file}.new`, 'w');
  await beside.writeFile(text);
  await beside.sync();
  await beside.close();
  await rename(`${file}.new`, file);
}
