import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import type { openBuiltDoor } from '../../electron/browser/main';
import { findBrowser } from '../../electron/start/find-browser.mjs';
import { inRoot } from '../../electron/start/place.mjs';
import { gatherComplaints } from '../e2e/complaints';

/** The program as built, with a home folder of its own, and windows of it in a browser. */
export interface BuiltWindow {
  readonly home: string;
  /** Errors, words on the console, what goes against the policy; grows. */
  readonly complaints: string[];
  readonly openWindow: () => Promise<{ readonly context: BrowserContext; readonly page: Page }>;
}

/**
 * Starts the program, works with it, and ends it.
 *
 * @param filesIn lays files into the home folder; those it names are opened
 */
export async function withBuiltWindow<T>(
  filesIn: (home: string) => readonly string[],
  work: (built: BuiltWindow) => Promise<T>,
): Promise<T> {
  const home = mkdtempSync(join(tmpdir(), 'lw-soak-'));
  const files = filesIn(home);
  Object.assign(process.env, { HOME: home, LEADWRIGHT_DATA: `${home}-data` });
  const built: { readonly openBuiltDoor: typeof openBuiltDoor } = await import(
    /* @vite-ignore */ inRoot('dist', 'browser-door.mjs')
  );
  const door = await built.openBuiltDoor(files);
  const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: ['--disable-gpu'] });
  const complaints: string[] = [];
  const openWindow = async () => {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    await gatherComplaints(context, complaints);
    const page = await context.newPage();
    await page.goto(door.startUrl());
    await page.getByRole('banner').waitFor();
    return { context, page };
  };
  try {
    return await work({ home, complaints, openWindow });
  } finally {
    await browser.close();
    door.close();
    await door.ended;
    for (const folder of [home, `${home}-data`]) rmSync(folder, { recursive: true, force: true });
  }
}
