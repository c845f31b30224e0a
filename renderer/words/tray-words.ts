import { listed } from '../../boards/base/listed';
import type { Build } from '../../boards/document/build';
import { pathName, placeName, sidesOfPoints } from '../../boards/document/place-names';
import type { FanPlace, Opening, Tray, TraySide } from '../../boards/document/tray';
import { directionOf } from '../../boards/routing/case/airflow';
import type { TrayPart, TrayTool } from '../store/session';
import { type LengthBounds, mmWords } from './length-words';
import { counted } from './list-words';

const NBSP = '\u00a0';

export const EDGE_WORDS: Readonly<Record<Opening['edge'], string>> = {
  grommet: 'rubber grommet',
  rolled: 'rolled edge',
  bare: 'bare edge',
};

export const WALL_WORDS: Readonly<Record<FanPlace['wall'], string>> = {
  front: 'front',
  rear: 'rear',
  top: 'top',
  bottom: 'bottom',
  side: 'side panel',
};

const POINT_KINDS_SAID: Readonly<Record<Tray['points'][number]['kind'], string>> = {
  tie: 'tie point',
  bend: 'bend',
  end: 'place where a cable ends',
};

/** What a part of the tray is called. */
export function trayPartName(build: Build, tray: Tray, { kind, id }: TrayPart): string {
  if (kind === 'board') return build.board.name;
  if (kind !== 'path') return placeName(tray, id);
  const path = tray.paths.find((each) => each.id === id);
  return path === undefined ? id : pathName(tray, path);
}

/** What is under the pointer, in one line. */
export function trayPartWords(build: Build, tray: Tray, part: TrayPart): string | null {
  const about = trayPartSaid(build, tray, part);
  return about === undefined ? null : `${trayPartName(build, tray, part)}: ${about}`;
}

/** What a part of the tray is, where and how large; undefined where it is not there. */
export function trayPartSaid(build: Build, tray: Tray, { kind, id }: TrayPart): string | undefined {
  switch (kind) {
    case 'point': {
      const point = tray.points.find((each) => each.id === id);
      if (point === undefined) return undefined;
      const side = sidesOfPoints(tray).get(id);
      const said = side === undefined ? 'no path yet' : `on the ${side}`;
      return `${POINT_KINDS_SAID[point.kind]}, ${said}, ${placeWords(point)}`;
    }
    case 'opening': {
      const opening = tray.openings.find((each) => each.id === id);
      if (opening === undefined) return undefined;
      return `${opening.round ? 'round ' : ''}opening with ${EDGE_WORDS[opening.edge]}, ${sizeWords(opening)}`;
    }
    case 'bay': {
      const bay = tray.bays.find((each) => each.id === id);
      return bay && `place for a drive, ${sizeWords(bay)}`;
    }
    case 'supply':
      return tray.supply?.id === id ? `where the supply unit sits, ${sizeWords(tray.supply)}` : undefined;
    case 'standoff': {
      const standoff = tray.standoffs?.find((each) => each.id === id);
      if (standoff === undefined) return undefined;
      return `${standoff.fixed ? 'standoff that cannot be taken out' : 'place of a standoff'}, ${placeWords(standoff)}`;
    }
    case 'fan': {
      const fan = tray.fans?.find((each) => each.id === id);
      return fan && `fan at the ${WALL_WORDS[fan.wall]}, ${blowsWords(fan)}`;
    }
    case 'path': {
      const path = tray.paths.find((each) => each.id === id);
      return path && pathSaid(path);
    }
    case 'board': {
      const { widthMm, depthMm } = build.board.outline;
      return tray.board && `the board, ${widthMm}${NBSP}×${NBSP}${depthMm}${NBSP}mm`;
    }
  }
}

/** What is known of a path. */
export function pathSaid({ side, lengthMm }: Tray['paths'][number]): string {
  return `path on the ${side}, ${mmWords(lengthMm)} long`;
}

/** Which way a fan blows, as far as it is known. */
export function blowsWords(fan: FanPlace): string {
  const direction = directionOf(fan);
  if (direction === undefined) return 'not looked at yet';
  return direction === 'intake' ? 'blows in' : 'blows out';
}

/** "150 mm from the left, 60 mm from the top", as the tray is seen from the front. */
function placeWords({ xMm, yMm }: { readonly xMm: number; readonly yMm: number }): string {
  return `${mmWords(xMm)} from the left, ${mmWords(yMm)} from the top`;
}

function sizeWords({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }): string {
  return `${widthMm}${NBSP}×${NBSP}${heightMm}${NBSP}mm`;
}

/** The map as one picture, for those who do not see it. */
export function mapWords(tray: Tray, side: TraySide): string {
  const { points, openings, bays, standoffs = [], fans = [], paths } = tray;
  const counts = [
    counted(openings.length, 'opening'),
    counted(points.length, 'point'),
    counted(bays.length, 'bay'),
    counted(standoffs.length, 'standoff'),
    counted(fans.length, 'fan'),
    counted(paths.length, 'path'),
  ];
  return `The tray from the ${side}, ${sizeWords(tray)}, with ${listed(counts)}`;
}

/** What each tool does, as its button and the menu say it. */
export const TOOL_WORDS: Readonly<Record<TrayTool, string>> = {
  choose: 'Choose and move',
  tie: 'Add a tie point',
  bend: 'Add a bend',
  end: 'Add a cable end',
  opening: 'Add an opening',
  bay: 'Add a bay',
  supply: 'Add the supply unit',
  standoff: 'Add a standoff',
  fan: 'Add a fan',
  path: 'Draw a path',
};

/** What to do with the tool in the hand. */
export const TOOL_HINTS: Readonly<Record<TrayTool, string>> = {
  choose:
    'Choose a place or a path and drag it, or use the arrow keys. From the back the tray is seen mirrored.',
  tie: 'Press where cables are tied down.',
  bend: 'Press where cables bend round something.',
  end: 'Press where a cable ends that is no plug of the board.',
  opening: 'Draw the opening from corner to corner, or press for one of a usual size.',
  bay: 'Draw the bay from corner to corner, or press for that of a 3.5 in drive.',
  supply: 'Draw where the supply unit sits from corner to corner, or press for one of the usual size.',
  standoff: 'Press where a standoff is, or can be screwed in.',
  fan: 'Press beside the wall of the case that the fan is on.',
  path: 'Drag from the place where the path begins to the one where it ends, or press one after the other.',
};

export const NO_TRAY_HINT = 'Measure the tray of the case and draw it; its places and paths come after.';

export const SUPPLY_THERE_WORDS = 'The tray has a place for the supply unit already. Move that one.';

/** What a place of the tray may be, what a size, and what the length of a path. */
export const TRAY_PLACE_BOUNDS: LengthBounds = { leastMm: -2_000, mostMm: 2_000 };
export const TRAY_SIZE_BOUNDS: LengthBounds = { leastMm: 0.01, mostMm: 2_000 };
export const PATH_BOUNDS: LengthBounds = { leastMm: 0.01, mostMm: 20_000 };
