import { byIdentity } from '../base/by-identity';
import type { Volts } from '../base/units';
import type { Span } from '../circuit/corner';
import { RESTING, RUNNING } from '../circuit/machine-state';
import { arrivalAt, arrivalAtHole } from '../circuit/readings/arrivals';
import { standingOf, takersOf } from '../circuit/standing';
import type { Build } from '../document/build';
import type { Connector, Pin } from '../document/connector';
import { anyConnectorOf, type PinRef, pinOf, unitsOf } from '../document/lookup';
import { powerJobOf } from '../document/power-job';
import { CONNECTOR_TYPES } from '../library/connectors/index';
import type { Job } from '../signals/signal';
import { type SignalId, signalOf } from '../signals/signals';
import type { CheckContext, CheckedPlug, LoosePlug } from './context';

/** Contacts that a cable joins to ground, so that a device knows what is plugged in. */
export const GROUNDED_BY_CABLE: readonly SignalId[] = [
  'card-sense',
  'card-sense0',
  'card-sense1',
  'drive-spin-up',
];

/** How what arrives at a pin agrees with what it is made for. */
export type Fed =
  | 'right'
  /** Nothing arrives: no wire, or one that ends in the air. */
  | 'nothing'
  /** It comes from a pin of which nobody has said what it carries. */
  | 'untold'
  | 'too-much'
  | 'backwards'
  /** A supply on a pin that is ground. */
  | 'short'
  | 'too-little'
  /** A line of another kind than the pin is. */
  | 'other-line'
  /** The same volts, of standby alone: too weak for what runs, and there before anything should be. */
  | 'only-standby'
  /** The same volts, and none before the machine runs, which standby is there to start. */
  | 'only-running';

/** A pin that takes power, and what the wires bring to it. */
export interface FedPin {
  readonly pin: PinRef;
  readonly signal: SignalId;
  readonly fed: Fed;
  /** What would arrive, in the state in which it is most; undefined where it hangs in the air. */
  readonly arrives: Span | undefined;
  readonly from: readonly PinRef[];
  readonly leads: readonly string[];
}

/** A hole of a plug that lies loose, and what the wires bring to it. */
export interface FedHole extends Omit<FedPin, 'pin'> {
  readonly hole: string;
}

/**
 * What would arrive at the holes of a power plug that lies loose, held against the connector of the library
 * that plugs of its shape and size are made for. None for a plug of another shape.
 */
export function fedHolesOf(build: Build, { ref, plug }: LoosePlug): readonly FedHole[] {
  if (powerJobOf({ family: plug.family, pins: [] }) === undefined) return [];
  const type = CONNECTOR_TYPES.find(
    ({ connector: { family, grid } }) =>
      family === plug.family && grid.rows === plug.grid.rows && grid.cols === plug.grid.cols,
  );
  return (type?.connector.pins ?? []).flatMap(({ pin: hole, signal = 'unknown' }): readonly FedHole[] => {
    const { from, leads, volts } = arrivalAtHole(build, ref, hole);
    if (from.length === 0) return [];
    const arrives = largest(volts(RESTING), volts(RUNNING));
    return [{ hole, signal, from, leads, arrives, fed: verdict(build, signal, from, arrives) }];
  });
}

/** What may be missing or too much before a rail is not the one that is wanted: tolerances are 5 and 10 %. */
const TOLERANCE = 0.12;
/** Less than this on a ground is what its own wire drops. */
const NO_VOLTS: Volts = 0.5;

const HARMFUL: readonly Fed[] = ['too-much', 'backwards', 'short'];
const WRONG: readonly Fed[] = [...HARMFUL, 'too-little', 'other-line', 'only-standby', 'only-running'];

export function isHarmful({ fed }: Pick<FedPin, 'fed'>): boolean {
  return HARMFUL.includes(fed);
}

/** Something else arrives than the pin is made for. */
export function isWronglyFed({ fed }: Pick<FedPin, 'fed'>): boolean {
  return WRONG.includes(fed);
}

/** What arrives at the pins that a plug covers on a connector that takes power; none for another connector. */
export function fedPinsUnder({ build }: CheckContext, { connector, joints }: CheckedPlug): readonly FedPin[] {
  if (standingOf(build, connector.id).kind !== 'takes' || powerJobOf(connector) === undefined) return [];
  const pins = new Map(joints.flatMap(({ pin }) => (pin ? [[pin.pin, pin] as const] : [])));
  return [...pins.values()].map((pin) => fedPin(build, connector, pin));
}

/** What arrives at one pin. */
function fedPin(build: Build, connector: Connector, pin: Pin): FedPin {
  const ref = { connector: connector.id, pin: pin.pin };
  const signal = pin.signal ?? 'unknown';
  const { from, leads, volts } = arrivalAt(build, ref);
  const arrives = largest(volts(RESTING), volts(RUNNING));
  return { pin: ref, signal, from, leads, arrives, fed: verdict(build, signal, from, arrives) };
}

