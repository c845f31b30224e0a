import { spawn } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { openBrowserWindow } from './browser-window.mjs';
import { build } from './build.mjs';
import { electronBinary, fetchElectron } from './electron-binary.mjs';
import { ensureReady } from './ensure.mjs';
import { findBrowser } from './find-browser.mjs';
import { fromWhereTyped, inRoot, ROOT } from './place.mjs';

const SMOKE_LIMIT_MS = 60_000;
const EARLY_MS = 10_000;

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    browser: { type: 'boolean', default: false },
    smoke: { type: 'boolean', default: false },
  },
});
const files = positionals.map(fromWhereTyped);

ensureReady();
process.exitCode = await start();

/** @returns {Promise<number>} the exit code */
async function start() {
  const binary = asked.browser || isRootOnLinux() ? null : (electronBinary() ?? (await fetchElectron()));
  if (binary !== null && (await openInElectron(binary))) return 0;
  return openInBrowser();
}

/** Electron's sandbox does not work for root; it is not switched off, the browser is used instead. */
function isRootOnLinux() {
  return process.platform === 'linux' && process.getuid?.() === 0;
}

/**
 * @param {string} binary
 * @returns {Promise<boolean>} whether the window came up; false when Electron gave up at once
 */
async function openInElectron(binary) {
  await build(['page', 'main', 'preload']);
  const began = Date.now();
  const args = [ROOT, ...(asked.smoke ? ['--smoke'] : []), '--', ...files];
  const code = await new Promise((resolve) => {
    const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env;
    const child = spawn(binary, args, { stdio: 'inherit', env });
    child.once('error', () => resolve(1));
    child.once('exit', resolve);
  });
  if (code === 0 || Date.now() - began > EARLY_MS) return true;
  console.log('Electron did not start here. The window opens in the browser instead.');
  return false;
}

/** @returns {Promise<number>} */
async function openInBrowser() {
  await build(['page', 'door']);
  const { openBuiltDoor } = await import(pathToFileURL(inRoot('dist', 'browser-door.mjs')).href);
  /** @type {import('../browser/door').BrowserDoor} */
  const door = await openBuiltDoor(files);
  const browser = hasScreen() || asked.smoke ? findBrowser() : null;
  if (browser === null) {
    if (asked.smoke) return leave(door, 'Smoke: not run, no browser of the Chromium family was found.', 1);
    console.log(`Open this address in a browser on this machine, within half a minute:\n${door.startUrl()}`);
    await door.ended;
    return 0;
  }
  const window = openBrowserWindow(browser, door.startUrl(), { headless: asked.smoke });
  if (asked.smoke) return smoke(door, window);
  console.log('Leadwright is open in a browser window. Closing the window ends it.');
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, window.close);
  await window.closed;
  return leave(door, null, 0);
}

/**
 * @param {import('../browser/door').BrowserDoor} door
 * @param {ReturnType<typeof openBrowserWindow>} window
 */
async function smoke(door, window) {
  const late = new Promise((resolve) => setTimeout(resolve, SMOKE_LIMIT_MS, 'late').unref());
  const first = await Promise.race([door.shown, window.closed.then(() => 'closed'), late]);
  window.close();
  await window.closed;
  if (first === undefined) return leave(door, 'Smoke: the page rendered and reached the machine.', 0);
  return leave(door, 'Smoke: failed, no page showed itself.', 1);
}

/**
 * @param {import('../browser/door').BrowserDoor} door
 * @param {string | null} words
 * @param {number} code
 */
async function leave(door, words, code) {
  if (words !== null) console.log(words);
  door.close();
  await door.ended;
  return code;
}

function hasScreen() {
  if (process.platform !== 'linux') return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}
