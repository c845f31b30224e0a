import type { Build } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { leadOf, samePlug, unitWith } from '../../../boards/document/lookup';
import { connectorName } from '../../../boards/document/names';
import type { Block } from '../../../boards/drawing/block';
import { type Rect, rectRound, rectRoundAll } from '../../../boards/drawing/geometry';
import { holesOf } from '../../../boards/drawing/holes';
import type { Measure } from '../../../boards/drawing/measure';
import { orientationOf, oriented } from '../../../boards/drawing/orientation';
import { type PlugShape, plugShapeOf } from '../../../boards/drawing/plug-shape';
import { type SeatedPlug, seatedPlugs } from '../../../boards/fit/seated-plug';
import { blocksOf } from './blocks-of';
import { printOnBody } from './body-print';
import { flagsOn } from './flags';
import { type Obstacles, obstacles } from './obstacles';
import type { Scene } from './scene';
import { sleeveOf } from './sleeves';
import { titleOf } from './titles';
import { byWay, wayFor } from './ways-out';
import {
  type FlagShape,
  MOST_SINGLE_WIRES,
  type SleeveShape,
  type WiredPlug,
  type WireShape,
  wiredPlug,
} from './wiring';

export interface SceneOptions {
  readonly view: Build['view'];
  readonly measure: Measure;
}

/**
 * Draws up a build: connectors, plugs, wires, flags and titles in oriented millimetres. Nothing in it
 * depends on the zoom. Blocks of connectors that have not changed are the same objects as before.
 */
export function sceneOf(build: Build, { view, measure }: SceneOptions): Scene {
  const orientation = orientationOf(view);
  const seated = new Map<Connector, SeatedPlug[]>();
  for (const plug of seatedPlugs(build))
    seated.set(plug.connector, [...(seated.get(plug.connector) ?? []), plug]);
  const blocks = blocksOf(build.board.connectors, seated, view, measure);
  const standing = obstacles();
  for (const block of blocks) addBlock(block, standing);

  const wired = blocks.map((block) =>
    (seated.get(block.connector) ?? []).map((plug) =>
      wiredPlug(plug, withFarEnd(build, plugShapeOf(plug, block)), block),
    ),
  );
  for (const { shape } of wired.flat()) standing.add(shape.body, { kind: 'plug', of: shape.connector });
  const flags: FlagShape[] = [];
  const wires: WireShape[] = [];
  const sleeves: SleeveShape[] = [];
  blocks.forEach((block, index) => {
    for (const placed of singleWires(block, wired[index] ?? [], standing, measure)) {
      flags.push(...placed.flags);
      wires.push(...placed.wires);
    }
  });
  for (const plug of wired.flat()) {
    if (plug.ends.length <= MOST_SINGLE_WIRES) continue;
    const placed = sleeveOf(plug, standing, measure);
    if (placed) sleeves.push(placed.sleeve);
    flags.push(placed?.flag ?? printOnBody(plug, measure));
  }
  const titles = blocks.flatMap((block) => titleOf(block, standing, measure) ?? []);
  const plugs = wired.flat().map((plug) => plug.shape);
  const outline = outlineOf(build, orientation);
  return {
    build,
    orientation,
    outline,
    holes: holesOf(build.board.outline, orientation),
    bounds: boundsOf(outline, blocks, plugs, flags, titles),
    blocks,
    plugs,
    wires,
    sleeves,
    flags,
    titles,
  };
}

/** A cable whose other end is on a unit is called by that too: the drawing shows the board alone. */
function withFarEnd(build: Build, shape: PlugShape): PlugShape {
  const lead = leadOf(build, shape.ref.lead);
  if (lead === undefined || lead.parts.length > 0) return shape;
  const far = build.seats.find(
    (seat) => seat.lead === lead.id && !samePlug(seat, shape.ref) && unitWith(build, seat.connector),
  );
  return far ? { ...shape, name: `${shape.name} to ${connectorName(build, far.connector)}` } : shape;
}

function outlineOf(build: Build, orientation: Scene['orientation']): Rect {
  const { widthMm, depthMm } = build.board.outline;
  return rectRound([
    oriented(orientation, { x: 0, y: 0 }),
    oriented(orientation, { x: widthMm, y: depthMm }),
  ]);
}

function boundsOf(
  outline: Rect,
  ...boxed: readonly (readonly ({ bounds: Rect } | { box: Rect } | PlugShape)[])[]
): Rect {
  const rects = boxed
    .flat()
    .map((shape) => ('bounds' in shape ? shape.bounds : 'box' in shape ? shape.box : shape.body));
  return rectRoundAll([outline, ...rects]) ?? outline;
}

function addBlock(block: Block, standing: Obstacles): void {
  const of = block.connector.id;
  standing.add(block.shell, { kind: 'shell', of });
  for (const name of block.names) standing.add(name.box, { kind: 'name', of });
}

/** The wires of small plugs, on the way that is natural to each, or on the other where that is taken. */
function* singleWires(
  block: Block,
  plugs: readonly WiredPlug[],
  standing: Obstacles,
  measure: Measure,
): Generator<{ readonly flags: readonly FlagShape[]; readonly wires: readonly WireShape[] }> {
  const small = plugs.filter((plug) => plug.ends.length <= MOST_SINGLE_WIRES);
  const bare = small.filter((plug) => plug.ends.length === 0);
  const wired = small.filter((plug) => plug.ends.length > 0);
  for (const group of byWay(wired, (plug) => wayFor(plug, standing))) {
    const { flags, wires, stuck } = flagsOn(block, group.plugs, group.way, standing, measure);
    yield { flags: [...flags, ...stuck.map((plug) => printOnBody(plug, measure))], wires };
  }
  yield { flags: bare.map((plug) => printOnBody(plug, measure)), wires: [] };
}
