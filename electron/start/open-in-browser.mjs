import { pathToFileURL } from 'node:url';
import { openBrowserWindow } from './browser-window.mjs';
import { build } from './build.mjs';
import { findBrowser } from './find-browser.mjs';
import { inRoot } from './place.mjs';

const SMOKE_LIMIT_MS = 60_000;

/** @typedef {import('../browser/door').BrowserDoor} BrowserDoor */

/**
 * Opens the window in the system's browser and waits until it is closed. Without a screen or a browser,
 * the address is printed instead.
 * @param {readonly string[]} files
 */
export async function openInBrowser(files) {
  const door = await openDoor(files);
  const browser = hasScreen() ? findBrowser() : null;
  if (browser === null) {
    console.log(`Open this address in a browser on this machine, within half a minute:\n${door.startUrl()}`);
    return door.ended;
  }
  const window = openBrowserWindow(browser, door.startUrl());
  console.log('Leadwright is open in a browser window. Closing the window ends it.');
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, window.close);
  await window.closed;
  door.close();
  return door.ended;
}

/**
 * Opens it out of sight and leaves as soon as the page has shown itself.
 * @returns {Promise<boolean>} whether it has
 */
export async function smokeInBrowser() {
  const browser = findBrowser();
  if (browser === null) return false;
  const door = await openDoor([]);
  const window = openBrowserWindow(browser, door.startUrl(), { headless: true });
  const late = new Promise((resolve) => setTimeout(resolve, SMOKE_LIMIT_MS).unref());
  const shown = door.shown.then(() => true);
  const first = await Promise.race([shown, window.closed, late]);
  window.close();
  await window.closed;
  door.close();
  await door.ended;
  return first === true;
}

/**
 * @param {readonly string[]} files
 * @returns {Promise<BrowserDoor>}
 */
async function openDoor(files) {
  await build(['page', 'door']);
  const { openBuiltDoor } = await import(pathToFileURL(inRoot('dist', 'browser-door.mjs')).href);
  return openBuiltDoor(files);
}

function hasScreen() {
  if (process.platform !== 'linux') return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}
