import { byIdentity } from '../../../../boards/base/by-identity';
import { seededRandom } from '../../../../boards/base/random';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import { CONNECTOR_TYPES } from '../../../../boards/library/connectors/index';
import { FAMILY } from '../../../../boards/library/families';
import { headerOf } from '../../../../boards/pinout/meter/header';
import {
  type Chances,
  chancesIn,
  type Held,
  kindChances,
  startHeld,
  withReading,
} from '../../../../boards/pinout/meter/held';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { areAlike, heldOf, identifyPins } from '../../../../boards/pinout/meter/identify';
import { IDENTIFIED, nextReading } from '../../../../boards/pinout/meter/next-reading';
import { riskOf } from '../../../../boards/pinout/meter/risks';
import { type MeterState, stateFor } from '../../../../boards/pinout/meter/words';
import { SIGNAL_IDS, type SignalId } from '../../../../boards/signals/signals';
import { STRANGE_LAYOUTS } from '../layouts/strange-layouts';
import { simulatedMeter } from './simulated-meter';

/** Most readings that a run takes before it counts as not ending. */
const MOST_READINGS = 80;

/** A header whose pins are to be found out: its grid, its missing pins, and the truth. */
export interface Unknown {
  readonly id: string;
  readonly connector: Connector;
  readonly truth: ReadonlyMap<string, SignalId>;
}

/** A connector of the library as a person has it before any reading: the grid, and which posts are gone. */
function unknownFrom(id: string, connector: Omit<Connector, 'id' | 'print' | 'place'>): Unknown {
  const standing = connector.pins.filter(({ missing }) => !missing);
  return {
    id,
    connector: {
      id: 'unknown',
      print: '',
      title: '',
      family: connector.family,
      grid: connector.grid,
      place: { xMm: 0, yMm: 0, turn: 0 },
      pins: connector.pins.filter(({ missing }) => missing).map(({ pin }) => ({ pin, missing: true })),
    },
    truth: new Map(standing.map(({ pin, signal }) => [pin, signal ?? 'unknown'])),
  };
}

const HEADERS = CONNECTOR_TYPES.filter(({ connector: { family } }) => family === FAMILY.pinHeader);

/** Every pin header of the library with up to twenty posts. */
export const KNOWN: readonly Unknown[] = HEADERS.map(({ id, connector }) =>
  unknownFrom(id, connector),
).filter(({ truth }) => truth.size <= 20);

/** Headers that the library lacks, as a stranger may bring them; none of them was looked at while weights were set. */
export const STRANGE: readonly Unknown[] = STRANGE_LAYOUTS.filter(({ pins }) => pins.length <= 20).map(
  ({ name, grid, pins }) => {
    const told = pins.map(([pin, is]) => {
      const signal = SIGNAL_IDS.find((id) => id === is.split('@')[0]);
      return is === 'no pin' ? { pin, missing: true as const } : { pin, ...(signal && { signal }) };
    });
    return unknownFrom(name, { title: name, family: FAMILY.pinHeader, grid, pins: told });
  },
);

export interface Run {
  readonly readings: number;
  readonly first: boolean;
  readonly sure: boolean;
}

/** What is the same at the start of every run on a header: worked out once. */
interface Start {
  readonly held: Held;
  readonly chances: Chances;
  readonly question: MeterQuestion | undefined;
}

const startOf = byIdentity(({ connector }: Unknown): Start => {
  const held = startHeld(headerOf(connector));
  const chances = chancesIn(held);
  return { held, chances, question: nextReading(held, chances, 'unplugged').next?.question };
});

const SLIPS = { noise: 0.05, wrong: 0.05 };

