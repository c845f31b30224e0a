import { byIdentity } from '../../base/by-identity';
import type { Span } from '../../circuit/corner';
import type { NodeName } from '../../circuit/device';
import { type Element, pinIn, pinNode } from '../../circuit/elements';
import { type Button, type MachineState, RESTING } from '../../circuit/machine-state';
import type { Build } from '../../document/build';
import type { CONDITIONS, Part, Wire } from '../../document/lead';
import { anyConnectorOf, type PinRef } from '../../document/lookup';
import { withLead, withPart } from '../../document/with-part';
import type { Leg, SeatedPart } from '../../findings/seated-part';
import { pairsOf, seatedPartsOf } from '../../findings/seated-part';
import { jointsOf } from '../../fit/joints';
import { wiringOf } from '../../fit/seated-plug';
import { partKindOf } from '../../signals/part-kinds';
import { isLed, isSwitch } from '../../signals/part-traits';
import { type Neighbourhood, neighbourhoodOf } from './neighbourhood';
import { type MeterMode, type Reading, shownBy } from './probe';

/** In what the build is otherwise than it should be, so that the meter would show something else. */
export type Cause =
  | { readonly kind: 'condition'; readonly condition: (typeof CONDITIONS)[number] }
  | { readonly kind: 'off' }
  | { readonly kind: 'turned' };

/** What the meter shows in one position of the switch, or one way round of its probes. */
export interface ExpectedReading {
  readonly when: 'released' | 'pressed' | 'red-on-plus' | 'red-on-minus' | 'as-it-is';
  readonly red: PinRef;
  readonly black: PinRef;
  readonly mode: MeterMode;
  /** Ohms or volts by the mode; Infinity where nothing conducts. */
  readonly expected: Span;
  /** What it would show instead if something were wrong, as far as a meter can tell. */
  readonly otherwise: readonly { readonly cause: Cause; readonly shown: Span }[];
}

/** One thing to measure before power: unplugged, the plugs seated, at the pins of the header. */
export interface MeterStep {
  readonly kind: 'switch' | 'lamp' | 'supply';
  readonly lead: string | undefined;
  readonly part: string | undefined;
  readonly readings: readonly ExpectedReading[];
}

const UNPLUGGED: MachineState = { ...RESTING, supply: 'unplugged' };

/**
 * What a hand meter has to show before power comes, worked out by the solver for this wiring: every switch
 * released and pressed, every lamp both ways round, and that no supply pin under a plug lies on ground. A
 * part with a wire on no pin is left out: the checks have said so.
 */
export const meterStepsOf = byIdentity((build: Build): readonly MeterStep[] => {
  const parts = seatedPartsOf(jointsOf(build));
  const wired: Wired = { build, near: neighbourhoodOf(build) };
  return [
    ...parts.flatMap((part) => partStep(wired, part)),
    ...supplyPins(parts).map((pins) => supplyStep(wired, pins)),
  ];
}, wiringOf);

/** A build, and what in it a change or a probe can reach. */
interface Wired {
  readonly build: Build;
  readonly near: Neighbourhood;
}

function partStep(wired: Wired, seated: SeatedPart): readonly MeterStep[] {
  // Wires of one terminal to several plugs are one at the part: any pair of pins shows the same.
  const [pair] = pairsOf(seated);
  if (pair === undefined) return [];
  const [first, second] = pair.map(refOf) as [PinRef, PinRef];
  const { part, lead, kind } = seated;
  if (isSwitch(kind) && buttonOf(kind.job) !== undefined) {
    const button = buttonOf(kind.job);
    const at = (held: readonly Button[]): MachineState => ({ ...UNPLUGGED, held });
    const causes: readonly Cause[] = [
      { kind: 'condition', condition: 'stuck' },
      { kind: 'condition', condition: 'broken' },
      { kind: 'off' },
    ];
    const read = (when: 'released' | 'pressed', state: MachineState) =>
      expectedReading(wired, { when, mode: 'ohms', red: first, black: second, state }, seated, causes);
    return [
      {
        kind: 'switch',
        lead: lead.id,
        part: part.id,
        readings: [read('released', at([])), read('pressed', at(button ? [button] : []))],
      },
    ];
  }
  if (!isLed(kind)) return [];
  const causes: readonly Cause[] = [{ kind: 'off' }, { kind: 'turned' }];
  const read = (when: 'red-on-plus' | 'red-on-minus', red: PinRef, black: PinRef) =>
    expectedReading(wired, { when, mode: 'diode', red, black, state: UNPLUGGED }, seated, causes);
  return [
    {
      kind: 'lamp',
      lead: lead.id,
      part: part.id,
      readings: [read('red-on-plus', first, second), read('red-on-minus', second, first)],
    },
  ];
}

