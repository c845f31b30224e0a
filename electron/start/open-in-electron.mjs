import { spawn } from 'node:child_process';
import { build } from './build.mjs';
import { ROOT } from './place.mjs';

const EARLY_MS = 10_000;

/**
 * Opens the window in Electron and waits until it is closed.
 * @param {string} binary
 * @param {readonly string[]} files
 * @param {{ smoke: boolean }} options with smoke, it leaves as soon as its page has shown itself
 * @returns {Promise<boolean>} false when it gave up at once, and no window was there
 */
export async function openInElectron(binary, files, { smoke }) {
  await build(['page', 'main', 'preload']);
  const began = Date.now();
  // Set in terminals that belong to an Electron program; with it Electron would be a mere Node.
  const { ELECTRON_RUN_AS_NODE: _, ...env } = process.env;
  const code = await new Promise((resolve) => {
    const child = spawn(binary, [ROOT, ...(smoke ? ['--smoke'] : []), '--', ...files], {
      stdio: 'inherit',
      env,
    });
    child.once('error', () => resolve(1));
    child.once('exit', resolve);
  });
  return code === 0 || (!smoke && Date.now() - began > EARLY_MS);
}
