import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import type { BrowserDoor } from '../../electron/browser/door';
import { findBrowser } from '../../electron/start/find-browser.mjs';
import { openDoor } from './built-program';
import { gatherComplaints } from './complaints';
import { foreignHosts, netLogArgs } from './net-log';

/** A machine to work at: a home folder of its own, the door as built, windows in a real browser. */
export interface Workplace {
  /** The home folder; the window's own dialogs begin here. */
  readonly home: string;
  /** Opens a window. Files named here are opened by it, as when named on the command line. */
  readonly open: (files?: readonly string[], look?: BrowserContextOptions) => Promise<Page>;
  /** Ends the program with all its windows, without a question; `open` starts it again. */
  readonly kill: () => Promise<void>;
}

/**
 * A workplace for each test of a file, or one for all of its tests. Holds every test to bringing
 * about nothing on the console, nothing against the page's policy and no request to elsewhere; and all tests
 * of a file to that the browser looked up no other host for the window.
 */
export function workplaceFor(whom: 'each test' | 'all tests'): Workplace {
  let browser: Browser;
  let netLog = '';
  let home = '';
  let door: BrowserDoor | null = null;
  const complaints: string[] = [];
  const { HOME } = process.env;

  const begin = () => {
    home = mkdtempSync(join(tmpdir(), 'lw-e2e-'));
    process.env.HOME = home;
    // Beside the home folder, so that the window's own dialogs do not list it.
    process.env.LEADWRIGHT_DATA = `${home}-data`;
  };
  const kill = async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    door?.close();
    await door?.ended;
    door = null;
  };
  const end = async () => {
    await kill();
    if (HOME === undefined) delete process.env.HOME;
    else process.env.HOME = HOME;
    for (const folder of [home, `${home}-data`]) rmSync(folder, { recursive: true, force: true });
  };

  beforeAll(async () => {
    const executablePath = findBrowser();
    if (executablePath === null) throw new Error('There is no browser of the Chromium family');
    netLog = join(mkdtempSync(join(tmpdir(), 'lw-net-')), 'net.json');
    browser = await chromium.launch({ executablePath, args: ['--disable-gpu', ...netLogArgs(netLog)] });
    if (whom === 'all tests') begin();
  });
  afterAll(async () => {
    if (whom === 'all tests') await end();
    await browser.close();
    expect(foreignHosts(netLog)).toEqual([]);
    rmSync(dirname(netLog), { recursive: true, force: true });
  });
  beforeEach(() => {
    if (whom === 'each test') begin();
  });
  afterEach(async () => {
    if (whom === 'each test') await end();
    expect(complaints.splice(0)).toEqual([]);
  });

  const open: Workplace['open'] = async (files = [], look = {}) => {
    if (door !== null && files.length > 0) throw new Error('The program runs already');
    door ??= await openDoor(files);
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...look });
    await gatherComplaints(context, complaints);
    const page = await context.newPage();
    page.setDefaultTimeout(15_000);
    await page.goto(door.startUrl());
    await page.getByRole('heading', { level: 1, name: files.length > 0 ? /^(?!Leadwright)/ : '' }).waitFor();
    return page;
  };

  return {
    get home() {
      return home;
    },
    open,
    kill,
  };
}
