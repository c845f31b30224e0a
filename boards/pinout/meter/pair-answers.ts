import { byIdentity } from '../../base/by-identity';
import type { Ohms, Volts } from '../../base/units';
import { LAMP_RESULTS, TOUCH_RESULTS } from '../../document/pin-reading';
import { parameterAt } from '../../signals/parameters';
import type { StubElement } from '../../signals/stub';
import { type Behind, behindPin, type MeasuredIn } from './behind-pin';
import { answerTo, type PinKind, pinKinds } from './pin-kinds';
import { BOARDS } from './spread';

/** Readings between two pins. */
export const PAIRS = [
  'continuity',
  'touch-standby',
  'touch-running',
  'lamp-standby',
  'lamp-running',
] as const;
export type Pair = (typeof PAIRS)[number];

/** The answers of each, in the order of their chances. */
export const PAIR_ANSWERS = {
  continuity: ['joined', 'apart'],
  'touch-standby': TOUCH_RESULTS,
  'touch-running': TOUCH_RESULTS,
  'lamp-standby': LAMP_RESULTS,
  'lamp-running': LAMP_RESULTS,
} as const;

/** For one reading between two pins: the chances of its answers, at [first kind × kinds + second kind]. */
export interface PairTable {
  readonly kinds: number;
  readonly rows: readonly Float64Array[];
  readonly inGeneral: Float64Array;
}

/** Where meters begin to beep (common practice, no source: 20 to 60 Ω). */
const BEEP_OHMS = { least: 20, most: 60 } as const;
/** A level that counts as low at a switch input (common practice, no source). */
const LOW_VOLTS: Volts = 0.8;
/** The LED tester: an indicator LED and a resistor; what is needed to see it (common practice, no source). */
const TESTER = { ledVolts: 1.9, ohms: 1_000, seenAmps: 0.0003 } as const;
/** How often the answer that has to come is noticed: a drive at work while one looks, a system that obeys. */
const NOTICED = { answer: 0.98, stops: 0.5, flicker: 0.85 } as const;

/** Both hang on the same rail: then a meter sees them joined through it, with no load in between. */
function sharedRail(a: PinKind, b: PinKind): Ohms | undefined {
  for (const first of a.stub)
    for (const second of b.stub) {
      if (!isRail(first) || !isRail(second) || first.rail !== second.rail) continue;
      return parameterAt(seriesOhms(first), 'usual') + parameterAt(seriesOhms(second), 'usual');
    }
  return undefined;
}

type RailElement = Extract<StubElement, { rail: unknown }>;

function isRail(element: StubElement): element is RailElement {
  return element.kind === 'rail' || element.kind === 'fused-rail';
}

function seriesOhms(element: RailElement) {
  return element.kind === 'rail' ? element.ohms : element.coldOhms;
}

type BehindBy = (kind: PinKind, state: MeasuredIn) => readonly Behind[];

/** Every board of one kind beside another board of the other, so that the two do not rise together. */
function beside(
  first: readonly Behind[],
  second: readonly Behind[],
  each: (a: Behind, b: Behind, share: number) => void,
) {
  for (let board = 0; board < BOARDS; board++) {
    const a = first[board];
    const b = second[(board * 37 + 11) % BOARDS];
    if (a && b) each(a, b, (board + 0.5) / BOARDS);
  }
}

function continuity(a: PinKind, b: PinKind, behind: BehindBy): Float64Array {
  const rail = sharedRail(a, b);
  let joined = 0;
  beside(behind(a, 'unplugged'), behind(b, 'unplugged'), (first, second, share) => {
    const through = first.ohms + second.ohms;
    const ohms = rail === undefined ? through : Math.min(rail, through);
    if (ohms < BEEP_OHMS.least + share * (BEEP_OHMS.most - BEEP_OHMS.least)) joined += 1 / BOARDS;
  });
  return Float64Array.of(joined, 1 - joined);
}

function touch(a: PinKind, b: PinKind, supply: 'standby' | 'running', behind: BehindBy): Float64Array {
  const row = new Float64Array(TOUCH_RESULTS.length);
  const answer = answerTo(a.touched ?? b.touched, supply);
  let works = 0;
  if (answer !== undefined && (a.touched === undefined || b.touched === undefined))
    beside(behind(a, supply), behind(b, supply), (first, second) => {
      if (levelJoined(first, second) < LOW_VOLTS) works += 1 / BOARDS;
    });
  const noticed = works * (answer === 'stopped' ? NOTICED.stops : NOTICED.answer);
  if (answer !== undefined) row[TOUCH_RESULTS.indexOf(answer)] = noticed;
  row[TOUCH_RESULTS.indexOf('nothing')] = 1 - noticed;
  return row;
}

function levelJoined(a: Behind, b: Behind): Volts {
  const siemens = 1 / a.ohms + 1 / b.ohms;
  return siemens === 0 ? 0 : (a.volts / a.ohms + b.volts / b.ohms) / siemens;
}

function lamp(plus: PinKind, minus: PinKind, supply: 'standby' | 'running', behind: BehindBy): Float64Array {
  const litIn = (state: MeasuredIn) => {
    let lit = 0;
    beside(behind(plus, state), behind(minus, state), (a, b) => {
      const amps = (a.volts - b.volts - TESTER.ledVolts) / (a.ohms + b.ohms + TESTER.ohms);
      if (amps > TESTER.seenAmps) lit += 1 / BOARDS;
    });
    return lit;
  };
  const idle = litIn(supply);
  const busy = supply === 'running' ? litIn('busy') : idle;
  const flickers = Math.max(0, busy - idle) * NOTICED.flicker;
  const chances = { dark: 1 - idle - flickers, lit: idle, flickers };
  return Float64Array.from(LAMP_RESULTS, (result) => chances[result]);
}

function rowOf(pair: Pair, a: PinKind, b: PinKind, behind: BehindBy): Float64Array {
  switch (pair) {
    case 'continuity':
      return continuity(a, b, behind);
    case 'touch-standby':
      return touch(a, b, 'standby', behind);
    case 'touch-running':
      return touch(a, b, 'running', behind);
    case 'lamp-standby':
      return lamp(a, b, 'standby', behind);
    case 'lamp-running':
      return lamp(a, b, 'running', behind);
  }
}

const tablesOf = byIdentity((kinds: readonly PinKind[]) => {
  const known = new Map<string, readonly Behind[]>();
  const behind: BehindBy = ({ index, stub }, state) => {
    const key = `${index} ${state}`;
    const found = known.get(key) ?? behindPin(stub, state);
    known.set(key, found);
    return found;
  };
  const tableOf = (pair: Pair): PairTable => {
    const rows = kinds.flatMap((a) => kinds.map((b) => rowOf(pair, a, b, behind)));
    const answers = PAIR_ANSWERS[pair].length;
    const mean = Float64Array.from({ length: answers }, (_, at) => {
      const sum = rows.reduce((all, row) => all + (row[at] ?? 0), 0);
      return (sum / rows.length + 1 / answers) / 2;
    });
    return { kinds: kinds.length, rows, inGeneral: mean };
  };
  return new Map(PAIRS.map((pair) => [pair, tableOf(pair)]));
});

/** What a reading between two pins shows, by the kinds of both. Worked out once. */
export function pairAnswers(pair: Pair): PairTable {
  const table = tablesOf(pinKinds()).get(pair);
  if (table === undefined) throw new Error(`No table for ${pair}`);
  return table;
}
