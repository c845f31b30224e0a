import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { open, rename } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser } from 'playwright-core';
import { build as bundle } from 'vite';
import { inRoot } from '../../electron/start/place.mjs';

/** What the plain program takes for what is measured of ours, in milliseconds. */
interface PlainTimes {
  /** From navigation to the picture. */
  readonly openMs: number;
  /** From the wish to the word. */
  readonly saveMs: number;
}

interface PlainPage {
  readonly drawn: Promise<number>;
  savePlain(): Promise<number>;
}

/** The page that draws a build on one plain canvas and sends it back, as one script. */
export async function plainScript(): Promise<string> {
  const result = await bundle({
    configFile: false,
    root: inRoot(),
    logLevel: 'error',
    publicDir: false,
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      write: false,
      lib: { entry: inRoot('tests', 'size', 'plain-page.ts'), formats: ['iife'], name: 'plainPage' },
    },
  });
  const [made] = [result].flat();
  const chunk = made !== undefined && 'output' in made ? made.output[0] : undefined;
  if (chunk === undefined) throw new Error('The plain page was not built');
  return chunk.code;
}

/**
 * The least that opening and saving a file can take in a browser here: a page of one canvas, and a server that checks
 * nothing, keeps nothing of before and knows no one.
 */
export async function plainTimes(browser: Browser, script: string, file: string): Promise<PlainTimes> {
  const theme = readFileSync(inRoot('renderer', 'look', 'theme.css'), 'utf8');
  const html = `<!doctype html><style>${theme}</style><body></body><script>${script}</script>`;
  const server = createServer((request, response) => void answer(html, file, request, response));
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const openMs = await page.evaluate(() => (globalThis as unknown as PlainPage).drawn);
    const saveMs = await page.evaluate(() => (globalThis as unknown as PlainPage).savePlain());
    return { openMs, saveMs };
  } finally {
    await page.close();
    server.close();
    server.closeAllConnections();
  }
}

async function answer(
  html: string,
  file: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if (request.method === 'POST') {
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(chunk);
    await writeWhole(file, JSON.stringify(JSON.parse(Buffer.concat(chunks).toString('utf8')), null, 2));
    response.end('Saved.');
  } else if (request.url === '/build.json') response.end(readFileSync(file));
  else {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(html);
  }
}

/** Beside it, flushed, and renamed over it. */
async function writeWhole(file: string, text: string): Promise<void> {
  const beside = await open(`${file}.new`, 'w');
  await beside.writeFile(text);
  await beside.sync();
  await beside.close();
  await rename(`${file}.new`, file);
}
