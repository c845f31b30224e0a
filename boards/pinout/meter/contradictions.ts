import type { PinReading } from '../../document/pin-reading';
import { pinsOfReading } from '../../document/pin-reading';
import { askedBy, askedKey } from './evidence';
import type { MeterContradiction } from './identification';
import { pairAnswers } from './pair-answers';
import { pinKinds } from './pin-kinds';
import { plausibleRow } from './plausible';
import { singleAnswers, USUAL_TOLERANCE } from './single-answers';

/** Two readings of one thing agree when they differ by no more than this many tolerances. */
const APART = 4;

interface Noted {
  readonly reading: PinReading;
  readonly at: number;
}

/**
 * Readings that cannot all be true, whatever the pins are, and what makes them so. Each is as small as it can
 * be: leave out any one of its readings and the others agree.
 */
export function contradictionsIn(
  readings: readonly PinReading[],
  stands: (pin: string) => boolean,
): readonly MeterContradiction[] {
  const noted = readings.map((reading, at) => ({ reading, at }));
  const nowhere = noted.filter(({ reading }) => !pinsOfReading(reading).every(stands));
  const here = noted.filter((one) => !nowhere.includes(one));
  const found: MeterContradiction[] = nowhere.map(({ reading, at }) => ({
    why: 'no-pin-there',
    readings: [at],
    pins: pinsOfReading(reading).filter((pin) => !stands(pin)),
  }));
  const isNew = (group: readonly Noted[]) =>
    !found.some(({ readings: known }) => known.every((at) => group.some((one) => one.at === at)));
  const pins = [...new Set(here.flatMap(({ reading }) => pinsOfReading(reading)))];
  for (const pin of pins) {
    const single = here.filter(
      ({ reading }) => 'single' in askedBy(reading) && pinsOfReading(reading)[0] === pin,
    );
    for (const group of groupsOf(single)) {
      if (!isNew(group) || (kindsAt(group).size > 0 && agree(group))) continue;
      const why = group.length === 1 ? 'no-such-reading' : 'one-pin';
      found.push({ why, readings: group.map(({ at }) => at), pins: [pin] });
    }
  }
  for (const one of here) {
    const [a, b] = pinsOfReading(one.reading);
    if (b === undefined) continue;
    const at = (pin: string | undefined) =>
      here.filter(({ reading }) => 'single' in askedBy(reading) && pinsOfReading(reading)[0] === pin);
    const group = smallest(one, at(a), at(b));
    if (group === undefined || !isNew(group)) continue;
    found.push({ why: 'two-pins', readings: group.map(({ at: place }) => place), pins: [a ?? '', b] });
  }
  return found;
}

/** Every one, two or three of the readings, small groups first. Of many on one pin only the last dozen. */
function groupsOf(noted: readonly Noted[]): readonly (readonly Noted[])[] {
  const few = noted.slice(-12);
  const ones = few.map((one) => [one]);
  const twos = few.flatMap((one, i) => few.slice(i + 1).map((other) => [one, other]));
  const threes = twos.flatMap((two) => {
    const last = two[1] === undefined ? few.length : few.indexOf(two[1]);
    return few.slice(last + 1).map((third) => [...two, third]);
  });
  return [...ones, ...twos, ...threes];
}

/** The kinds of pin under which each of the readings is plausible. */
function kindsAt(group: readonly Noted[]): ReadonlySet<number> {
  const kinds = pinKinds().map(({ index }) => index);
  return new Set(kinds.filter((kind) => group.every(({ reading }) => isPlausible(reading, kind))));
}

function isPlausible(reading: PinReading, kind: number): boolean {
  const asked = askedBy(reading);
  if (!('single' in asked)) return true;
  const row = singleAnswers(asked.single).rows[kind];
  return row !== undefined && plausibleRow(reading, asked.single, row);
}

/** Repeats of one reading show about the same. */
function agree(group: readonly Noted[]): boolean {
  return group.every(({ reading: a }) =>
    group.every(({ reading: b }) => {
      if (askedKey(askedBy(a)) !== askedKey(askedBy(b))) return true;
      const [x, y] = [shownBy(a), shownBy(b)];
      if (x === y) return true;
      if (x === undefined || y === undefined) return false;
      const tolerance = USUAL_TOLERANCE + Math.max(toleranceOf(a), toleranceOf(b));
      return Math.abs(x - y) <= APART * tolerance * Math.max(Math.abs(x), Math.abs(y)) + 0.5;
    }),
  );
}

function shownBy(reading: PinReading): number | undefined {
  if (reading.kind === 'volts') return reading.volts;
  return reading.kind === 'ohms' && reading.ohms !== 'open' ? reading.ohms : undefined;
}

function toleranceOf(reading: PinReading): number {
  return 'tolerance' in reading ? (reading.tolerance ?? 0) : 0;
}

/** The reading between two pins with the fewest readings at either that it cannot be true beside. */
function smallest(pair: Noted, atA: readonly Noted[], atB: readonly Noted[]): readonly Noted[] | undefined {
  const goes = (a: readonly Noted[], b: readonly Noted[]) => {
    const first = kindsAt(a);
    const second = kindsAt(b);
    // Readings that contradict each other at one pin already are told there.
    if (first.size === 0 || second.size === 0) return true;
    return [...first].some((i) => [...second].some((j) => pairPlausible(pair.reading, i, j)));
  };
  if (goes(atA, atB)) return undefined;
  let left: readonly Noted[] = [...atA, ...atB];
  for (const one of left) {
    const fewer = left.filter((other) => other !== one);
    const within = (group: readonly Noted[]) => group.filter((other) => fewer.includes(other));
    if (!goes(within(atA), within(atB))) left = fewer;
  }
  return [pair, ...left].sort((x, y) => x.at - y.at);
}

function pairPlausible(reading: PinReading, a: number, b: number): boolean {
  const asked = askedBy(reading);
  if (!('pair' in asked)) return true;
  const { rows, kinds } = pairAnswers(asked.pair);
  const row = rows[a * kinds + b];
  return row !== undefined && plausibleRow(reading, asked.pair, row);
}
