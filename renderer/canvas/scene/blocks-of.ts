import type { Mm } from '../../../boards/base/units';
import type { Build } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { type Block, namesOnWay, USUAL_ROOMS } from '../../../boards/drawing/block';
import type { WayOut } from '../../../boards/drawing/frame';
import type { Measure } from '../../../boards/drawing/measure';
import { roomsBeside } from '../../../boards/drawing/plug-shape';
import type { SeatedPlug } from '../../../boards/fit/seated-plug';
import { rememberedBlock } from './block-memo';
import { type RectBuckets, rectBuckets } from './rect-buckets';

/**
 * The blocks of all connectors. Names begin further out where a plug hangs over the edge, and are left
 * out on a way where a neighbour stands too near for them: the list beside the canvas has them all.
 */
export function blocksOf(
  connectors: readonly Connector[],
  seated: ReadonlyMap<Connector, readonly SeatedPlug[]>,
  view: Build['view'],
  measure: Measure,
): readonly Block[] {
  const wanted = connectors.map((connector) => {
    const usual = rememberedBlock(connector, view, USUAL_ROOMS, measure);
    return rememberedBlock(connector, view, roomsBeside(usual, seated.get(connector) ?? []), measure);
  });
  const taken = rectBuckets<Connector>();
  for (const block of wanted) taken.add(block.shell, block.connector);
  return wanted.map((block) => {
    const rooms = { before: roomLeft(block, 'before', taken), after: roomLeft(block, 'after', taken) };
    const kept = rememberedBlock(block.connector, view, rooms, measure);
    for (const name of kept.names) taken.add(name.box, kept.connector);
    return kept;
  });
}

function roomLeft(block: Block, way: WayOut, taken: RectBuckets<Connector>): Mm | null {
  const foreign = (connector: Connector) => connector !== block.connector;
  const meets = namesOnWay(block, way).some((name) => taken.isTaken(name.box, foreign));
  return meets ? null : block.rooms[way];
}
