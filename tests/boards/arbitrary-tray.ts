import { SIDES } from '../../boards/document/connector';
import type { BoardPlace, Tray } from '../../boards/document/tray';
import {
  hasPaths,
  type TrayPath,
  type TrayPlace,
  trayPlaces,
  withPlaces,
} from '../../boards/document/tray-places';
import type { Dice } from './dice';

const KINDS = ['tie', 'bend', 'end'] as const;
const EDGES = ['grommet', 'rolled', 'bare'] as const;
const WALLS = ['front', 'rear', 'top', 'bottom', 'side'] as const;
const STRUTS = ['inward', 'outward'] as const;
const TRAY_SIDES = ['front', 'back'] as const;

function mm(dice: Dice): number {
  return dice.below(1_600) / 4;
}

function areaFor(dice: Dice) {
  return { xMm: mm(dice), yMm: mm(dice), widthMm: 0.5 + mm(dice), heightMm: 0.5 + mm(dice) };
}

/** A place of any kind, now and then beyond the edge of the tray and now and then without a name. */
export function trayPlaceFor(id: string, dice: Dice, text: string): TrayPlace {
  const named = { id, ...(dice.oneIn(2) && { name: text }) };
  switch (dice.below(10)) {
    case 0:
      return { what: 'supply', place: { id, ...areaFor(dice) } };
    case 1:
      return { what: 'bay', place: { ...named, ...areaFor(dice) } };
    case 2:
    case 3:
      return {
        what: 'standoff',
        place: {
          ...named,
          xMm: mm(dice),
          yMm: mm(dice),
          ...(dice.oneIn(4) && { fixed: true as const }),
          ...(dice.oneIn(4) && { seen: 'set' as const }),
        },
      };
    case 4:
    case 5:
      return {
        what: 'fan',
        place: {
          ...named,
          wall: dice.pick(WALLS) ?? 'rear',
          ...(dice.oneIn(2) && { strutsFace: dice.pick(STRUTS) ?? 'inward' }),
          ...(dice.oneIn(2) && { flowM3PerHour: 1 + dice.below(400) / 4 }),
        },
      };
    case 6:
    case 7:
      return {
        what: 'opening',
        place: {
          ...named,
          ...areaFor(dice),
          ...(dice.oneIn(3) && { round: true as const }),
          edge: dice.pick(EDGES) ?? 'bare',
        },
      };
    default:
      return {
        what: 'point',
        place: { ...named, kind: dice.pick(KINDS) ?? 'tie', xMm: mm(dice) - 10, yMm: mm(dice) },
      };
  }
}

/** A path between two places of the tray, mostly on a side on which it can be; undefined where there are none. */
export function trayPathFor(id: string, tray: Tray, dice: Dice): TrayPath | undefined {
  const stations = trayPlaces(tray).filter(({ what }) => hasPaths(what));
  const from = dice.pick(stations);
  const to = dice.pick(stations.filter((each) => each !== from));
  if (from === undefined || to === undefined) return undefined;
  const points = [from, to].filter(({ what }) => what === 'point').map(({ place }) => place.id);
  const met = tray.paths.find((path) => points.some((point) => path.from === point || path.to === point));
  const side = dice.oneIn(8) ? undefined : met?.side;
  return {
    id,
    from: from.place.id,
    to: to.place.id,
    lengthMm: 1 + mm(dice),
    side: side ?? dice.pick(TRAY_SIDES) ?? 'back',
  };
}

export function boardPlaceFor(dice: Dice): BoardPlace {
  return { xMm: mm(dice), yMm: mm(dice), rear: dice.pick(SIDES) ?? 'left' };
}

/** A small tray as a sheet may hold it: places of every kind, and paths of which no two quarrel about sides. */
export function trayFor(dice: Dice, text: string): Tray {
  const places = Array.from({ length: 2 + dice.below(10) }, (_, at) =>
    trayPlaceFor(`place-${at}`, dice, text),
  );
  const bare: Tray = {
    widthMm: 100 + mm(dice),
    heightMm: 100 + mm(dice),
    ...(dice.oneIn(2) && { behindMm: 20.5 }),
    points: [],
    openings: [],
    bays: [],
    ...(dice.oneIn(2) && { board: boardPlaceFor(dice) }),
    paths: [],
  };
  let tray = withPlaces(bare, places);
  for (let at = dice.below(8); at > 0; at--) {
    const path = trayPathFor(`path-${at}`, tray, dice);
    if (path !== undefined && agrees(path, tray)) tray = { ...tray, paths: [...tray.paths, path] };
  }
  return tray;
}

/** Whether all that meets at the points of a path is on its side. */
function agrees(path: TrayPath, { points, paths }: Tray): boolean {
  const met = points.map(({ id }) => id).filter((id) => id === path.from || id === path.to);
  return paths.every(
    ({ from, to, side }) => side === path.side || !met.some((point) => point === from || point === to),
  );
}
