import type { Build } from '../document/build';
import { anyConnectorOf, type PinRef, pinOf } from '../document/lookup';
import type { RailId, StubElement } from '../signals/stub';
import type { Device } from './device';
import { type Element, type Subject, stubDeviceId } from './elements';
import { railDeviceId } from './pin-devices';
import { standingOf, stubWhere } from './standing';

/** Something that the board holds behind a pin; tripped where it is a fuse that has. */
export interface BoardPiece {
  readonly kind: 'board';
  readonly pin: PinRef;
  readonly stub: StubElement;
  readonly tripped: boolean;
}

/** What current passes on its way: a rail, what the board holds behind a pin, a wire or a part. */
export type Piece =
  /** A rail that is not live is a load to ground. */
  | { readonly kind: 'rail'; readonly pin: PinRef; readonly rail: RailId; readonly live: boolean }
  | BoardPiece
  /** From one pin of a hub to another that carries the same. */
  | { readonly kind: 'hub'; readonly unit: string }
  | Exclude<Subject, { kind: 'pin' }>;

/** What of a build a device of an element is, with the fuses that have tripped. */
export function pieceOf(
  build: Build,
  { id, subject }: Element,
  device: Device,
  tripped: ReadonlySet<string>,
): Piece {
  if (subject.kind !== 'pin') return subject;
  const connector = anyConnectorOf(build, subject.pin.connector);
  const standing = standingOf(build, subject.pin.connector);
  if (standing.kind === 'joins') return { kind: 'hub', unit: standing.unit.id };
  const stubs = connector ? stubWhere(pinOf(connector, subject.pin.pin), standing) : [];
  for (const [index, stub] of stubs.entries()) {
    const own = stubDeviceId(id, index);
    if (device.id === own) return { kind: 'board', pin: subject.pin, stub, tripped: tripped.has(own) };
    if (device.id === railDeviceId(own) && 'rail' in stub)
      return { kind: 'rail', pin: subject.pin, rail: stub.rail, live: device.kind === 'voltage' };
  }
  throw new Error(`No stub of ${id} makes ${device.id}`);
}
