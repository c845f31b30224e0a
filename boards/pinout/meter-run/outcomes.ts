import type { Ohms, Volts } from '../../base/units';
import { bandOhms, bandVolts, OPEN_BAND } from '../meter/bands';
import { askedBy } from '../meter/evidence';
import type { Identification, MeterQuestion, SignalChance } from '../meter/identification';
import { PAIR_ANSWERS, type Pair, pairAnswers } from '../meter/pair-answers';
import { kindIndex, pinKinds } from '../meter/pin-kinds';
import { type Single, singleAnswers } from '../meter/single-answers';
import { kindsAt } from './chances-by-kind';

/** What a reading may show. */
export type Shown =
  | { readonly kind: 'ohms'; readonly fromOhms: Ohms; readonly toOhms: Ohms }
  | { readonly kind: 'open' }
  | { readonly kind: 'volts'; readonly fromVolts: Volts; readonly toVolts: Volts }
  /** One of the answers of a reading between two pins: "joined", "started", "flickers". */
  | { readonly kind: 'answer'; readonly answer: string };

/** One way a reading may come out, and what its pins would most probably be then. */
export interface Outcome {
  readonly shown: Shown;
  readonly chance: number;
  readonly pins: readonly { readonly pin: string; readonly signals: readonly SignalChance[] }[];
}

/** Outcomes of less chance are not told. */
const LEAST = 0.02;
/** What is named for a pin, beside the most probable. */
const WORTH_NAMING = 0.2;
/** The ends of a range hold so much of it beyond them. */
const BEYOND = 0.02;

/** What each outcome of a reading would say, most probable first. */
export function outcomesOf(question: MeterQuestion, found: Identification): readonly Outcome[] {
  const asked = askedBy(question);
  const outcomes =
    'single' in asked ? atPin(asked.single, asked.pin, found) : betweenPins(asked.pair, asked.pins, found);
  return outcomes.filter(({ chance }) => chance >= LEAST).toSorted((a, b) => b.chance - a.chance);
}

type Kinds = ReturnType<typeof kindsAt>;

function atPin(single: Single, pin: string, found: Identification): readonly Outcome[] {
  const { rows, bands } = singleAnswers(single);
  const kinds = kindsAt(found, pin);
  const share = (at: number, band: number) => {
    const one = kinds[at];
    return one === undefined ? 0 : one.said.chance * (rows[one.kind]?.[band] ?? 0);
  };
  const mass = Array.from({ length: bands }, (_, band) =>
    kinds.reduce((sum, _k, at) => sum + share(at, band), 0),
  );
  const best = mass.map((_, band) =>
    kinds.reduce((most, _k, at) => (share(at, band) > share(most, band) ? at : most), 0),
  );
  return runsOf(mass, best, single).map(({ first, last }) => {
    const weights = kinds.map((_, at) => sumOver(first, last, (band) => share(at, band)));
    const chance = weights.reduce((a, b) => a + b, 0);
    return {
      shown: shownBy(single, ...trimmed(mass, first, last)),
      chance,
      pins: [{ pin, signals: named(kinds, weights) }],
    };
  });
}

interface BandRun {
  readonly first: number;
  readonly last: number;
}

/** Stretches of bands that speak for the same kind of pin; "open" is a stretch of its own. */
function runsOf(mass: readonly number[], best: readonly number[], single: Single): readonly BandRun[] {
  const runs: BandRun[] = [];
  mass.forEach((here, band) => {
    if (here < 1e-6) return;
    const open = single === 'ohms' && band === OPEN_BAND;
    const before = runs.at(-1);
    if (before !== undefined && !open && best[band] === best[before.last])
      runs[runs.length - 1] = { first: before.first, last: band };
    else runs.push({ first: band, last: band });
  });
  return runs;
}

/** A stretch without the thin ends of it. */
function trimmed(mass: readonly number[], first: number, last: number): readonly [number, number] {
  const all = sumOver(first, last, (band) => mass[band] ?? 0);
  let [from, to] = [first, last];
  for (let left = BEYOND * all - (mass[from] ?? 0); left > 0 && from < to; left -= mass[from] ?? 0) from += 1;
  for (let left = BEYOND * all - (mass[to] ?? 0); left > 0 && to > from; left -= mass[to] ?? 0) to -= 1;
  return [from, to];
}

function sumOver(first: number, last: number, value: (band: number) => number): number {
  let sum = 0;
  for (let band = first; band <= last; band++) sum += value(band);
  return sum;
}

function shownBy(single: Single, first: number, last: number): Shown {
  if (single !== 'ohms') return { kind: 'volts', fromVolts: bandVolts(first), toVolts: bandVolts(last) };
  if (first === OPEN_BAND) return { kind: 'open' };
  return { kind: 'ohms', fromOhms: first === 0 ? 0 : bandOhms(first), toOhms: bandOhms(last + 1) };
}

function named(kinds: Kinds, weights: readonly number[]): readonly SignalChance[] {
  const all = weights.reduce((a, b) => a + b, 0);
  const told = kinds
    .map(({ said }, at) => ({ ...said, chance: all > 0 ? (weights[at] ?? 0) / all : 0 }))
    .sort((a, b) => b.chance - a.chance);
  return told.filter(({ chance }, at) => at === 0 || chance >= WORTH_NAMING).slice(0, 3);
}

/**
 * Between two pins what counts is what they are together. That is known for the layouts that are told; for
 * the rest the two are taken as if one said nothing of the other.
 */
function betweenPins(pair: Pair, pins: readonly [string, string], found: Identification): readonly Outcome[] {
  const { rows } = pairAnswers(pair);
  const size = pinKinds().length;
  const [a, b] = pins.map((pin) => kindsAt(found, pin));
  if (a === undefined || b === undefined) return [];
  const joint = jointChances(pins, a, b, found);
  return PAIR_ANSWERS[pair].map((answer, at) => {
    const weight = (i: number, j: number) =>
      (joint[i]?.[j] ?? 0) * (rows[(a[i]?.kind ?? 0) * size + (b[j]?.kind ?? 0)]?.[at] ?? 0);
    const first = a.map((_, i) => b.reduce((sum, _k, j) => sum + weight(i, j), 0));
    const second = b.map((_, j) => a.reduce((sum, _k, i) => sum + weight(i, j), 0));
    return {
      shown: { kind: 'answer', answer },
      chance: first.reduce((x, y) => x + y, 0),
      pins: [
        { pin: pins[0], signals: named(a, first) },
        { pin: pins[1], signals: named(b, second) },
      ],
    };
  });
}

function jointChances(
  [pinA, pinB]: readonly [string, string],
  a: Kinds,
  b: Kinds,
  { layouts }: Identification,
): readonly (readonly number[])[] {
  const told = layouts.reduce((sum, { chance }) => sum + chance, 0);
  const rest = Math.max(0, 1 - told);
  const joint = a.map(({ said }) => b.map((other) => rest * said.chance * other.said.chance));
  for (const { chance, pins } of layouts) {
    const placeIn = (kinds: Kinds, label: string) => {
      const signal = pins.find(({ pin }) => pin === label)?.signal ?? 'unknown';
      return kinds.findIndex(({ kind }) => kind === kindIndex(signal));
    };
    const row = joint[placeIn(a, pinA)];
    const column = placeIn(b, pinB);
    if (row !== undefined && column >= 0) row[column] = (row[column] ?? 0) + chance;
  }
  return joint;
}
