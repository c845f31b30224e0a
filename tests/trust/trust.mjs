import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from '../../electron/start/build.mjs';
import { ensureReady } from '../../electron/start/ensure.mjs';
import { ensureBrowser } from '../../electron/start/ensure-browser.mjs';
import { inRoot } from '../../electron/start/place.mjs';
import { runTool } from '../../electron/start/run-tool.mjs';
import { outcomeOf, ROW_IDS, stands, tableForDocs, tableForTerminal, withTable } from './verdict.mjs';

/**
 * Puts every promise to the test and prints one table; fails where one did not hold or was tried too seldom.
 *
 * npm run trust [-- R1 S6]          these rows only
 * npm run trust -- --into-docs      and the table goes into DEVELOPERS.md
 * npm run soak                      the long rows; what comes of them is kept in soaked.json
 * npm run soak -- R13 --minutes=5   the robot for as long
 * npm run soak -- R10 --seed=7      one sequence alone, such as one that failed
 */
const SOAKED = inRoot('tests', 'trust', 'soaked.json');
const DOCS = inRoot('DEVELOPERS.md');

const args = process.argv.slice(2);
const soak = args.includes('--soak');
const ids = args.filter((arg) => !arg.startsWith('--')).map((arg) => arg.toUpperCase());
const unknown = ids.filter((id) => !ROW_IDS.includes(id));
if (unknown.length > 0) {
  console.error(`${unknown.join(', ')}: expected rows from ${ROW_IDS[0]} to ${ROW_IDS.at(-1)}.`);
  process.exit(2);
}

ensureReady();
await build(['page', 'door', 'cli', 'schemas']);
const today = new Date().toISOString().slice(0, 10);
rmSync(inRoot('out', 'trust'), { recursive: true, force: true });
runTool('vitest', ['run', '--project', 'trust'], {
  LEADWRIGHT_BROWSER: ensureBrowser() ?? '',
  LEADWRIGHT_TRUST_ROWS: ids.length > 0 ? ids.join(',') : soak ? 'long' : '',
  ...said('minutes', 'LEADWRIGHT_SOAK_MINUTES'),
  ...said('seed', 'LEADWRIGHT_SOAK_SEED'),
});

/** @type {Map<string, import('./verdict.mjs').RowResult>} */
const results = new Map(Object.entries(readJson(SOAKED) ?? {}));
for (const id of ROW_IDS) {
  const result = readJson(inRoot('out', 'trust', `${id}.json`));
  if (result !== null) results.set(id, result);
}
// One sequence alone says nothing of the row.
if (soak && Object.keys(said('seed', '')).length === 0) keepSoaked();

const shown = ids.length > 0 ? ids : ROW_IDS;
console.log(`\n${tableForTerminal(shown, results)}\n`);
for (const id of shown) {
  const failures = results.get(id)?.failures ?? [];
  for (const failure of failures.slice(0, 20)) console.log(`${id}: ${failure}`);
  if (failures.length > 20) console.log(`${id}: and ${failures.length - 20} more`);
}
const bad = shown.filter((id) => !stands(outcomeOf(results.get(id))));
console.log(bad.length === 0 ? 'Every row stands.' : `Does not stand: ${bad.join(', ')}.`);
if (args.includes('--into-docs')) {
  writeFileSync(DOCS, withTable(readFileSync(DOCS, 'utf8'), tableForDocs(ROW_IDS, results), today));
  runTool('biome', ['format', '--write', DOCS]);
}
process.exitCode = bad.length === 0 ? 0 : 1;

/**
 * @param {string} option
 * @param {string} name of the variable that a row reads it from
 * @returns {Record<string, string>} empty where it was not said
 */
function said(option, name) {
  const value = args.find((arg) => arg.startsWith(`--${option}=`))?.slice(`--${option}=`.length);
  return value === undefined ? {} : { [name]: value };
}

function keepSoaked() {
  const kept = [...results].filter(([, { long }]) => long);
  const dated = kept.map(([id, result]) => [id, { on: today, ...result }]);
  writeFileSync(SOAKED, `${JSON.stringify(Object.fromEntries(dated), null, 2)}\n`);
}

/** @param {string} path */
function readJson(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}
