import { byIdentity } from '../../base/by-identity';
import { mayBeMisread } from '../../inference/belief';
import { entropyBits } from '../../inference/information';
import { USUAL_DOUBT } from './evidence';
import type { Header } from './header';
import type { Chances } from './held';
import { PAIRS, type Pair, pairAnswers } from './pair-answers';
import { type PinKind, pinKinds } from './pin-kinds';
import { SINGLES, type Single, singleAnswers } from './single-answers';

/** What a reading may show, misreadings counted in: rows by kind, or by two kinds, each with its own openness. */
interface Expected {
  readonly rows: readonly Float64Array[];
  readonly bits: Float64Array;
  /** Each chance of the rows times its own logarithm. */
  readonly logs: readonly Float64Array[];
}

function expected(rows: readonly Float64Array[], inGeneral: Float64Array): Expected {
  const mixed = rows.map((row) =>
    row.map((chance, at) => mayBeMisread(chance, inGeneral[at] ?? 0, USUAL_DOUBT)),
  );
  return {
    rows: mixed,
    bits: Float64Array.from(mixed, entropyBits),
    logs: mixed.map((row) => row.map(timesLog)),
  };
}

const expectations = byIdentity((_: readonly PinKind[]) => ({
  single: new Map(
    SINGLES.map((single) => [single, expected(singleAnswers(single).rows, singleAnswers(single).inGeneral)]),
  ),
  pair: new Map(PAIRS.map((pair) => [pair, expected(pairAnswers(pair).rows, pairAnswers(pair).inGeneral)])),
}));

const NOTHING: Expected = { rows: [], bits: new Float64Array(), logs: [] };
/** Kinds and layouts of less than this chance are left out when gains are worked out; never when beliefs are. */
const NEGLIGIBLE = 1e-4;

/**
 * What a reading at a post is expected to tell, in bits.
 *
 * @param kinds chances of the kinds of every post, at [post × kinds + kind]
 */
export function singleGain(kinds: Float64Array, post: number, single: Single): number {
  const { rows, bits } = expectations(pinKinds()).single.get(single) ?? NOTHING;
  const size = pinKinds().length;
  const overall = new Float64Array(rows[0]?.length ?? 0);
  let known = 0;
  let all = 0;
  for (let kind = 0; kind < size; kind++) {
    const chance = kinds[post * size + kind] ?? 0;
    const row = rows[kind];
    if (chance < NEGLIGIBLE || row === undefined) continue;
    for (let band = 0; band < row.length; band++)
      overall[band] = (overall[band] ?? 0) + chance * (row[band] ?? 0);
    known += chance * (bits[kind] ?? 0);
    all += chance;
  }
  return all === 0 ? 0 : Math.max(0, entropyBits(overall) - known / all);
}

/** The layouts that still count, so that readings between two posts need not look at all of them. */
export function countingLayouts(chances: Float64Array): readonly number[] {
  const most = chances.reduce((a, b) => Math.max(a, b), 0);
  let found: number[] = [];
  for (let bar = NEGLIGIBLE; bar < 1; bar *= 4) {
    found = [];
    for (let at = 0; at < chances.length; at++) if ((chances[at] ?? 0) >= bar * most) found.push(at);
    if (found.length <= 1_000) return found;
  }
  return found.slice(0, 1_000);
}

/** What a reading between two posts is expected to tell about which of the given layouts it is, in bits. */
export function pairGain(
  { kinds, layouts }: Header,
  chances: Float64Array,
  counting: readonly number[],
  pair: Pair,
  a: number,
  b: number,
): number {
  const { rows, bits } = expectations(pinKinds()).pair.get(pair) ?? NOTHING;
  const size = pinKinds().length;
  const many = layouts.length;
  const overall = new Float64Array(rows[0]?.length ?? 0);
  let known = 0;
  let all = 0;
  for (const layout of counting) {
    const chance = chances[layout] ?? 0;
    const at = (kinds[a * many + layout] ?? 0) * size + (kinds[b * many + layout] ?? 0);
    const row = rows[at];
    if (row === undefined) continue;
    for (let answer = 0; answer < row.length; answer++)
      overall[answer] = (overall[answer] ?? 0) + chance * (row[answer] ?? 0);
    known += chance * (bits[at] ?? 0);
    all += chance;
  }
  return all === 0 ? 0 : Math.max(0, entropyBits(overall) - known / all) * Math.min(1, all);
}

/** The layouts gathered by the kind that they give each post, at [post × kinds + kind]. */
export interface ByKind {
  readonly sums: Float64Array;
  /** The weight of the heaviest. */
  readonly most: Float64Array;
  /** The sum of weight × log2(weight): how open it is among them. */
  readonly logs: Float64Array;
}

export function byKind(
  { kinds, layouts, posts }: Header,
  { layouts: chances, none, stray }: Chances,
): ByKind {
  const size = pinKinds().length;
  const sums = stray.map((chance) => none * chance);
  const most = new Float64Array(sums.length);
  const logs = sums.map(timesLog);
  for (let layout = 0; layout < layouts.length; layout++) {
    const chance = chances[layout] ?? 0;
    if (chance < 1e-7) continue;
    const log = timesLog(chance);
    for (let post = 0; post < posts.length; post++) {
      const at = post * size + (kinds[post * layouts.length + layout] ?? 0);
      sums[at] = (sums[at] ?? 0) + chance;
      logs[at] = (logs[at] ?? 0) + log;
      most[at] = Math.max(most[at] ?? 0, chance);
    }
  }
  return { sums, most, logs };
}

function timesLog(chance: number): number {
  return chance > 0 ? chance * Math.log2(chance) : 0;
}

/** What a reading tells on average, as far as the number of those still needed is guessed (common practice, no source). */
const BITS_A_READING = 1.5;

/**
 * How many readings are expected to be needed after one at a post: none after an answer that lets one layout
 * stand out, else one and as many as the bits still open ask for. Gain alone prefers a reading that tells a little
 * of everything to one that settles it.
 *
 * @param enough the chance from which on a layout stands out
 */
export function readingsLeft(
  { sums, most, logs }: ByKind,
  post: number,
  single: Single,
  enough: number,
): number {
  const { rows, logs: rowLogs } = expectations(pinKinds()).single.get(single) ?? NOTHING;
  const inPlay = [...rows.keys()].filter((kind) => (sums[post * rows.length + kind] ?? 0) >= 1e-5);
  const bands = rows[0]?.length ?? 0;
  const all = new Float64Array(bands);
  const best = new Float64Array(bands);
  const inside = new Float64Array(bands);
  for (const kind of inPlay) {
    const at = post * rows.length + kind;
    const [weight, heaviest, within] = [sums[at] ?? 0, most[at] ?? 0, logs[at] ?? 0];
    const row = rows[kind] ?? all;
    const rowLog = rowLogs[kind] ?? all;
    for (let band = 0; band < bands; band++) {
      const share = row[band] ?? 0;
      all[band] = (all[band] ?? 0) + weight * share;
      inside[band] = (inside[band] ?? 0) + share * within + weight * (rowLog[band] ?? 0);
      if (heaviest * share > (best[band] ?? 0)) best[band] = heaviest * share;
    }
  }
  let left = 0;
  for (let band = 0; band < bands; band++) {
    const sum = all[band] ?? 0;
    if (sum < 1e-9 || (best[band] ?? 0) >= enough * sum) continue;
    left += sum * (1 + (Math.log2(sum) - (inside[band] ?? 0) / sum) / BITS_A_READING);
  }
  return left;
}
