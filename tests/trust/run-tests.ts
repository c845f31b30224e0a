import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Tried } from './row';

const ROOT = join(import.meta.dirname, '..', '..');

export interface TestRun {
  /** Tests that held, those that were left out not counted. */
  readonly passed: number;
  /** How many of them by file, as the file's path is reported. */
  readonly passedIn: ReadonlyMap<string, number>;
  readonly skipped: number;
  /** "file: test: what was said", one line each. */
  readonly failures: readonly string[];
}

interface Report {
  readonly numPassedTests: number;
  readonly numPendingTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly message: string;
    readonly status: string;
    readonly assertionResults: readonly {
      readonly fullName: string;
      readonly status: string;
      readonly failureMessages: readonly string[];
    }[];
  }[];
}

/**
 * Runs test files that stand elsewhere, for a row that they put to the test. A run that leaves no report,
 * or holds no test, has failed.
 *
 * @param project of vitest.config.ts
 * @param env sizes, where a file reads its own from the environment
 */
export async function runTests(
  project: string,
  files: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<TestRun> {
  const folder = join(ROOT, 'out', 'trust');
  mkdirSync(folder, { recursive: true });
  const report = join(folder, `${project}-${files.join('-').replaceAll(/[^a-z0-9]+/gi, '-')}.report.json`);
  rmSync(report, { force: true });
  const vitest = join(ROOT, 'node_modules', 'vitest', 'vitest.mjs');
  const args = ['run', '--project', project, '--reporter=json', `--outputFile.json=${report}`, ...files];
  const run = spawn(process.execPath, [vitest, ...args], {
    cwd: ROOT,
    stdio: 'ignore',
    env: { ...process.env, ...env },
  });
  await once(run, 'exit');
  return readRun(report, files.join(' '));
}

/**
 * What a run of tests wrote down of itself.
 *
 * @param report its path
 * @param what was run
 */
export function readRun(report: string, what: string): TestRun {
  const found = readReport(report);
  if (found === null)
    return { passed: 0, passedIn: new Map(), skipped: 0, failures: [`${what}: left no report`] };
  const failures = found.testResults.flatMap(({ name, status, message, assertionResults }) => {
    const failed = assertionResults.filter((test) => test.status === 'failed');
    if (status === 'failed' && failed.length === 0) return [`${name}: ${message}`];
    return failed.map(({ fullName, failureMessages: [said = ''] }) => `${fullName}: ${said.split('\n')[0]}`);
  });
  if (failures.length === 0 && found.numPassedTests === 0) failures.push(`${what}: held no test`);
  const passedIn = new Map(
    found.testResults.map(({ name, assertionResults }) => [
      name,
      assertionResults.filter(({ status }) => status === 'passed').length,
    ]),
  );
  return { passed: found.numPassedTests, passedIn, skipped: found.numPendingTests, failures };
}

/** Tests that try so many of something; none counts where one failed, or was left out. */
export async function tryAll(many: number, files: readonly string[]): Promise<Tried> {
  const run = await runTests('core', files);
  const whole = run.failures.length === 0 && run.skipped === 0;
  return { ...triedBy(run), tried: whole ? many : 0 };
}

/** Tests of which each tries one thing. */
export async function tryEach(files: readonly string[]): Promise<Tried> {
  return triedBy(await runTests('core', files));
}

/** What a run of tests of which each tries one thing says of a row. */
export function triedBy({ passed, skipped, failures }: Omit<TestRun, 'passedIn'>): Tried {
  return { tried: passed, failures, ...(skipped > 0 && { notRun: `${skipped} tests left out` }) };
}

function readReport(path: string): Report | null {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}
