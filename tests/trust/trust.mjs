import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from '../../electron/start/build.mjs';
import { ensureReady } from '../../electron/start/ensure.mjs';
import { ensureBrowser } from '../../electron/start/ensure-browser.mjs';
import { inRoot } from '../../electron/start/place.mjs';
import { runTool } from '../../electron/start/run-tool.mjs';
import {
  afterRun,
  besidePromises,
  outcomeOf,
  ROW_IDS,
  stands,
  tableForDocs,
  tableForTerminal,
  withTable,
} from './verdict.mjs';

/**
 * Puts every promise to the test and prints one table; fails where one did not hold or was tried too seldom.
 *
 * npm run trust [-- R1 S6]          these rows only
 * npm run trust -- --into-docs      and the table goes into DEVELOPERS.md
 * npm run soak                      the long rows
 * npm run soak -- R13 --minutes=5   the robot for as long
 * npm run soak -- R10 --sequences=9 fewer of them, to see that it runs
 * npm run soak -- R10 --seed=7      one sequence alone, such as one that failed
 *
 * What came of a row last is kept in results.json with its day and commit, so that the table is always whole:
 * nobody runs all of it at once. What came of a part of a row is shown and not kept.
 */
const RESULTS = inRoot('tests', 'trust', 'results.json');
const DOCS = inRoot('DEVELOPERS.md');

/** Options that make a row smaller, and the variables that it reads them from. */
const PARTS = {
  minutes: 'LEADWRIGHT_SOAK_MINUTES',
  sequences: 'LEADWRIGHT_UNDO_SEQUENCES',
  seed: 'LEADWRIGHT_SOAK_SEED',
};

const args = process.argv.slice(2);
const soak = args.includes('--soak');
const smaller = Object.fromEntries(
  Object.entries(PARTS).flatMap(([option, name]) => {
    const value = args.find((arg) => arg.startsWith(`--${option}=`))?.slice(`--${option}=`.length);
    return value === undefined ? [] : [[name, value]];
  }),
);
const isPart = Object.keys(smaller).length > 0;
const intoDocs = args.includes('--into-docs');
if (isPart && intoDocs) {
  console.error(
    '--into-docs: a part of a row says nothing of the whole; expected no --minutes, --sequences or --seed.',
  );
  process.exit(2);
}
const ids = args.filter((arg) => !arg.startsWith('--')).map((arg) => arg.toUpperCase());
const unknown = ids.filter((id) => !ROW_IDS.includes(id));
if (unknown.length > 0) {
  console.error(`${unknown.join(', ')}: expected rows from ${ROW_IDS[0]} to ${ROW_IDS.at(-1)}.`);
  process.exit(2);
}

ensureReady();
await build(['page', 'door', 'cli', 'schemas']);
rmSync(inRoot('out', 'trust'), { recursive: true, force: true });
// Of the beginning: somebody may commit while rows run for hours.
const stamp = { on: new Date().toISOString().slice(0, 10), commit: commit() };
runTool('vitest', ['run', '--project', 'trust'], {
  LEADWRIGHT_BROWSER: ensureBrowser() ?? '',
  LEADWRIGHT_TRUST_ROWS: ids.length > 0 ? ids.join(',') : soak ? 'long' : '',
  ...smaller,
});

const results = besidePromises(
  afterRun(
    new Map(Object.entries(readJson(RESULTS) ?? {})),
    new Map(
      ROW_IDS.map((id) => [id, readJson(inRoot('out', 'trust', `${id}.json`))]).filter(
        ([, ran]) => ran !== null,
      ),
    ),
    { ids, soak },
    stamp,
  ),
  readJson(inRoot('out', 'trust', 'promises.json')) ?? {},
);
if (!isPart) keep();

const shown = ids.length > 0 ? ids : ROW_IDS;
console.log(`\n${tableForTerminal(shown, results)}\n`);
for (const id of shown) {
  const failures = results.get(id)?.failures ?? [];
  for (const failure of failures.slice(0, 20)) console.log(`${id}: ${failure}`);
  if (failures.length > 20) console.log(`${id}: and ${failures.length - 20} more`);
}
const bad = shown.filter((id) => {
  const outcome = outcomeOf(results.get(id));
  return !stands(outcome) && !(isPart && outcome === 'below target');
});
const good = isPart ? 'Nothing failed in this part of it; nothing is kept of it.' : 'Every row stands.';
console.log(bad.length === 0 ? good : `Does not stand: ${bad.join(', ')}.`);
if (intoDocs) {
  writeFileSync(DOCS, withTable(readFileSync(DOCS, 'utf8'), tableForDocs(ROW_IDS, results)));
  runTool('biome', ['format', '--write', DOCS]);
}
process.exitCode = bad.length === 0 ? 0 : 1;

function keep() {
  const kept = ROW_IDS.flatMap((id) => {
    const result = results.get(id);
    if (result === undefined) return [];
    const { promise, target, long, tried, failures, notRun } = result;
    const { on, commit } = result;
    return [[id, { id, on, commit, promise, target, long, tried, failures, notRun }]];
  });
  writeFileSync(RESULTS, `${JSON.stringify(Object.fromEntries(kept), null, 2)}\n`);
  runTool('biome', ['format', '--write', RESULTS]);
}

/** @returns {string | undefined} what was run, where the history is at hand */
function commit() {
  try {
    return execFileSync('git', ['rev-parse', '--short', 'HEAD'], { cwd: inRoot(), encoding: 'utf8' }).trim();
  } catch {
    return undefined;
  }
}

/** @param {string} path */
function readJson(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}
