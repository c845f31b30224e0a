import type { Build } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { type Block, blockOf, type Rooms } from '../../../boards/drawing/block';
import type { Measure } from '../../../boards/drawing/measure';
import { orientationOf } from '../../../boards/drawing/orientation';

interface Entry {
  readonly view: Build['view'];
  readonly rooms: Rooms;
  readonly measure: Measure;
  readonly block: Block;
}

/** As usual, beside a neighbour, and each of them before the last change of the view. */
const REMEMBERED = 4;

const entries = new WeakMap<Connector, readonly Entry[]>();

/** The block of a connector; the same object again as long as nothing that it is drawn from has changed. */
export function rememberedBlock(
  connector: Connector,
  view: Build['view'],
  rooms: Rooms,
  measure: Measure,
): Block {
  const remembered = entries.get(connector) ?? [];
  const known = remembered.find(
    (entry) =>
      entry.measure === measure &&
      entry.view.turn === view.turn &&
      entry.view.mirrored === view.mirrored &&
      entry.rooms.before === rooms.before &&
      entry.rooms.after === rooms.after,
  );
  if (known) return known.block;
  const block = blockOf(connector, orientationOf(view), rooms, measure);
  entries.set(connector, [{ view, rooms, measure, block }, ...remembered].slice(0, REMEMBERED));
  return block;
}
