import { byIdentity } from '../../base/by-identity';
import { ok, type Result, refuse } from '../../base/result';
import type { Connector } from '../../document/connector';
import type { PinReading } from '../../document/pin-reading';
import { minimalDiagnoses } from '../../inference/diagnoses';
import { SIGNAL_IDS, type SignalId } from '../../signals/signals';
import { contradictionsIn } from './contradictions';
import { type Header, headerOf, isDrawn } from './header';
import { afterReadings, type Chances, chancesIn, type Held, kindChances } from './held';
import type {
  Identification,
  LayoutChance,
  MeterProblem,
  MeterVerdict,
  NextReading,
  PinChances,
  SignalChance,
} from './identification';
import { IDENTIFIED, nextReading, stateAfter } from './next-reading';
import { kindIndex, pinKinds } from './pin-kinds';
import { postsOf } from './posts';

/** Posts of a header that are still reasoned about as a whole. */
const MOST_POSTS = 80;
const LAYOUTS_TOLD = 12;
/** Above it a signal is certain. */
const CERTAIN = 0.99;
/** Signals of less chance are not named as alike. */
const WORTH_NAMING = 0.005;

/**
 * What the readings of a connector say of its pins: whole layouts, each pin, what to measure next. What the
 * sheet says of the signals is left aside; only which pins are missing is believed.
 */
export const identifyPins: (connector: Connector) => Result<Identification, MeterProblem> =
  byIdentity(identified);

function identified(connector: Connector): Result<Identification, MeterProblem> {
  const posts = postsOf(connector);
  if (posts.length === 0) return refuse({ code: 'no-pins' });
  if (posts.length > MOST_POSTS)
    return refuse({ code: 'too-many-pins', pins: posts.length, limit: MOST_POSTS });
  const { readings = [] } = connector;
  const held = heldOf(connector, readings);
  const chances = chancesIn(held);
  const kinds = kindChances(held, chances);
  const { next, withheld } = nextReading(held, chances, stateAfter(readings));
  const ranking = rankedLayouts(chances);
  const contradictions = contradictionsIn(readings, (pin) => held.header.postOf.has(pin));
  const suspects = minimalDiagnoses(contradictions.map((one) => new Set(one.readings))).sets;
  const remaining = remainingTwo(held, chances, ranking, readings);
  return ok({
    verdict: verdictOf(readings, chances, ranking, next),
    pins: posts.map(({ label }, post) => pinChances(held, chances, kinds, label, post)),
    layouts: ranking.slice(0, LAYOUTS_TOLD).map((at) => layoutChance(held.header, chances, at)),
    noneOfThese: chances.none,
    ...(remaining && { remaining }),
    ...(next && { next }),
    ...(withheld && { withheld }),
    contradictions,
    suspects: contradictions.length === 0 ? [] : suspects,
    counted: held.header.counted,
  });
}

const plainHeaders = byIdentity(
  (connector: Connector) => headerOf(connector),
  ({ grid, pins }) => [grid, pins],
);

/** What is held after the readings of a connector; panels drawn by chance are drawn again for them. */
export function heldOf(connector: Connector, readings: readonly PinReading[]): Held {
  const plain = afterReadings(plainHeaders(connector), readings);
  if (!isDrawn(plain.header)) return plain;
  const size = pinKinds().length;
  const most = plain.header.posts.map((_, post) =>
    Math.max(...plain.posts.subarray(post * size, (post + 1) * size)),
  );
  const worth = (post: number, kind: number) =>
    Math.exp((plain.posts[post * size + kind] ?? 0) - (most[post] ?? 0));
  return afterReadings(headerOf(connector, worth), readings);
}

function rankedLayouts({ layouts }: Chances): readonly number[] {
  const counting: number[] = [];
  for (let at = 0; at < layouts.length; at++) if ((layouts[at] ?? 0) > 1e-6) counting.push(at);
  return counting.sort((a, b) => (layouts[b] ?? 0) - (layouts[a] ?? 0) || a - b);
}

