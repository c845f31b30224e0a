import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { domain } from './bundled/domain.mjs';

/**
 * What the fault dictionary of the demo build costs, beside solving the whole build for each wrong seat in the
 * same run, and its pairs; what one more observation costs: suspects, looks and trials anew; and how many trials
 * lead to the culprit on simulated benches, beside a fixed list of checks on the same benches.
 */
const ROUNDS = 5;
const BENCHES = 200;
const SEED = 20_260_714;
const AIM_MS = 500;
const FRAME_MS = 1000 / 60;
const root = fileURLToPath(new URL('../..', import.meta.url));
const text = readFileSync(`${root}/boards/library/demo/wired.build.json`, 'utf8');

const {
  consequencesOf,
  dictionaryOf,
  faultsOf,
  nextLooks,
  nextTrials,
  reckonInParts,
  simulated,
  slipsOf,
  summed,
  suspicionOf,
  trialsOf,
  withPairs,
} = await domain('diagnosis', {
  '/boards/diagnosis/dictionary.ts': ['dictionaryOf'],
  '/boards/diagnosis/log/reckoning.ts': ['reckonInParts'],
  '/boards/diagnosis/faults/consequence.ts': ['consequencesOf'],
  '/boards/diagnosis/faults/faults.ts': ['faultsOf'],
  '/boards/diagnosis/faults/slips.ts': ['slipsOf'],
  '/boards/diagnosis/pairs.ts': ['withPairs'],
  '/boards/diagnosis/posterior.ts': ['suspicionOf'],
  '/boards/diagnosis/trials/next-trials.ts': ['nextLooks', 'nextTrials'],
  '/boards/diagnosis/trials/trials.ts': ['trialsOf'],
  '/tests/cases/simulated.ts': ['simulated', 'summed'],
});

console.log('diagnosis');
singles();
pairs();
update();
parts();
benches();

/** A build that nothing is known of yet, neither its circuit nor its places. */
function fresh() {
  return JSON.parse(text);
}

function timeOf(work) {
  const began = performance.now();
  const value = work();
  return { value, tookMs: performance.now() - began };
}

function median(numbers) {
  return numbers.sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
}

function singles() {
  const first = timeOf(() => dictionaryOf(faultsOf(fresh())));
  const again = Array.from({ length: ROUNDS }, () => timeOf(() => dictionaryOf(faultsOf(fresh()))).tookMs);
  const build = fresh();
  const whole = timeOf(() =>
    build.seats
      .flatMap((seat) => slipsOf(build, seat))
      .map(({ build: wrong, leads }) => consequencesOf(wrong, leads)),
  );
  const { faults, hypotheses } = first.value;
  console.log(
    `  ${faults.length} single faults, ${hypotheses.length} that can be told apart: ${first.tookMs.toFixed(0)} ms at first, ` +
      `${median(again).toFixed(0)} ms then (aim ${AIM_MS}); solving all of the build for each wrong seat ${whole.tookMs.toFixed(0)} ms: ` +
      `${(whole.tookMs / median(again)).toFixed(1)} times`,
  );
}

function pairs() {
  const singles = dictionaryOf(faultsOf(fresh()));
  const { value, tookMs } = timeOf(() => withPairs(singles));
  console.log(
    `  ${value.hypotheses.length - singles.hypotheses.length} pairs of faults: ${tookMs.toFixed(0)} ms, in small pieces that can be left off`,
  );
}

function update() {
  const build = fresh();
  const dictionary = dictionaryOf(faultsOf(build));
  const trials = trialsOf(build);
  const singles = timesOfUpdate(dictionary, trials);
  const both = timesOfUpdate(withPairs(dictionary), trials);
  console.log(
    `  one more observation: suspects, looks and trials anew in ${singles.toFixed(1)} ms (aim one frame, ${FRAME_MS.toFixed(1)} ms); ` +
      `with pairs, off the window's thread, ${both.toFixed(1)} ms`,
  );
}

/**
 * What the window waits for first, beside the inference core alone; and the longest piece, which a new answer
 * waits for.
 */
function parts() {
  const build = fresh();
  const dictionary = dictionaryOf(faultsOf(build));
  const trials = trialsOf(build);
  const seen = ['nothing-on-press', 'standby-light', 'button-no-click', 'clock-wrong', 'no-picture'];
  const took = { core: [], suspects: [], reasons: [], next: [], effects: [], piece: [] };
  for (let round = 0; round < 10 * ROUNDS; round++) {
    const whats = seen.slice(0, 1 + (round % seen.length));
    const evidence = { seen: whats, notSeen: [], tried: [] };
    took.core.push(timeOf(() => suspicionOf(dictionary, evidence)).tookMs);
    const log = whats.map((what) => ({ kind: 'noticed', what, answer: 'yes' }));
    // biome-ignore lint/correctness/useYield: pairs that are never needed here
    const pieces = reckonInParts(dictionary, log, trials, function* (one) {
      return one;
    });
    const began = performance.now();
    let longest = 0;
    for (let before = began; ; ) {
      const { done, value } = pieces.next();
      const now = performance.now();
      if (done) break;
      if (value) took[value.kind].push(now - began);
      longest = Math.max(longest, now - before);
      before = now;
    }
    took.piece.push(longest);
  }
  const ms = Object.fromEntries(Object.entries(took).map(([part, times]) => [part, median(times)]));
  console.log(
    `  from an answer to its suspects ${ms.suspects.toFixed(1)} ms, ${(ms.suspects / ms.core).toFixed(1)} times the inference alone ` +
      `(${ms.core.toFixed(1)} ms); to the reasons ${(ms.reasons / ms.core).toFixed(1)}, to what is next ${(ms.next / ms.core).toFixed(1)}, ` +
      `to the whole ${(ms.effects / ms.core).toFixed(1)} times; the longest piece ${ms.piece.toFixed(1)} ms`,
  );
}

function timesOfUpdate(dictionary, trials) {
  const seen = ['nothing-on-press', 'standby-light', 'button-no-click', 'clock-wrong', 'no-picture'];
  const took = Array.from({ length: 10 * ROUNDS }, (_, round) => {
    const evidence = { seen: seen.slice(0, 1 + (round % seen.length)), notSeen: ['beep-code'], tried: [] };
    return timeOf(() => {
      suspicionOf(dictionary, evidence);
      nextLooks(dictionary, evidence, trials);
      nextTrials(dictionary, evidence, trials);
    }).tookMs;
  });
  return median(took);
}

function benches() {
  const build = fresh();
  const dictionary = dictionaryOf(faultsOf(build));
  const result = simulated(dictionary, trialsOf(build), { benches: BENCHES, seed: SEED });
  const [proposed, fixed] = [summed(result.proposed), summed(result.fixed)];
  const percent = (share) => `${(100 * share).toFixed(1)} %`;
  const said = ({ trials, minutes, right, wrong }) =>
    `${trials.toFixed(1)} trials, ${minutes.toFixed(0)} min, culprit named ${percent(right)}, a wrong one ${percent(wrong)}`;
  console.log(
    `  ${BENCHES} simulated benches, 5 in 100 readings wrong, ${result.stopped} left at once after heat or smoke; to 95 % certainty, or 25 trials:`,
  );
  console.log(`    as proposed: ${said(proposed)} (aim under 3 %)`);
  console.log(`    fixed list:  ${said(fixed)}`);
  console.log(
    `    trials as proposed beside the list: ${(proposed.trials / fixed.trials).toFixed(2)} (aim 0.5)`,
  );
}
