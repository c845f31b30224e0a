import { never } from '../../base/never';
import { GROUND } from '../../circuit/device';
import type { Holder } from '../../circuit/holder';
import type { Path, PathStep } from '../../circuit/path';
import type { BoardPiece, Piece } from '../../circuit/piece';
import type { Build } from '../../document/build';
import { anyConnectorOf, leadOf, type PinRef, pinOf, unitWith } from '../../document/lookup';
import { connectorName, leadName, unitName } from '../../document/names';
import { type ParameterId, parameterAt } from '../../signals/parameters';
import { partKindOf } from '../../signals/part-kinds';
import type { RailId } from '../../signals/stub';
import { pinWithJob } from './names';
import { ohmsSpanText, ohmsText, smallAmpsText, voltsExactText } from './numbers';

/** A path told: a line above it, and a line for each step; no steps where nothing flows. */
export interface PathWords {
  readonly head: string;
  readonly steps: readonly string[];
}

/** The way of the current in plain words, or what holds the level where none flows. */
export function pathWords(build: Build, path: Path): PathWords {
  if (path.kind === 'still') return { head: stillWords(build, path), steps: [] };
  const most = Math.max(...path.steps.map(({ amps }) => amps));
  return {
    head: `${smallAmpsText(most)} flows, from the supply to ground:`,
    steps: path.steps.map((step) => stepWords(build, step)),
  };
}

/** "through about 330 Ω (150 Ω to 1 kΩ), to pin 1 (drive LED +) of PANEL: 2.1 V, 8.9 mA". */
function stepWords(build: Build, { piece, to, amps }: PathStep): string {
  const numbers = `${voltsExactText(to.volts)}, ${smallAmpsText(amps)}`;
  const into = piece.kind === 'rail' && to.node === GROUND;
  const target = to.pin ? `, to ${pinText(build, to.pin)}` : '';
  return `${into ? 'into ' : ''}${pieceWords(build, piece)}${target}: ${numbers}`;
}

function pieceWords(build: Build, piece: Piece): string {
  switch (piece.kind) {
    case 'rail':
      return railWords(build, piece);
    case 'board':
      return `through ${stubWords(build, piece)}`;
    case 'hub':
      return `through ${unitName(build, piece.unit)}`;
    case 'wire': {
      const wire = leadOf(build, piece.lead)?.wires[piece.wire];
      const colour = wire?.stripe ? `${wire.colour} and ${wire.stripe}` : wire?.colour;
      return `through the ${colour ?? ''} wire of ${leadName(build, piece.lead)}`;
    }
    case 'part': {
      const part = leadOf(build, piece.lead)?.parts.find(({ id }) => id === piece.part);
      return `through the ${part ? partKindOf(part.kind).name : 'part'}`;
    }
    default:
      return never(piece);
  }
}

const RAIL_NAMES: Readonly<Record<RailId, (owner: string) => string>> = {
  'main-5v': (owner) => `the +5\u00a0V rail of ${owner}`,
  'main-12v': (owner) => `the +12\u00a0V rail of ${owner}`,
  'main-3v3': (owner) => `the +3.3\u00a0V rail of ${owner}`,
  'main-minus-12v': (owner) => `the −12\u00a0V rail of ${owner}`,
  'main-minus-5v': (owner) => `the −5\u00a0V rail of ${owner}`,
  'standby-5v': (owner) => `the +5\u00a0V standby rail of ${owner}`,
  logic: (owner) => `the supply of ${owner}’s inputs`,
  audio: (owner) => `the audio supply of ${owner}`,
  serial: () => 'the supply of the serial outputs',
  cell: (owner) => `the coin cell of ${owner}`,
};

/** What a pin belongs to: "the board", or a unit by its name. */
function ownerOf(build: Build, { connector }: PinRef): string {
  return unitWith(build, connector)?.name ?? 'the board';
}

interface Rail {
  readonly rail: RailId;
  readonly live: boolean;
  readonly pin: PinRef;
}

function railWords(build: Build, { rail, live, pin }: Rail): string {
  return `${RAIL_NAMES[rail](ownerOf(build, pin))}${live ? '' : ', which is off,'}`;
}

/** Less than this is a plain piece of copper. */
const LEAST_TOLD_OHMS = 1;

function stubWords(build: Build, { pin, stub, tripped }: BoardPiece): string {
  const owner = ownerOf(build, pin);
  switch (stub.kind) {
    case 'rail':
      return isCopper(stub.ohms) ? `a trace of ${owner}` : ohmsOf(build, pin, stub.ohms);
    case 'fused-rail':
      return `a resettable fuse in ${owner}${tripped ? ', which has tripped' : ''}`;
    case 'ground':
      return isCopper(stub.ohms) ? `the ground of ${owner}` : `${ohmsOf(build, pin, stub.ohms)}, to ground`;
    case 'pulls-low':
      return `${stub.when === 'sockets-used' ? `a jack of ${owner} with a plug in it` : `an output of ${owner} that pulls down`}, ${ohmsOf(build, pin, stub.ohms)}, to ground`;
    default:
      return never(stub);
  }
}

function isCopper(ohms: ParameterId): boolean {
  return parameterAt(ohms, 'usual') < LEAST_TOLD_OHMS;
}

/** "about 330 Ω (150 Ω to 1 kΩ)", or what the sheet states. */
function ohmsOf(build: Build, { connector: id, pin: label }: PinRef, parameter: ParameterId): string {
  const connector = anyConnectorOf(build, id);
  const stated = connector && pinOf(connector, label).values?.find((value) => value.parameter === parameter);
  if (stated) return `${ohmsText(stated.value)} (from the board sheet)`;
  const [strong, weak] = [parameterAt(parameter, 'strong'), parameterAt(parameter, 'weak')];
  const range = ohmsSpanText(Math.min(strong, weak), Math.max(strong, weak));
  return `about ${ohmsText(parameterAt(parameter, 'usual'))} (${range})`;
}

function stillWords(build: Build, { volts, holder }: Extract<Path, { kind: 'still' }>): string {
  if (!holder) return 'Nothing flows here, and nothing holds a level.';
  const level = volts === undefined ? 'no certain level' : voltsExactText(volts);
  return `Nothing flows here; it is held at ${level} by ${holderWords(build, holder)}.`;
}

function holderWords(build: Build, holder: Holder): string {
  const { pin, stub, live } = holder;
  const at = `at ${pinText(build, pin)}`;
  if (stub.kind === 'rail' || stub.kind === 'fused-rail')
    return `${railWords(build, { rail: stub.rail, live, pin })} through ${stubWords(build, holder)}, ${at}`;
  return `${stubWords(build, holder)}, ${at}`;
}

function pinText(build: Build, pin: PinRef): string {
  return `${pinWithJob(build, pin)} of ${connectorName(build, pin.connector)}`;
}
