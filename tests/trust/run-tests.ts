import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..', '..');

export interface TestRun {
  /** Tests that held, those that were left out not counted. */
  readonly passed: number;
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
  const found = readReport(report);
  if (found === null) return { passed: 0, skipped: 0, failures: [`${files.join(' ')}: left no report`] };
  const failures = found.testResults.flatMap(({ name, status, message, assertionResults }) => {
    const failed = assertionResults.filter((test) => test.status === 'failed');
    if (status === 'failed' && failed.length === 0) return [`${name}: ${message}`];
    return failed.map(({ fullName, failureMessages: [said = ''] }) => `${fullName}: ${said.split('\n')[0]}`);
  });
  if (failures.length === 0 && found.numPassedTests === 0) failures.push(`${files.join(' ')}: held no test`);
  return { passed: found.numPassedTests, skipped: found.numPendingTests, failures };
}

function readReport(path: string): Report | null {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return null;
  }
}
