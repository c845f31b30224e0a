import type { Mm } from '../../boards/base/units';
import { samePlug } from '../../boards/document/lookup';
import { legsOf, type Point, type Rect, rectAbout } from '../../boards/drawing/geometry';
import type { Target } from './canvas-props';
import { type RectBuckets, rectBuckets } from './scene/rect-buckets';
import type { Scene } from './scene/scene';

/** What is drawn at a scale: nothing else answers the pointer. */
interface Drawn {
  readonly flags: boolean;
  /** A wire is thinner than a hand is steady: it is met within so much of its edge. Null where none is drawn. */
  readonly wireReachMm: Mm | null;
}

/** What lies under a point of the drawing, in oriented millimetres. */
export type HitIndex = (point: Point, drawn: Drawn) => Target | null;

/**
 * Flags lie on top, then plugs, then pins and their names, then wires, then the connector. Where two
 * of a kind lie over each other, the later in the document is the upper one; of wires the nearest.
 */
export function hitIndex(scene: Scene): HitIndex {
  const plugs = rectBuckets<Target>();
  const flags = rectBuckets<Target>();
  const pins = rectBuckets<Target>();
  const connectors = rectBuckets<Target>();
  const legs = rectBuckets<Leg>();
  for (const { plug, wire, path, width } of scene.wires)
    for (const rect of legsOf(path, width)) legs.add(rect, { rect, wire: { kind: 'wire', plug, wire } });
  for (const { ref, body } of scene.plugs) plugs.add(body, { kind: 'plug', plug: ref });
  for (const { plug, box } of scene.flags) flags.add(box, { kind: 'plug', plug });
  for (const { connector, shell, pins: shapes, names } of scene.blocks) {
    connectors.add(shell, { kind: 'connector', connector: connector.id });
    for (const { pin, box } of [...shapes, ...names])
      pins.add(box, { kind: 'pin', pin: { connector: connector.id, pin } });
  }
  for (const { connector, box } of scene.titles) connectors.add(box, { kind: 'connector', connector });
  return (point, drawn) =>
    (drawn.flags ? flags.at(point).at(-1) : undefined) ??
    plugs.at(point).at(-1) ??
    pins.at(point).at(-1) ??
    (drawn.wireReachMm === null ? undefined : nearest(legs, point, drawn.wireReachMm)) ??
    connectors.at(point).at(-1) ??
    null;
}

/** A straight piece of a wire. */
interface Leg {
  readonly rect: Rect;
  readonly wire: Target;
}

function nearest(legs: RectBuckets<Leg>, point: Point, reach: Mm): Target | undefined {
  let met: { readonly wire: Target; readonly away: Mm } | undefined;
  for (const { rect, wire } of legs.meeting(rectAbout(point, 2 * reach, 2 * reach))) {
    const away = distance(rect, point);
    if (away <= reach && (!met || away < met.away)) met = { wire, away };
  }
  return met?.wire;
}

function distance({ x, y, width, height }: Rect, point: Point): Mm {
  const beside = Math.max(x - point.x, point.x - x - width, 0);
  const above = Math.max(y - point.y, point.y - y - height, 0);
  return Math.hypot(beside, above);
}

export function sameTarget(a: Target | null, b: Target | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.kind === 'plug') return b.kind === 'plug' && samePlug(a.plug, b.plug);
  if (a.kind === 'pin')
    return b.kind === 'pin' && a.pin.connector === b.pin.connector && a.pin.pin === b.pin.pin;
  if (a.kind === 'wire') return b.kind === 'wire' && a.wire === b.wire && samePlug(a.plug, b.plug);
  if (a.kind === 'on-tray')
    return b.kind === 'on-tray' && a.part.kind === b.part.kind && a.part.id === b.part.id;
  return b.kind === 'connector' && a.connector === b.connector;
}
