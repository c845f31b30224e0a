import { loadavg } from 'node:os';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { inRoot } from '../../electron/start/place.mjs';
import { begin } from './apart';

const LONGEST_MS = 180_000;

/**
 * Opens the door as built with a file, and leads a new page to it.
 *
 * @param prepare what the page is to be told before anything of it is loaded
 */
export async function withWindow<T>(
  browser: Browser,
  file: string,
  prepare: (context: BrowserContext) => Promise<void>,
  work: (page: Page) => Promise<T>,
): Promise<T> {
  const door = await begin(inRoot('tests', 'size', 'door-apart.mjs'), [file]);
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    await prepare(context);
    const page = await context.newPage();
    page.setDefaultTimeout(LONGEST_MS);
    await page.goto(door.url);
    return await work(page);
  } finally {
    await context.close();
    await door.end();
  }
}

/** How busy the machine is: figures are only to be read beside it. */
export function load(): string {
  return `load ${(loadavg()[0] ?? 0).toFixed(1)}`;
}