function largest(one: Span | undefined, other: Span | undefined): Span | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return Math.abs(one.usual) > Math.abs(other.usual) ? one : other;
}

function verdict(build: Build, signal: SignalId, from: readonly PinRef[], arrives: Span | undefined): Fed {
  return fedBy(
    signal,
    from.map((ref) => signalAt(build, ref)),
    arrives?.usual ?? 0,
  );
}

/**
 * How what is given to a pin agrees with what it is made for.
 *
 * @param given what the pins carry that the wires come from
 * @param volts what arrives against ground
 */
export function fedBy(signal: SignalId, given: readonly SignalId[], volts: Volts): Fed {
  if (given.length === 0) return 'nothing';
  if (given.includes('unknown')) return 'untold';
  const { nature, volts: wanted } = signalOf(signal);
  if (nature === 'open' || nature === 'unknown' || signal === 'drive-power-disable') return 'right';
  if (nature === 'ground' || GROUNDED_BY_CABLE.includes(signal))
    return Math.abs(volts) > NO_VOLTS ? 'short' : 'right';
  if (wanted === undefined) return lineVerdict(signal, given, volts);
  if (Math.abs(volts) <= NO_VOLTS) return given.some(isGround) ? 'too-little' : 'nothing';
  if (Math.sign(volts) !== Math.sign(wanted)) return 'backwards';
  const part = volts / wanted;
  if (part > 1 + TOLERANCE) return 'too-much';
  return part < 1 - TOLERANCE ? 'too-little' : railVerdict(signal, given);
}

const STANDBY: SignalId = 'supply-5v-standby';

/** +5 V and +5 V standby differ in nothing but when they are there, and in how much they give. */
function railVerdict(signal: SignalId, given: readonly SignalId[]): Fed {
  if (signal === STANDBY) return given.includes(STANDBY) ? 'right' : 'only-running';
  return given.every((id) => id === STANDBY) ? 'only-standby' : 'right';
}

/** PS_ON# and PWR_OK have to come from their own like. */
function lineVerdict(signal: SignalId, given: readonly SignalId[], volts: Volts): Fed {
  if (given.every((id) => id === signal)) return 'right';
  return Math.abs(volts) > 5.5 ? 'too-much' : 'other-line';
}

function isGround(signal: SignalId): boolean {
  return signalOf(signal).nature === 'ground';
}

function signalAt(build: Build, { connector, pin }: PinRef): SignalId {
  const found = anyConnectorOf(build, connector);
  return (found && pinOf(found, pin).signal) ?? 'unknown';
}

/** One connector that takes power, with what arrives at each of its rails. */
export interface Inlet {
  readonly connector: Connector;
  readonly job: Job;
  readonly plugs: readonly CheckedPlug[];
  /** Every pin with a rail on it, covered by a plug or not. */
  readonly rails: readonly FedPin[];
  /** PS_ON# and PWR_OK, by which a board switches the supply on and is told that it is. */
  readonly lines: readonly FedPin[];
}

/** Every connector of board and devices that takes power, as far as a supply is in the build that tells its outlets. */
export const inletsOf = byIdentity(({ build, plugs }: CheckContext): readonly Inlet[] => {
  if (!tellsOutlets(build)) return [];
  return takersOf(build).flatMap((connector): readonly Inlet[] => {
    const job = powerJobOf(connector);
    if (job === undefined) return [];
    return [
      {
        connector,
        job,
        plugs: plugs.filter((plug) => plug.connector.id === connector.id),
        rails: connector.pins.filter(isRail).map((pin) => fedPin(build, connector, pin)),
        lines: connector.pins.filter(isLine).map((pin) => fedPin(build, connector, pin)),
      },
    ];
  });
});

function isRail({ signal, missing }: Pin): boolean {
  return missing !== true && signal !== undefined && signalOf(signal).nature === 'supply';
}

function isLine({ signal, missing }: Pin): boolean {
  return missing !== true && (signal === 'ps-on' || signal === 'power-ok');
}

/** Some rail arrives, or comes from where nobody has said what is there: then nothing certain is missing. */
export function isFed({ rails }: Inlet): boolean {
  return rails.some(({ fed }) => fed !== 'nothing');
}

/** Whether the build has a supply of which at least one pin of one outlet is known. */
export function tellsOutlets(build: Build): boolean {
  return unitsOf(build).some(
    ({ kind, connectors }) =>
      kind === 'supply' &&
      connectors.some(({ pins }) => pins.some(({ signal }) => signal !== undefined && signal !== 'unknown')),
  );
}
