import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { inRoot } from '../../electron/start/place.mjs';
import { inThread } from './in-thread.mjs';

/**
 * Damaged files of every kind, each read as the program reads it.
 *
 * node tests/strangers/mutants.mjs [--count 100000] [--seed 1] [--from 0]
 */
const COUNT = 100_000;
/** @typedef {import('./run-mutants').MutantReport & { hung: number | null }} Mutants */

/**
 * Runs so many, in a thread of their own that is ended when one of them hangs.
 * @param {{ seed?: number, from?: number, count?: number }} [options]
 * @returns {Promise<Mutants>} `hung` is the number of one that hung; then the rest was not tried
 */
export async function mutants({ seed = 1, from = 0, count = COUNT } = {}) {
  const run = { seed, from, count, frozen: frozen() };
  /** @type {Awaited<ReturnType<typeof inThread<import('./run-mutants').MutantReport>>>} */
  const { report, hung } = await inThread('/tests/strangers/run-mutants.ts', 'runMutants', run);
  const whole = { outcomes: {}, failures: [], used: 0, slowestMs: 0, slowest: 0, ...report, hung };
  keepFailures(seed, whole.failures);
  return whole;
}

/**
 * The frozen documents that hold every field there is, by their kind.
 * @returns {import('./originals').FrozenTexts}
 */
export function frozen() {
  const folder = inRoot('tests', 'golden', 'version-1');
  /** @param {string} kind */
  const of = (kind) =>
    readdirSync(folder)
      .filter((name) => name === `everything.${kind}.json`)
      .map((name) => readFileSync(`${folder}/${name}`, 'utf8'));
  return { build: of('build'), board: of('board'), case: of('case') };
}

/**
 * Writes down what failed, to be moved to `kept` once it is mended.
 * @param {number} seed
 * @param {readonly import('./failures').MutantFailure[]} failures
 */
export function keepFailures(seed, failures) {
  const folder = inRoot('out', 'strangers');
  mkdirSync(folder, { recursive: true });
  for (const { number, kind, data } of failures)
    writeFileSync(
      `${folder}/${kind.replaceAll(' ', '-')}.${seed}-${number}.bin`,
      Buffer.from(data, 'base64'),
    );
}

/**
 * A number that was given on the command line.
 * @param {string} name
 * @param {number} usual
 */
export function option(name, usual) {
  const at = process.argv.indexOf(name);
  return at < 0 ? usual : Number(process.argv[at + 1]);
}

/**
 * Prints what failed, and ends with 1 where anything did.
 * @param {readonly import('./failures').MutantFailure[]} failures
 * @param {number | null} hung
 */
export function tellFailures(failures, hung) {
  for (const { number, kind, reason } of failures.slice(0, 20)) console.log(`${number} ${kind}: ${reason}`);
  console.log(`${failures.length} failed, ${hung === null ? 'none hung' : `${hung} hung`}.`);
  process.exitCode = failures.length === 0 && hung === null ? 0 : 1;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const began = performance.now();
  const count = option('--count', COUNT);
  const { outcomes, failures, hung, used, slowestMs, slowest } = await mutants({
    count,
    seed: option('--seed', 1),
    from: option('--from', 0),
  });
  for (const [kind, byOutcome] of Object.entries(outcomes)) {
    const words = Object.entries(byOutcome).map(([outcome, many]) => `${outcome} ${many}`);
    console.log(`${kind.padEnd(14)} ${words.join(', ')}`);
  }
  const seconds = (performance.now() - began) / 1000;
  console.log(
    `${count} files in ${seconds.toFixed(1)} s, ${used} of them shown, checked and printed; the slowest (${slowest}) took ${slowestMs.toFixed(0)} ms.`,
  );
  tellFailures(failures, hung);
}
