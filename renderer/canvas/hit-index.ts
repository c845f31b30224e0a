import type { Target } from './canvas-props';
import type { Point } from './scene/geometry';
import { rectBuckets } from './scene/rect-buckets';
import type { Scene } from './scene/scene';

/** What lies under a point of the drawing, in oriented millimetres. */
export type HitIndex = (point: Point) => Target | null;

/**
 * Plugs and their flags lie on top, then pins and their names, then the connector. Where two of a kind
 * lie over each other, the later in the document is the upper one.
 */
export function hitIndex(scene: Scene): HitIndex {
  const plugs = rectBuckets<Target>();
  const pins = rectBuckets<Target>();
  const connectors = rectBuckets<Target>();
  for (const { ref, body } of scene.plugs) plugs.add(body, { kind: 'plug', plug: ref });
  for (const { plug, box } of scene.flags) plugs.add(box, { kind: 'plug', plug });
  for (const { connector, shell, pins: shapes, names } of scene.blocks) {
    connectors.add(shell, { kind: 'connector', connector: connector.id });
    for (const { pin, box } of [...shapes, ...names])
      pins.add(box, { kind: 'pin', pin: { connector: connector.id, pin } });
  }
  for (const { connector, box } of scene.titles) connectors.add(box, { kind: 'connector', connector });
  return (point) => plugs.at(point).at(-1) ?? pins.at(point).at(-1) ?? connectors.at(point).at(-1) ?? null;
}

export function sameTarget(a: Target | null, b: Target | null): boolean {
  if (a === null || b === null) return a === b;
  if (a.kind === 'plug')
    return b.kind === 'plug' && a.plug.lead === b.plug.lead && a.plug.plug === b.plug.plug;
  if (a.kind === 'pin')
    return b.kind === 'pin' && a.pin.connector === b.pin.connector && a.pin.pin === b.pin.pin;
  return b.kind === 'connector' && a.connector === b.connector;
}
