import { byIdentity } from '../../base/by-identity';
import type { Volts } from '../../base/units';
import { circuitOf } from '../../circuit/circuit';
import { spanOfValues } from '../../circuit/corner';
import { BUSY, type Button, type MachineState, RESTING, RUNNING } from '../../circuit/machine-state';
import type { Glow } from '../../circuit/readings/glow';
import { inputPins, inputVoltsAtCorners } from '../../circuit/readings/inputs';
import { lampsOf } from '../../circuit/readings/lamps';
import { levelOf } from '../../circuit/readings/level';
import type { BoardSheet } from '../../document/board-sheet';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import type { Part } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import { jointsOf } from '../../fit/joints';
import { partKindOf } from '../../signals/part-kinds';
import { isLed } from '../../signals/part-traits';
import type { Pull } from '../start-chain/machine';

/** An LED that some seated plug touches, and what it usually shows. */
interface Light {
  readonly kind: string;
  readonly running: Glow;
  readonly busy: Glow;
  readonly resting: Glow;
}

/**
 * What some seated leads do to the inputs of a board and show. No two plugs share a pin and rails are
 * stiff, so leads know nothing of each other: what a build shows is put together from shares of its leads.
 */
export interface Showing {
  /** At every corner; undefined where none of the leads touches the input. */
  readonly volts: (input: Button, state: MachineState) => readonly Volts[] | undefined;
  /** Whether any of the leads touches an input at all. */
  readonly touchesInput: boolean;
  readonly lights: readonly Light[];
  /** Whether a fan tells its speed to a header that the board watches. */
  readonly tellsSpeed: boolean;
}

const inputPinsOf = byIdentity(
  (board: BoardSheet) => inputPins(board.connectors),
  ({ connectors }) => [connectors],
);

/** What all seated leads of a build show, by its circuit; without one where nothing of it is asked for. */
export function showingOf(build: Build): Showing {
  const joints = jointsOf(build);
  const tellsSpeed = joints.some(
    ({ terminal, pin, connector }) =>
      terminal?.id === 'tach' && pin?.signal === 'fan-tach' && isWatched(connector),
  );
  const touchesInput = joints.some(({ pin }) => isButtonInput(pin?.signal));
  if (!touchesInput && !joints.some(({ lead }) => lead.parts.some(isLight)))
    return { volts: () => undefined, touchesInput, lights: [], tellsSpeed };
  const circuit = circuitOf(build);
  return {
    touchesInput,
    volts: (input, state) => inputVoltsAtCorners(circuit, inputPinsOf(build.board)[input], state),
    lights: lampsOf(build, circuit).map((lamp) => ({
      kind: lamp.kind,
      running: lamp.usualLook(RUNNING),
      busy: lamp.usualLook(BUSY),
      resting: lamp.usualLook(RESTING),
    })),
    tellsSpeed,
  };
}

function isButtonInput(signal: string | undefined): boolean {
  return signal === 'power-switch-input' || signal === 'reset-switch-input';
}

function isLight({ kind }: Part): boolean {
  return isLed(partKindOf(kind));
}

/** Whether a header is the one that the board's print names for the processor's fan. */
export function isWatched({ print, pins }: Connector): boolean {
  return /cpu/i.test(print) && pins.some(({ signal }) => signal === 'fan-tach');
}

/** What the shares say together of an input: the lowest voltage counts, and one that nothing touches is free. */
export function pullAt(showings: readonly Showing[], input: Button, state: MachineState): Pull {
  const found = showings.flatMap(({ volts }) => {
    const own = volts(input, state);
    return own ? [own] : [];
  });
  const [first, ...others] = found;
  const lowest = first?.map((volt, at) => Math.min(volt, ...others.map((other) => other[at] ?? volt)));
  return PULL[levelOf(lowest && spanOfValues(lowest))];
}

const PULL = { low: 'held', depends: 'now-and-then', high: 'free' } as const satisfies Record<string, Pull>;

/** A build with only some of its leads, or without them. The same small case for the same leads. */
export function withOnly(build: Build, leads: readonly string[]): Build {
  return restricted(build, (id) => leads.includes(id));
}

export function without(build: Build, leads: readonly string[]): Build {
  return restricted(build, (id) => !leads.includes(id));
}

function restricted(build: Build, keeps: (lead: string) => boolean): Build {
  return {
    ...build,
    seats: build.seats.filter(({ lead }) => keeps(lead)),
    case: { ...build.case, leads: build.case.leads.filter(({ id }) => keeps(id)) },
    extras: build.extras.filter(({ id }) => keeps(id)),
  };
}

/** The kinds of light that a build's leads have, seated or not. */
export function lightKindsOf(build: Build): ReadonlySet<string> {
  return new Set(leadsOf(build).flatMap(({ parts }) => parts.map(({ kind }) => kind)));
}
