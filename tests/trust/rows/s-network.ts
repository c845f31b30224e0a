import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { inRoot } from '../../../electron/start/place.mjs';
import type { Tried, TrustRow } from '../row';
import { readRun, runTests, type TestRun, triedBy } from '../run-tests';

/** As many as there were when this was written: a run with fewer has lost some. */
const E2E_TESTS = 252;
/** Of these, in files whose windows are watched for what goes against the policy. */
const AT_WORKPLACES = 221;
/** Of the command line and the door under the watch, and of that it sees what is asked. */
const WATCHED_TESTS = 23;
/** What `alone.mjs` ends with where no network can be made. */
const NO_NETWORK = 3;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'S4',
    promise: 'A stranger’s request to the browser door is refused before anything is done for it',
    target: { count: 60, what: 'hostile requests, pages of other sites and DNS rebinding among them' },
    run: async () => {
      const raw = await runTests('core', ['tests/electron/browser/strangers.test.ts']);
      const pages = await runTests('e2e', ['tests/e2e/strangers.test.ts']);
      return { tried: raw.passed + pages.passed, failures: [...raw.failures, ...pages.failures] };
    },
  },
  {
    id: 'S5',
    promise:
      'The program needs no network, and its window looks up no other host; every command and every call of the door asks the system for no name, and for no address but of this machine',
    target: {
      count: E2E_TESTS + WATCHED_TESTS,
      what: `tests: ${E2E_TESTS} end to end in a network that holds this machine alone, ${WATCHED_TESTS} under a watch of what the C library is asked for`,
    },
    run: async () => {
      const whole = triedAlone(await wholeRun());
      const watched = triedBy(await runTests('faults', ['tests/faults/network.test.ts']));
      const notRun = [whole.notRun, watched.notRun].filter((why) => why !== undefined).join('; ');
      return {
        tried: whole.tried + watched.tried,
        failures: [...whole.failures, ...watched.failures],
        ...(notRun !== '' && { notRun }),
      };
    },
  },
  {
    id: 'S13',
    promise: 'The window’s policy is exactly what it has to be, and nothing of the window goes against it',
    target: { count: AT_WORKPLACES, what: 'end-to-end tests that are watched, without one violation' },
    run: async () => {
      const exact = await runTests('core', ['tests/electron/browser/our-page.test.ts']);
      const run = await wholeRun();
      if (typeof run === 'string') return { tried: 0, failures: exact.failures, notRun: run };
      const watched = [...run.passedIn].filter(([file]) => isWatched(file));
      const tried = watched.reduce((sum, [, passed]) => sum + passed, 0);
      return { ...triedBy({ ...run, passed: tried }), failures: [...exact.failures, ...run.failures] };
    },
  },
];

/** What the run says of a row that all of its tests speak for. */
function triedAlone(run: TestRun | string): Tried {
  return typeof run === 'string' ? { tried: 0, failures: [], notRun: run } : triedBy(run);
}

let before: Promise<TestRun | string> | undefined;

/** The whole end-to-end run, once for every row that it speaks for; or why it cannot be run here. */
function wholeRun(): Promise<TestRun | string> {
  before ??= runAlone();
  return before;
}

/** A test fails at what goes against the policy where its windows are those of a workplace; others are not watched. */
function isWatched(file: string): boolean {
  return readFileSync(file, 'utf8').includes('workplaceFor(');
}

async function runAlone(): Promise<TestRun | string> {
  const folder = inRoot('out', 'trust');
  mkdirSync(folder, { recursive: true });
  const report = `${folder}/e2e-alone.report.json`;
  rmSync(report, { force: true });
  const args = ['--reporter=json', `--outputFile.json=${report}`];
  const run = spawn(process.execPath, [inRoot('tests', 'e2e', 'alone.mjs'), ...args], { stdio: 'ignore' });
  const [code] = await once(run, 'exit');
  if (code === NO_NETWORK) return 'no network can be made here (unshare)';
  return readRun(report, 'the end-to-end tests alone');
}
