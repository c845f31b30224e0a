import { spawn } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const QUIET = [
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--password-store=basic',
];

/**
 * Opens a browser window of its own at that address, and settles when the window has been closed. The
 * address holds the start code, and other people on the machine can read command lines: the browser is
 * given a file that only we can read, which sends it on.
 * @param {string} browser
 * @param {string} url
 * @param {{ headless?: boolean }} [options]
 * @returns {{ closed: Promise<void>, close: () => void }}
 */
export function openBrowserWindow(browser, url, { headless = false } = {}) {
  const profile = mkdtempSync(join(tmpdir(), 'leadwright-'));
  const page = join(profile, 'start.html');
  writeFileSync(page, startPage(url), { mode: 0o600 });
  const args = [`--app=${pathToFileURL(page).href}`, `--user-data-dir=${profile}`, ...QUIET, ...rootOnly()];
  if (headless) args.push('--headless', '--disable-gpu');
  const child = spawn(browser, args, { stdio: 'ignore' });
  /** @type {Promise<void>} */
  const closed = new Promise((resolve) => {
    child.once('error', () => resolve());
    child.once('exit', () => resolve());
  });
  return {
    closed: closed.then(() => removeProfile(profile)),
    close: () => child.kill(),
  };
}

/**
 * The browser's last processes may still write for a moment after the first has ended.
 * @param {string} profile
 */
async function removeProfile(profile) {
  for (let left = 20; left > 0; left--) {
    try {
      return await rm(profile, { recursive: true, force: true });
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

/** Chromium cannot sandbox itself for root, and says so in a bar over the page unless it is told of a test. */
function rootOnly() {
  return process.getuid?.() === 0 ? ['--no-sandbox', '--test-type'] : [];
}

/** @param {string} url made of a port and a code: nothing in it has a meaning in HTML */
function startPage(url) {
  return `<!doctype html><meta charset="utf-8"><title>Leadwright</title><meta http-equiv="refresh" content="0;url=${url}">`;
}