function verdictOf(
  readings: readonly PinReading[],
  { layouts, none }: Chances,
  [first = 0, second = 0]: readonly number[],
  next: NextReading | undefined,
): MeterVerdict {
  const [most, then] = [layouts[first] ?? 0, layouts[second] ?? 0];
  if (readings.length === 0) return 'no-readings';
  if (none > 0.5) return 'none-of-these';
  if (most >= IDENTIFIED) return 'identified';
  if (next !== undefined) return 'open';
  return most + then >= IDENTIFIED ? 'two-remain' : 'several-remain';
}

/** The two most probable layouts: on which pins they differ, and the reading that tells just these two apart. */
function remainingTwo(
  held: Held,
  chances: Chances,
  [first, second]: readonly number[],
  readings: readonly PinReading[],
): Identification['remaining'] {
  if (first === undefined || second === undefined) return undefined;
  const { posts, layouts, kinds } = held.header;
  const many = layouts.length;
  const pins = posts
    .filter((_, post) => kinds[post * many + first] !== kinds[post * many + second])
    .map(({ label }) => label);
  const only = new Float64Array(many);
  const both = (chances.layouts[first] ?? 0) + (chances.layouts[second] ?? 0);
  only[first] = (chances.layouts[first] ?? 0) / both;
  only[second] = (chances.layouts[second] ?? 0) / both;
  // The risk is still that of everything the pins could be.
  const { next } = nextReading(
    held,
    { ...chances, layouts: only, none: 0 },
    stateAfter(readings),
    kindChances(held, chances),
  );
  return { pins, ...(next && { reading: next }) };
}

function layoutChance({ posts, layouts }: Header, chances: Chances, at: number): LayoutChance {
  const layout = layouts[at];
  if (layout === undefined) throw new Error(`No layout ${at}`);
  return {
    chance: chances.layouts[at] ?? 0,
    origin: layout.origin,
    pins: posts.map(({ label }, post) => ({ pin: label, signal: layout.signals[post] ?? 'unknown' })),
  };
}

function pinChances(
  held: Held,
  chances: Chances,
  kinds: Float64Array,
  pin: string,
  post: number,
): PinChances {
  const size = pinKinds().length;
  const bySignal = signalChances(held, chances, post);
  const rows: SignalChance[] = [];
  for (const { index, signals } of pinKinds()) {
    const chance = kinds[post * size + index] ?? 0;
    if (chance < 1e-6) continue;
    const named = signals
      .map((signal) => ({ signal, share: bySignal.get(signal) ?? 0 }))
      .sort((a, b) => b.share - a.share || SIGNAL_IDS.indexOf(a.signal) - SIGNAL_IDS.indexOf(b.signal));
    const [first, ...others] = named;
    if (first === undefined) continue;
    const alike = others.filter(({ share }) => share >= WORTH_NAMING * chance).map(({ signal }) => signal);
    rows.push({ signal: first.signal, chance, alike });
  }
  rows.sort((a, b) => b.chance - a.chance);
  const sum = rows.reduce((all, { chance }) => all + chance, 0);
  const told = rows.map((row) => ({ ...row, chance: row.chance / sum }));
  const [first] = told;
  return { pin, chances: told, ...(first && first.chance > CERTAIN && { certain: first }) };
}

/** How often each signal stands at a post in the layouts, by their chances; one of several alike, in all of them. */
function signalChances({ header }: Held, chances: Chances, post: number): ReadonlyMap<SignalId, number> {
  const sums = new Map<SignalId, number>();
  const add = (signal: SignalId, chance: number) => sums.set(signal, (sums.get(signal) ?? 0) + chance);
  header.layouts.forEach(({ signals, alike }, at) => {
    const chance = chances.layouts[at] ?? 0;
    if (chance < 1e-9) return;
    add(signals[post] ?? 'unknown', chance);
    // A little less, so that the heavier of two that nothing tells apart is named first.
    for (const other of alike?.[post] ?? []) add(other, chance * 0.5);
  });
  return sums;
}

/** Whether two layouts differ in nothing that a reading could show. */
export function areAlike(a: readonly SignalId[], b: readonly SignalId[]): boolean {
  return (
    a.length === b.length && a.every((signal, at) => kindIndex(signal) === kindIndex(b[at] ?? 'unknown'))
  );
}
