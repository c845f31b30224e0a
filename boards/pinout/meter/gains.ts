import { byIdentity } from '../../base/by-identity';
import { mayBeMisread } from '../../inference/belief';
import { entropyBits } from '../../inference/information';
import { USUAL_DOUBT } from './evidence';
import type { Header } from './header';
import { PAIRS, type Pair, pairAnswers } from './pair-answers';
import { type PinKind, pinKinds } from './pin-kinds';
import { SINGLES, type Single, singleAnswers } from './single-answers';

/** What a reading may show, misreadings counted in: rows by kind, or by two kinds, each with its own openness. */
interface Expected {
  readonly rows: readonly Float64Array[];
  readonly bits: Float64Array;
}

function expected(rows: readonly Float64Array[], inGeneral: Float64Array): Expected {
  const mixed = rows.map((row) =>
    row.map((chance, at) => mayBeMisread(chance, inGeneral[at] ?? 0, USUAL_DOUBT)),
  );
  return { rows: mixed, bits: Float64Array.from(mixed, entropyBits) };
}

const expectations = byIdentity((_: readonly PinKind[]) => ({
  single: new Map(
    SINGLES.map((single) => [single, expected(singleAnswers(single).rows, singleAnswers(single).inGeneral)]),
  ),
  pair: new Map(PAIRS.map((pair) => [pair, expected(pairAnswers(pair).rows, pairAnswers(pair).inGeneral)])),
}));

const NOTHING: Expected = { rows: [], bits: new Float64Array() };
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
