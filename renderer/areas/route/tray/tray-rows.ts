import type { Build } from '../../../../boards/document/build';
import { type PlaceRef, pathName, placesOf } from '../../../../boards/document/place-names';
import type { Tray } from '../../../../boards/document/tray';
import type { TrayPart } from '../../../store/session';
import { pathSaid, trayPartName, trayPartSaid } from '../../../words/tray-words';

/** One thing of the tray as the shelf lists it. */
export interface TrayRow {
  readonly key: string;
  readonly part: TrayPart;
  readonly name: string;
  readonly words: string;
}

export interface TraySection {
  readonly title: string;
  readonly rows: readonly TrayRow[];
}

export function partKey({ kind, id }: TrayPart): string {
  return `${kind} ${id}`;
}

const TITLES: readonly (readonly [PlaceRef['kind'], string])[] = [
  ['opening', 'Openings'],
  ['point', 'Points'],
  ['bay', 'Bays'],
  ['supply', 'Supply'],
  ['standoff', 'Standoffs'],
  ['fan', 'Fans'],
];

/** The places of a tray, kind by kind, and the board where it has a place. */
export function placeSections(build: Build, tray: Tray): readonly TraySection[] {
  const places = placesOf(tray);
  const row = rowMaker(build, tray);
  const board: readonly TraySection[] =
    tray.board === undefined ? [] : [{ title: 'Board', rows: [row({ kind: 'board', id: 'board' })] }];
  const kinds = TITLES.map(([kind, title]) => ({
    title,
    rows: places.filter((place) => place.kind === kind).map(row),
  }));
  return [...kinds, ...board].filter(({ rows }) => rows.length > 0);
}

/** The paths of a tray by the side they are on. */
export function pathSections(tray: Tray): readonly TraySection[] {
  const on = (side: 'front' | 'back') =>
    tray.paths
      .filter((path) => path.side === side)
      .map((path): TrayRow => {
        const part: TrayPart = { kind: 'path', id: path.id };
        return { key: partKey(part), part, name: pathName(tray, path), words: pathSaid(path) };
      });
  return [
    { title: 'On the front', rows: on('front') },
    { title: 'On the back', rows: on('back') },
  ].filter(({ rows }) => rows.length > 0);
}

function rowMaker(build: Build, tray: Tray): (part: TrayPart) => TrayRow {
  return (part) => ({
    key: partKey(part),
    part,
    name: trayPartName(build, tray, part),
    words: trayPartSaid(build, tray, part) ?? '',
  });
}
