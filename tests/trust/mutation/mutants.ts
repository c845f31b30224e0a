import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { inRoot } from '../../../electron/start/place.mjs';
import type { Tried } from '../row';
import { EQUIVALENTS, type Equivalent } from './equivalents';
import { GROUPS } from './groups.mjs';

const STRYKER = inRoot('node_modules', '@stryker-mutator', 'core', 'bin', 'stryker.js');
const RUNNER = inRoot('node_modules', '@stryker-mutator', 'vitest-runner', 'package.json');
const HOW =
  'Stryker is not among the packages; npm install --no-save @stryker-mutator/core@9.6.1 @stryker-mutator/vitest-runner@9.6.1';

/** What is asked of each group of modules. */
const LEAST_SHARE = 0.85;

/** Of the report that Stryker writes, what is needed here. */
interface Report {
  readonly files: Readonly<
    Record<string, { readonly source: string; readonly mutants: readonly ReportedMutant[] }>
  >;
}

interface ReportedMutant {
  readonly status: string;
  readonly replacement?: string;
  readonly location: { readonly start: { readonly line: number } };
}

interface Mutant extends Omit<Equivalent, 'why'> {
  readonly status: string;
  readonly lineNumber: number;
}

/** Changes every module of every group, one small thing at a time, and asks whether a test notices. */
export async function tryMutants(): Promise<Tried> {
  if (!existsSync(STRYKER) || !existsSync(RUNNER)) return { tried: 0, failures: [], notRun: HOW };
  const failures: string[] = [];
  let tried = 0;
  for (const group of Object.keys(GROUPS)) {
    const mutants = await mutantsOf(group);
    if (mutants === null) {
      failures.push(`${group}: Stryker left no report`);
      continue;
    }
    const judged = judge(group, mutants);
    tried += judged.counted;
    failures.push(...judged.failures);
    const { noticed, counted, equivalents } = judged;
    process.stdout.write(`${group}: ${noticed} of ${counted} noticed, ${equivalents} equivalent\n`);
  }
  return { tried, failures: [...failures, ...staleFiles()] };
}

async function mutantsOf(group: string): Promise<readonly Mutant[] | null> {
  const report = inRoot('out', 'trust', `mutants-${group}.json`);
  rmSync(report, { force: true });
  const settings = inRoot('tests', 'trust', 'mutation', 'stryker.mjs');
  const run = spawn(process.execPath, [STRYKER, 'run', settings], {
    cwd: inRoot(),
    stdio: 'ignore',
    env: { ...process.env, LEADWRIGHT_MUTATION: group },
  });
  await once(run, 'exit');
  if (!existsSync(report)) return null;
  const { files }: Report = JSON.parse(readFileSync(report, 'utf8'));
  return Object.entries(files).flatMap(([file, { source, mutants }]) =>
    mutants.map(({ status, replacement = '', location }) => ({
      file,
      status,
      replacement,
      lineNumber: location.start.line,
      line: source.split('\n')[location.start.line - 1]?.trim() ?? '',
    })),
  );
}

/**
 * What came of a group: a change that makes a test fail or run for ever is noticed; one that no test reaches is not.
 * Those with which the tests could not be run at all say nothing.
 */
export function judge(
  group: string,
  mutants: readonly Mutant[],
  equivalents: readonly Equivalent[] = EQUIVALENTS,
) {
  const valid = mutants.filter(({ status }) => NOTICED.includes(status) || UNNOTICED.includes(status));
  const isSame = (mutant: Mutant) => (one: Equivalent) =>
    one.file === mutant.file && one.line === mutant.line && one.replacement === mutant.replacement;
  const unnoticed = valid.filter(({ status }) => UNNOTICED.includes(status));
  const surviving = unnoticed.filter((mutant) => !equivalents.some(isSame(mutant)));
  const files = new Set(mutants.map(({ file }) => file));
  const stale = equivalents.filter(
    (one) => files.has(one.file) && !unnoticed.some((mutant) => isSame(mutant)(one)),
  );
  const counted = valid.length - (unnoticed.length - surviving.length);
  const noticed = counted - surviving.length;
  const low = counted === 0 || noticed < LEAST_SHARE * counted;
  return {
    counted,
    noticed,
    equivalents: unnoticed.length - surviving.length,
    failures: [
      ...(low ? surviving.map((mutant) => `${group}: ${placeOf(mutant)} is not noticed`) : []),
      ...(counted === 0 ? [`${group}: nothing was changed`] : []),
      ...stale.map(({ file, line }) => `${group}: ${file}: not equivalent, or gone: ${line}`),
    ],
  };
}

const NOTICED: readonly string[] = ['Killed', 'Timeout'];
const UNNOTICED: readonly string[] = ['Survived', 'NoCoverage'];

function placeOf({ file, lineNumber, replacement }: Mutant): string {
  return `${file}:${lineNumber}: ${replacement.replaceAll(/\s+/g, ' ').slice(0, 80)}`;
}

/** Equivalents of files that no group has. */
function staleFiles(): readonly string[] {
  const known = Object.values(GROUPS).flatMap(({ modules }) => modules);
  return EQUIVALENTS.filter(({ file }) => !known.includes(file)).map(({ file }) => `${file} is in no group`);
}
