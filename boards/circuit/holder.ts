import type { Build } from '../document/build';
import type { Surroundings } from './around';
import type { Corner } from './corner';
import { type Device, GROUND, type NodeName } from './device';
import type { MachineState } from './machine-state';
import { type BoardPiece, pieceOf } from './piece';

/** What ties a still node to its level: something that the board holds behind a pin. */
export interface Holder extends BoardPiece {
  /** Whether its rail is live; true for ground. */
  readonly live: boolean;
}

/** The nearest thing that pulls at an element: behind its own pin, or along wires and parts behind another. */
export function holderOf(
  build: Build,
  { element, elements, solution }: Surroundings,
  state: MachineState,
  corner: Corner,
): Holder | undefined {
  const devices = elements.map((each) => ({ each, own: each.devices(state, corner).filter(joins) }));
  const reached = new Set<NodeName>(element.nodes);
  for (const node of reached) {
    for (const { each, own } of devices) {
      for (const device of own) {
        const far = device.a === node ? device.b : device.b === node ? device.a : undefined;
        if (far === undefined) continue;
        const piece = pieceOf(build, each, device, solution.tripped);
        if (piece.kind === 'board') {
          return { ...piece, live: !own.some((other) => isDeadRail(other, far)) };
        }
        if (far !== GROUND) reached.add(far);
      }
    }
  }
  return undefined;
}

/** A rail that is off is a load between its node and ground. */
function isDeadRail({ kind, a, b }: Device, node: NodeName): boolean {
  return kind === 'resistor' && a === node && b === GROUND;
}

/** Whether a device would carry anything at all. */
function joins(device: Device): boolean {
  if (device.kind === 'switch') return device.closed;
  return device.kind !== 'open-drain' || device.on;
}
