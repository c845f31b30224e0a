import { byIdentity } from '../base/by-identity';
import type { Tray, TraySide } from './tray';
import { type PlaceKind, trayPlaces } from './tray-places';

/** One place of a tray, whatever it is. */
export interface PlaceRef {
  readonly kind: PlaceKind;
  readonly id: string;
}

type Path = Tray['paths'][number];

/** Every place of a tray, kind by kind, in the order of the sheet. */
export function placesOf(tray: Tray): readonly PlaceRef[] {
  return trayPlaces(tray).map(({ what, place }) => ({ kind: what, id: place.id }));
}

/** What a person calls a place of a tray: its name, or what it is and which one of its list. */
export function placeName(tray: Tray, id: string): string {
  return namesIn(tray).get(id) ?? id;
}

const namesIn = byIdentity((tray: Tray): ReadonlyMap<string, string> => {
  const { points, openings, bays, supply, standoffs = [], fans = [] } = tray;
  return new Map([
    ...named(points, ({ kind }) => POINT_WORDS[kind]),
    ...named(openings, () => 'opening'),
    ...named(bays, () => 'bay'),
    ...named(standoffs, () => 'standoff'),
    ...named(fans, () => 'fan'),
    ...(supply === undefined ? [] : [[supply.id, 'supply unit'] as const]),
  ]);
});

/** "standoff 3 to grommet": a path by its two ends. */
export function pathName(tray: Tray, { from, to }: Pick<Path, 'from' | 'to'>): string {
  return `${placeName(tray, from)} to ${placeName(tray, to)}`;
}

/** What a point is, in a word. */
export const POINT_WORDS: Readonly<Record<Tray['points'][number]['kind'], string>> = {
  tie: 'tie point',
  bend: 'bend',
  end: 'cable end',
};

/** The side on which each point lies that a path meets: all paths of a point are on one side. */
export const sidesOfPoints = byIdentity(({ points, paths }: Tray): ReadonlyMap<string, TraySide> => {
  const isPoint = new Set(points.map(({ id }) => id));
  return new Map(
    paths.flatMap(({ from, to, side }) =>
      [from, to].filter((id) => isPoint.has(id)).map((id) => [id, side] as const),
    ),
  );
});

function named<T extends { readonly id: string; readonly name?: string | undefined }>(
  items: readonly T[],
  what: (item: T) => string,
): readonly (readonly [string, string])[] {
  return items.map((item, at) => [item.id, item.name || `${what(item)}\u00a0${at + 1}`]);
}
