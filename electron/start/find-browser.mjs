import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const PATH_NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
  'brave-browser',
];

const MAC_APPS = ['Google Chrome', 'Chromium', 'Microsoft Edge', 'Brave Browser'];

const WINDOWS_PLACES = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/**
 * A browser of the Chromium family: the one LEADWRIGHT_BROWSER names, or the first found where this
 * system keeps such programs. Null when there is none.
 * @param {Readonly<Record<string, string | undefined>>} [env]
 * @param {string} [platform]
 */
export function findBrowser(env = process.env, platform = process.platform) {
  return candidates(env, platform).find(isProgram) ?? null;
}

/**
 * @param {Readonly<Record<string, string | undefined>>} env
 * @param {string} platform
 * @returns {string[]}
 */
function candidates(env, platform) {
  const named = env.LEADWRIGHT_BROWSER;
  if (named) return [named];
  if (platform === 'darwin') return MAC_APPS.map((app) => `/Applications/${app}.app/Contents/MacOS/${app}`);
  if (platform === 'win32') {
    return [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => WINDOWS_PLACES.map((place) => join(folder, place)));
  }
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return PATH_NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
