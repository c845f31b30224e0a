import { mkdtempSync, rmSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import type { openBuiltDoor } from '../../electron/browser/main';
import { findBrowser } from '../../electron/start/find-browser.mjs';
import { inRoot } from '../../electron/start/place.mjs';

const LONGEST_MS = 180_000;

/** A folder of its own for the files that are opened and the program's own data. */
export async function withPlace<T>(work: (home: string) => Promise<T>): Promise<T> {
  const home = mkdtempSync(join(tmpdir(), 'lw-size-'));
  const { HOME, LEADWRIGHT_DATA } = process.env;
  Object.assign(process.env, { HOME: home, LEADWRIGHT_DATA: `${home}-data` });
  try {
    return await work(home);
  } finally {
    process.env.HOME = HOME;
    if (LEADWRIGHT_DATA === undefined) delete process.env.LEADWRIGHT_DATA;
    else process.env.LEADWRIGHT_DATA = LEADWRIGHT_DATA;
    for (const folder of [home, `${home}-data`]) rmSync(folder, { recursive: true, force: true });
  }
}

/** A browser that keeps nothing from one use to the next. */
export async function withBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: ['--disable-gpu'] });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}

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
  const built: { readonly openBuiltDoor: typeof openBuiltDoor } = await import(
    /* @vite-ignore */ inRoot('dist', 'browser-door.mjs')
  );
  const door = await built.openBuiltDoor([file]);
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  try {
    await prepare(context);
    const page = await context.newPage();
    page.setDefaultTimeout(LONGEST_MS);
    await page.goto(door.startUrl());
    return await work(page);
  } finally {
    await context.close();
    door.close();
    await door.ended;
  }
}

/** How busy the machine is: figures are only to be read beside it. */
export function load(): string {
  return `load ${(loadavg()[0] ?? 0).toFixed(1)}`;
}