/** One run: readings are asked for and answered until one layout has 95 %, or nothing is left to ask. */
export function runOf(unknown: Unknown, seed: number, ask: Ask): Run {
  const meter = simulatedMeter(unknown.truth, seededRandom(seed), SLIPS);
  const start = startOf(unknown);
  let { held, chances } = start;
  for (let readings = 0; ; readings++) {
    let best = 0;
    for (let at = 1; at < chances.layouts.length; at++)
      if ((chances.layouts[at] ?? 0) > (chances.layouts[best] ?? 0)) best = at;
    const sure = (chances.layouts[best] ?? 0) >= IDENTIFIED;
    const question = sure || readings >= MOST_READINGS ? undefined : ask(held, chances);
    if (question === undefined) {
      const found = held.header.layouts[best]?.signals ?? [];
      const truth = held.header.posts.map(({ label }) => unknown.truth.get(label) ?? 'unknown');
      return { readings, first: areAlike(found, truth), sure };
    }
    held = withReading(held, meter.answer(question));
    chances = chancesIn(held);
  }
}

type Ask = (held: Held, chances: Chances) => MeterQuestion | undefined;

/** What the program proposes. */
export function chosen(unknown?: Unknown): Ask {
  const start = unknown && startOf(unknown);
  let state: MeterState = 'unplugged';
  return (held, chances) => {
    const question = held === start?.held ? start.question : nextReading(held, chances, state).next?.question;
    if (question !== undefined) state = stateFor(question);
    return question;
  };
}

/** Every pin's ohms, then volts in standby, then volts running, then pairs, in the order of the pins. */
export function fixedOrder({ truth }: Unknown): Ask {
  const pins = [...truth.keys()];
  const pairs = pins.flatMap((a, at) => pins.slice(at + 1).map((b) => [a, b] as const));
  const waiting: MeterQuestion[] = [
    ...pins.map((pin) => ({ kind: 'ohms', pin }) as const),
    ...pins.map((pin) => ({ kind: 'volts', pin, supply: 'standby' }) as const),
    ...pins.map((pin) => ({ kind: 'volts', pin, supply: 'running' }) as const),
    ...pairs.map((both) => ({ kind: 'continuity', pins: both }) as const),
    ...pairs.flatMap(([a, b]) => [
      { kind: 'lamp', plus: a, minus: b, supply: 'running' } as const,
      { kind: 'lamp', plus: b, minus: a, supply: 'running' } as const,
    ]),
    ...pairs.map((both) => ({ kind: 'touch', pins: both, supply: 'standby' }) as const),
  ];
  return (held, chances) => {
    for (;;) {
      const question = waiting.shift();
      if (question === undefined) return undefined;
      const isSingle = question.kind === 'ohms' || question.kind === 'volts';
      if (isSingle || riskOf(question, kindChances(held, chances), held.header.postOf) === undefined)
        return question;
    }
  };
}

/** How the pins stand after a run on a header that may be no known one. */
interface PinRun {
  readonly readings: number;
  readonly pins: number;
  /** Whose most probable signal is right, or not to be told from the right one. */
  readonly right: number;
  readonly certain: number;
  readonly certainAndWrong: number;
}

/** One run to the end of what readings tell, or so many of them; then pin by pin. */
export function pinRunOf({ connector, truth }: Unknown, seed: number, most: number): PinRun {
  const meter = simulatedMeter(truth, seededRandom(seed), SLIPS);
  const readings: PinReading[] = [];
  const ask = chosen();
  while (readings.length < most) {
    const held = heldOf(connector, readings);
    const question = ask(held, chancesIn(held));
    if (question === undefined) break;
    readings.push(meter.answer(question));
  }
  const found = identifyPins({ ...connector, readings });
  if (!found.ok) throw new Error(found.problem.code);
  const isRight = (pin: string, signal: SignalId | undefined) =>
    areAlike([signal ?? 'unknown'], [truth.get(pin) ?? 'unknown']);
  const { pins } = found.value;
  return {
    readings: readings.length,
    pins: pins.length,
    right: pins.filter(({ pin, chances }) => isRight(pin, chances[0]?.signal)).length,
    certain: pins.filter(({ certain }) => certain).length,
    certainAndWrong: pins.filter(({ pin, certain }) => certain && !isRight(pin, certain.signal)).length,
  };
}
