import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { inRoot } from '../../electron/start/place.mjs';
import { inThread } from './in-thread.mjs';
import { frozen, keepFailures, option, tellFailures } from './mutants.mjs';

/**
 * Damaged files, led by the places of the program that they reach. What reached something new is kept in
 * out/strangers/guided, and the next run begins from there.
 *
 * node tests/strangers/guided.mjs [--minutes 60] [--seed 1]
 */
const CORPUS = inRoot('out', 'strangers', 'guided');

/** @typedef {import('./run-guided').GuidedReport} GuidedReport */

/**
 * @param {{ seed: number, minutes: number }} options
 * @returns {Promise<GuidedReport & { hung: number | null }>} of one that hung only its number is known
 */
export async function guided({ seed, minutes }) {
  mkdirSync(CORPUS, { recursive: true });
  /** @type {Awaited<ReturnType<typeof inThread<GuidedReport>>>} */
  const { report, hung } = await inThread('/tests/strangers/run-guided.ts', 'runGuided', {
    seed,
    minutes,
    frozen: frozen(),
    corpus: corpus(),
  });
  if (report === null) {
    const nothing = { tried: 0, minutes: 0, reachedAtFirst: 0, reached: 0, slowestMs: 0, slowest: 0 };
    return { ...nothing, kept: [], failures: [], hung };
  }
  for (const [at, { kind, data }] of report.kept.entries())
    writeFileSync(`${CORPUS}/${kind.replaceAll(' ', '-')}.${seed}-${at}.bin`, Buffer.from(data, 'base64'));
  keepFailures(seed, report.failures);
  return { ...report, hung };
}

/** @returns {Record<string, string[]>} what earlier runs kept, by kind */
function corpus() {
  /** @type {Record<string, string[]>} */
  const byKind = {};
  for (const name of readdirSync(CORPUS)) {
    const kind = name.slice(0, name.indexOf('.')).replaceAll('-', ' ');
    byKind[kind] = [...(byKind[kind] ?? []), readFileSync(`${CORPUS}/${name}`).toString('base64')];
  }
  return byKind;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { tried, minutes, reachedAtFirst, reached, kept, failures, hung, slowestMs, slowest } = await guided({
    seed: option('--seed', 1),
    minutes: option('--minutes', 60),
  });
  console.log(`${tried} files in ${minutes.toFixed(1)} minutes; ${kept.length} kept.`);
  console.log(`The slowest (${slowest}) took ${slowestMs.toFixed(0)} ms.`);
  console.log(`Places reached: ${reachedAtFirst} by what there was, ${reached} in the end.`);
  tellFailures(failures, hung);
}
