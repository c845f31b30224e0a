import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isAtLeast } from './ensure.mjs';
import { inRoot } from './place.mjs';

const FETCH_LIMIT_MS = 60_000;

/**
 * Electron's program, by looking at files only: loading the package would begin to download it.
 * @param {Readonly<Record<string, string | undefined>>} [env]
 * @param {string} [home] the installed package
 */
export function electronBinary(env = process.env, home = inRoot('node_modules', 'electron')) {
  const elsewhere = env.ELECTRON_OVERRIDE_DIST_PATH;
  const named = join(home, 'path.txt');
  const program = existsSync(named) ? readFileSync(named, 'utf8') : usualName();
  const path = join(elsewhere ?? join(home, 'dist'), program);
  return existsSync(path) ? path : null;
}

function usualName() {
  if (process.platform === 'win32') return 'electron.exe';
  return process.platform === 'darwin' ? 'Electron.app/Contents/MacOS/Electron' : 'electron';
}

/**
 * Lets Electron's own installer fetch the program, where this Node can run it. Tried once: a machine
 * where it fails is not made to wait at every start.
 */
export async function fetchElectron() {
  const tried = inRoot('node_modules', '.leadwright-electron-tried');
  if (!isAtLeast([22, 12]) || existsSync(tried)) return null;
  console.log('Fetching Electron, once (a minute at most; Ctrl+C leaves) …');
  await runInstaller();
  const binary = electronBinary();
  if (binary === null) {
    writeFileSync(tried, '');
    console.log(`Electron could not be fetched. Remove ${tried} to have it tried again.`);
  }
  return binary;
}

/** @returns {Promise<void>} when the installer has ended, or its time is up */
function runInstaller() {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [inRoot('node_modules', 'electron', 'install.js')], {
      stdio: ['ignore', 'inherit', 'ignore'],
      timeout: FETCH_LIMIT_MS,
    });
    child.once('error', () => resolve());
    child.once('exit', () => resolve());
  });
}
