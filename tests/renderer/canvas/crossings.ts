import { samePlug } from '../../../boards/document/lookup';
import { grown, overlap, type Point, type Rect, rectRound } from '../../../boards/drawing/geometry';
import type { Scene } from '../../../renderer/canvas/scene/scene';

interface Thing {
  readonly what: string;
  readonly rects: readonly Rect[];
}

/** The area of a path of some width, not counting anything beyond its ends. */
function legs(path: readonly Point[], width: number): readonly Rect[] {
  return path.slice(1).map((point, index) => {
    const leg = rectRound([path[index] ?? point, point]);
    return leg.width < leg.height ? grown(leg, width / 2, 0) : grown(leg, 0, width / 2);
  });
}

function meetings(ones: readonly Thing[], others: readonly Thing[]): string[] {
  return ones.flatMap((one) =>
    others
      .filter((other) => one !== other && one.rects.some((a) => other.rects.some((b) => overlap(a, b))))
      .map((other) => `${one.what} meets ${other.what}`),
  );
}

/**
 * Everything in a drawing that would be hard to read because something lies over it: told pair by pair,
 * by comparing everything with everything.
 */
export function crossings(scene: Scene): readonly string[] {
  const names = scene.blocks.flatMap(({ connector, names: all }) =>
    all.map((name): Thing => ({ what: `name ${name.pin} of ${connector.id}`, rects: [name.box] })),
  );
  const shells = scene.blocks.map(
    ({ connector, shell }): Thing => ({ what: `shell of ${connector.id}`, rects: [shell] }),
  );
  const flags = scene.flags
    .filter((flag) => !flag.onBody)
    .map((flag) => ({
      plug: flag.plug,
      what: `flag of ${flag.plug.lead}`,
      rects: flag.bar ? [flag.box, flag.bar] : [flag.box],
    }));
  const wires = [
    ...scene.wires.map(({ plug, hole, path, width }) => ({
      plug,
      what: `wire of ${plug.lead} at ${hole}`,
      rects: legs(path, width),
    })),
    ...scene.sleeves.map(({ plug, path, width }) => ({
      plug,
      what: `sleeve of ${plug.lead}`,
      rects: legs(path, width),
    })),
  ];
  const titles = scene.titles.map(
    ({ connector, box }): Thing => ({ what: `title of ${connector}`, rects: [box] }),
  );
  const plugs = scene.plugs.map(({ ref, body }): Thing => ({ what: `plug of ${ref.lead}`, rects: [body] }));
  return [
    ...meetings(names, names),
    ...meetings(names, shells),
    ...meetings(wires, names),
    ...wires.flatMap((wire) =>
      meetings(
        [wire],
        flags.filter((flag) => !samePlug(flag.plug, wire.plug)),
      ),
    ),
    ...flags.flatMap((flag) => meetings([flag], [...flags, ...names, ...shells, ...plugs])),
    ...meetings(titles, [...titles, ...flags, ...wires, ...names, ...shells, ...plugs]),
  ];
}
