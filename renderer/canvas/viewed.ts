import { grown, type Rect, rectRoundAll } from '../../boards/drawing/geometry';
import type { Orientation } from '../../boards/drawing/orientation';
import type { Scene } from './scene/scene';

/** What a view has to know of a drawing to show it. */
export interface Viewed {
  /** Whose drawing it is: that of another is fitted anew. */
  readonly of: string;
  readonly orientation: Orientation;
  /** Everything that is drawn. */
  readonly bounds: Rect;
  /** What is shown at first. */
  readonly first: () => Rect;
  /** The rectangle round some things of the drawing; undefined where none of them is on it. */
  readonly around: (ids: readonly string[]) => Rect | undefined;
  /** Whether what is to be shown also has to come near enough to read its pins. */
  readonly brought: 'near' | 'into sight';
}

/** A board's drawing: connectors are what is brought into view. */
export function viewedScene(scene: Scene): Viewed {
  return {
    of: scene.build.id,
    orientation: scene.orientation,
    bounds: scene.bounds,
    first: () => rectOfWork(scene),
    around: (connectors) => rectOfConnectors(scene, connectors),
    brought: 'near',
  };
}

/** The connector with most plugs on it, near enough to read; the whole board while none has two. */
function rectOfWork(scene: Scene): Rect {
  const counts = new Map<string, number>();
  for (const { connector } of scene.plugs) counts.set(connector, (counts.get(connector) ?? 0) + 1);
  const [busiest] = [...counts].sort(([, one], [, other]) => other - one);
  const near = busiest && busiest[1] > 1 ? rectOfConnectors(scene, [busiest[0]]) : undefined;
  return near ?? grown(scene.bounds, 2);
}

function rectOfConnectors(scene: Scene, connectors: readonly string[]): Rect | undefined {
  const blocks = scene.blocks.filter(({ connector }) => connectors.includes(connector.id));
  const rects = blocks.map(({ bounds }) => bounds);
  const plugs = scene.plugs.filter(({ connector }) => connectors.includes(connector));
  const flags = scene.flags.filter(({ plug }) =>
    plugs.some(({ ref }) => ref.lead === plug.lead && ref.plug === plug.plug),
  );
  const titles = scene.titles.filter(({ connector }) => connectors.includes(connector));
  return rectRoundAll([...rects, ...flags.map(({ box }) => box), ...titles.map(({ box }) => box)]);
}
