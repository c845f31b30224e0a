import { domain } from './bundled/domain.mjs';

/**
 * What it costs to find what a header looks like: one half-filled header of 2x10 positions against 500
 * layouts, in every turn, mirror and shift. Beside it the slow and obvious way of the tests, which reads
 * both sheets anew for each; both have to find the same best match.
 */
const LAYOUTS = 500;
const ROUNDS = 21;
/** A frame: the list may be worked out again at every key. */
const AIM_MS = 16;

const { bestMatch, Dice, looksLike, SIGNAL_IDS } = await domain('looks-like', {
  '/boards/pinout/looks-like/likeness.ts': ['looksLike'],
  '/boards/signals/signals.ts': ['SIGNAL_IDS'],
  '/tests/boards/dice.ts': ['Dice'],
  '/tests/boards/pinout/looks-like/brute-force.ts': ['bestMatch'],
});

const dice = new Dice(20_261_126);
const layouts = Array.from({ length: LAYOUTS }, (_, at) => ({ from: `sheet ${at}`, connector: layout(at) }));
const asked = layouts[137].connector;
const here = () => ({ ...asked, pins: asked.pins.filter((_, at) => at % 2 === 0) });

// The first call makes the index, as the first opening of the dialog does.
const first = timed(() => looksLike(here(), layouts));
const ours = Array.from({ length: ROUNDS }, () => timed(() => looksLike(here(), layouts)));
let slowBest;
const slow = Array.from({ length: 3 }, () =>
  timed(() => {
    const scores = layouts.map(({ connector }) => bestMatch(here(), connector)?.score ?? 0);
    slowBest = Math.max(...scores);
  }),
);
const found = looksLike(here(), layouts);
if (found.outcome !== 'found' || Math.abs(found.likenesses[0].score - slowBest) > 1e-9)
  throw new Error(`The quick way and the slow way disagree: ${found.outcome}, ${slowBest}`);
const mine = median(ours);
console.log(
  `looks-like: half a 2x10 header against ${LAYOUTS} layouts ${mine.toFixed(2)} ms (aim under ${AIM_MS}), ` +
    `the first time ${first.toFixed(0)} ms; a naive pass ${median(slow).toFixed(0)} ms, ` +
    `${(median(slow) / mine).toFixed(0)} times`,
);

/** Headers of many shapes, most of them 2x10, each position any signal or now and then a gap. */
function layout(at) {
  const [rows, cols] = at % 5 === 4 ? [2, 9 + dice.below(4)] : [2, 10];
  const pins = Array.from({ length: rows * cols }, (_, place) => {
    const pin = String(place + 1);
    return dice.oneIn(12)
      ? { pin, missing: true }
      : { pin, signal: dice.pick(SIGNAL_IDS), confidence: dice.below(101) / 100 };
  });
  const numbering = { scheme: dice.pick(['zig-zag', 'by-row']), from: 'top-left' };
  return { title: `header ${at}`, grid: { rows, cols, pitchMm: 2.54, numbering }, pins };
}

function timed(work) {
  const began = performance.now();
  work();
  return performance.now() - began;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
