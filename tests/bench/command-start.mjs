import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/**
 * How long the command takes from start to end for the demo build, as a ratio to Node doing nothing in the
 * same run. Taken in turn, so that a busy machine weighs on both alike. Aim: under 4.
 */
const ROUNDS = 21;
const AIM = 4;
const root = fileURLToPath(new URL('../..', import.meta.url));
const check = ['dist/leadwright.mjs', 'check', 'boards/library/demo/wired.build.json'];

/** @param {string[]} args */
function milliseconds(args) {
  const began = performance.now();
  const run = spawnSync(process.execPath, args, { cwd: root, stdio: 'ignore' });
  if (run.status !== 0) throw new Error(`${args.join(' ')} ended with ${run.status}`);
  return performance.now() - began;
}

/** @param {number[]} values */
function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

const bare = [];
const ours = [];
for (let round = 0; round < ROUNDS; round++) {
  bare.push(milliseconds(['-e', '0']));
  ours.push(milliseconds(check));
}
const ratio = median(ours) / median(bare);
console.log(
  `Start of the command: ${median(ours).toFixed(0)} ms against ${median(bare).toFixed(0)} ms of bare Node, ` +
    `median of ${ROUNDS}: ${ratio.toFixed(2)} times (aim: under ${AIM})`,
);
