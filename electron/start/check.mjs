import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from './build.mjs';
import { ensureReady } from './ensure.mjs';
import { findBrowser } from './find-browser.mjs';
import { inRoot } from './place.mjs';
import { runTool } from './run-tool.mjs';
import { sum, tallyOf } from './tally.mjs';

/** @typedef {import('./tally.mjs').Tally} Tally */

/**
 * Everything that has to hold, in the order in which a mistake shows soonest. All of it is run, whatever fails.
 * @param {string | null} browser for the end-to-end tests
 * @returns {Promise<Tally>} each test counts one, and so does each of the other checks
 */
export async function checkEverything(browser) {
  const tallies = [
    one('Types', () => runTool('tsc', ['-b'])),
    one('Format and lint', () => runTool('biome', ['ci', '--error-on-warnings'])),
    one('Unused code', () => runTool('knip', [])),
    tests('core', {}),
  ];
  const built = await build(['page', 'door', 'main', 'preload', 'cli', 'schemas']).then(
    () => true,
    (thrown) => {
      console.error(thrown);
      return false;
    },
  );
  tallies.push(
    one('Build', () => built),
    tests('faults', {}),
  );
  if (browser === null)
    console.log('\nEnd-to-end tests: not run, there is no browser of the Chromium family.');
  else tallies.push(tests('e2e', { LEADWRIGHT_BROWSER: browser }));
  return sum(tallies);
}

/**
 * @param {string} title
 * @param {() => boolean} check
 * @returns {Tally}
 */
function one(title, check) {
  console.log(`\n${title} …`);
  const passed = check();
  console.log(`${title}: ${passed ? 'passed' : 'failed'}`);
  return { passed: passed ? 1 : 0, failed: passed ? 0 : 1, skipped: 0 };
}

/**
 * @param {string} project
 * @param {Readonly<Record<string, string>>} env
 * @returns {Tally}
 */
function tests(project, env) {
  console.log(`\nTests of the project ${project} …`);
  const report = inRoot('out', `${project}-tests.json`);
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  runTool('vitest', ['run', '--project', project, ...reporters], env);
  return tallyOf(report);
}

/**
 * The last line of a run, for people and for scripts.
 * @param {Tally} tally
 */
export function concludeWith({ passed, failed, skipped }) {
  if (skipped > 0) console.log(`${skipped} skipped`);
  console.log(`${passed} passed, ${failed} failed`);
  process.exitCode = failed === 0 ? 0 : 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureReady();
  concludeWith(await checkEverything(findBrowser()));
}