function buttonOf(job: string): Button | undefined {
  return job === 'power-switch' ? 'power' : job === 'reset-switch' ? 'reset' : undefined;
}

/** A supply pin and a ground pin of one header, both under a plug: the first of each. */
function supplyPins(parts: readonly SeatedPart[]): readonly (readonly [PinRef, PinRef])[] {
  const legs = parts.flatMap((part) => part.legs);
  const byConnector = new Map<string, { supply?: PinRef; ground?: PinRef }>();
  for (const leg of legs) {
    const ref = refOf(leg);
    const found = byConnector.get(ref.connector) ?? {};
    byConnector.set(ref.connector, found);
    if (leg.signal.nature === 'supply') found.supply ??= ref;
    if (leg.signal.nature === 'ground') found.ground ??= ref;
  }
  return [...byConnector.values()].flatMap(({ supply, ground }) =>
    supply && ground ? [[supply, ground] as const] : [],
  );
}

function supplyStep({ build, near }: Wired, [supply, ground]: readonly [PinRef, PinRef]): MeterStep {
  const asked = { when: 'as-it-is', mode: 'ohms', red: supply, black: ground, state: UNPLUGGED } as const;
  return {
    kind: 'supply',
    lead: undefined,
    part: undefined,
    readings: [{ ...probesOf(asked), expected: shownOn(build, asked, near), otherwise: [] }],
  };
}

interface Asked {
  readonly when: ExpectedReading['when'];
  readonly mode: MeterMode;
  readonly red: PinRef;
  readonly black: PinRef;
  readonly state: MachineState;
}

function probesOf({ when, mode, red, black }: Asked) {
  return { when, mode, red, black };
}

function expectedReading(
  { build, near }: Wired,
  asked: Asked,
  seated: SeatedPart,
  causes: readonly Cause[],
): ExpectedReading {
  const expected = shownOn(build, asked, near);
  const around = near.aroundLead(seated.lead.id);
  const otherwise = causes.flatMap((cause) => {
    const changed = withCause(around, seated, cause);
    const shown = shownOn(changed, asked, neighbourhoodOf(changed));
    return overlaps(expected, shown) ? [] : [{ cause, shown }];
  });
  return { ...probesOf(asked), expected, otherwise };
}

function overlaps(one: Span, other: Span): boolean {
  return one.low <= other.high && other.low <= one.high;
}

/** What the meter shows on a wiring between two pins: everything that either pin hangs together with takes part. */
function shownOn(build: Build, { mode, red, black, state }: Asked, near: Neighbourhood): Span {
  const reading: Reading = { mode, red: nodeOf(red), black: nodeOf(black), state };
  const elements = near.groupsAt([reading.red, reading.black]).flatMap((group) => group.elements);
  return shownBy([...elements, ...untouched(build, elements, [red, black])], reading);
}

/** A probe may stand on a pin that no plug touches; the board is behind it all the same. */
function untouched(build: Build, elements: readonly Element[], pins: readonly PinRef[]): readonly Element[] {
  return pins
    .filter((ref) => !elements.some(({ id }) => id === nodeOf(ref)))
    .flatMap((ref) => {
      const connector = anyConnectorOf(build, ref.connector);
      const pin = connector?.pins.find((each) => each.pin === ref.pin);
      return connector && pin ? [pinIn(build, connector, pin)] : [];
    });
}

function withCause(build: Build, { lead, part }: SeatedPart, cause: Cause): Build {
  switch (cause.kind) {
    case 'condition':
      return withPart(build, lead, { ...part, condition: cause.condition });
    case 'off':
      return { ...build, seats: build.seats.filter((seat) => seat.lead !== lead.id) };
    case 'turned':
      return withLead(build, { ...lead, wires: lead.wires.map((wire) => exchanged(wire, part)) });
  }
}

/** The wire at the other leg of a part with two. */
function exchanged(wire: Wire, part: Part): Wire {
  const [one, other] = partKindOf(part.kind).terminals.map(({ id }) => `${part.id}.${id}`);
  const far = (end: string) => (end === one ? other : end === other ? one : end) ?? end;
  return { ...wire, from: far(wire.from), to: far(wire.to) };
}

function refOf({ joint, pin }: Leg): PinRef {
  return { connector: joint.connector.id, pin: pin.pin };
}

function nodeOf({ connector, pin }: PinRef): NodeName {
  return pinNode(connector, pin);
}
