import { spawnSync } from 'node:child_process';
import { checkEverything, concludeWith } from './check.mjs';
import { electronBinary } from './electron-binary.mjs';
import { ensureReady } from './ensure.mjs';
import { ensureBrowser } from './ensure-browser.mjs';
import { ensurePoppler } from './ensure-poppler.mjs';
import { inRoot } from './place.mjs';
import { sum } from './tally.mjs';

ensureReady();
ensurePoppler();
const everything = await checkEverything(ensureBrowser());
concludeWith(sum([everything, ...shell()]));

/**
 * The Electron shell itself, where it can be run; where it cannot, that is said and not counted.
 * @returns {import('./tally.mjs').Tally[]}
 */
function shell() {
  const why = whyNoShell();
  if (why !== null) {
    console.log(`\nElectron shell: not run, ${why}.`);
    return [];
  }
  const run = spawnSync(process.execPath, [inRoot('electron', 'start', 'start.mjs'), '--smoke'], {
    stdio: 'inherit',
  });
  const passed = run.status === 0;
  console.log(`\nElectron shell: ${passed ? 'passed' : 'failed'}`);
  return [{ passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 }];
}

/** @returns {string | null} */
function whyNoShell() {
  if (electronBinary() === null) return 'its program is not installed';
  if (process.getuid?.() === 0) return 'its sandbox does not work for root';
  const hasScreen = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  return hasScreen ? null : 'there is no screen';
}
