import { readFileSync, writeFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { build as bundle } from 'vite';
import { inRoot } from '../../electron/start/place.mjs';
import { begin } from './apart';

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

/** The least that opening and saving a file can take in a browser here: a page of one canvas, and a plain server. */
export async function plainTimes(browser: Browser, script: string, file: string): Promise<PlainTimes> {
  const theme = readFileSync(inRoot('renderer', 'look', 'theme.css'), 'utf8');
  const html = `${file}.html`;
  writeFileSync(html, `<!doctype html><style>${theme}</style><body></body><script>${script}</script>`);
  const server = await begin(inRoot('tests', 'size', 'plain-server.mjs'), [file, html]);
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    await page.goto(server.url);
    const openMs = await page.evaluate(() => (globalThis as unknown as PlainPage).drawn);
    const saveMs = await page.evaluate(() => (globalThis as unknown as PlainPage).savePlain());
    return { openMs, saveMs };
  } finally {
    await page.close();
    await server.end();
  }
}
