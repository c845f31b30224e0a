import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import type { BrowserDoor } from '../../electron/browser/door';
import type { openBuiltDoor } from '../../electron/browser/main';
import { findBrowser } from '../../electron/start/find-browser.mjs';

/** Starts the program as built. */
export async function openDoor(files: readonly string[]): Promise<BrowserDoor> {
  const built = new URL('../../dist/browser-door.mjs', import.meta.url).href;
  const door: { readonly openBuiltDoor: typeof openBuiltDoor } = await import(/* @vite-ignore */ built);
  return door.openBuiltDoor(files);
}

/** A home folder of its own, and beside it the program's own data. */
export async function withHome<T>(work: (home: string) => Promise<T>): Promise<T> {
  const home = mkdtempSync(join(tmpdir(), 'lw-home-'));
  const { HOME, LEADWRIGHT_DATA } = process.env;
  Object.assign(process.env, { HOME: home, LEADWRIGHT_DATA: `${home}-data` });
  try {
    return await work(home);
  } finally {
    if (HOME === undefined) delete process.env.HOME;
    else process.env.HOME = HOME;
    if (LEADWRIGHT_DATA === undefined) delete process.env.LEADWRIGHT_DATA;
    else process.env.LEADWRIGHT_DATA = LEADWRIGHT_DATA;
    for (const folder of [home, `${home}-data`]) rmSync(folder, { recursive: true, force: true });
  }
}

/** A browser that keeps nothing from one use to the next. */
export async function withBrowser<T>(work: (browser: Browser) => Promise<T>): Promise<T> {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error('There is no browser of the Chromium family');
  const browser = await chromium.launch({ executablePath, args: ['--disable-gpu'] });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
}
