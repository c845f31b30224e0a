import type { Tray, TraySide } from './tray';

/** Kinds of places that a tray has; all of them together have ids of their own. */
export type PlaceKind = 'point' | 'opening' | 'bay' | 'supply' | 'standoff' | 'fan';

/** One place of a tray, whatever it is. */
export interface PlaceRef {
  readonly kind: PlaceKind;
  readonly id: string;
}

type Path = Tray['paths'][number];

/** Every place of a tray, kind by kind, in the order of the sheet. */
export function placesOf(tray: Tray): readonly PlaceRef[] {
  const { points, openings, bays, supply, standoffs = [], fans = [] } = tray;
  const of = (kind: PlaceKind, items: readonly { readonly id: string }[]) =>
    items.map(({ id }) => ({ kind, id }));
  return [
    ...of('point', points),
    ...of('opening', openings),
    ...of('bay', bays),
    ...of('supply', supply === undefined ? [] : [supply]),
    ...of('standoff', standoffs),
    ...of('fan', fans),
  ];
}

/** What a person calls a place of a tray: its name, or what it is and which one of its list. */
export function placeName(tray: Tray, id: string): string {
  const { points, openings, bays, supply, standoffs = [], fans = [] } = tray;
  if (id === supply?.id) return 'supply unit';
  const point = points.find((each) => each.id === id);
  return (
    nameIn(points, id, POINT_WORDS[point?.kind ?? 'end']) ??
    nameIn(openings, id, 'opening') ??
    nameIn(bays, id, 'bay') ??
    nameIn(standoffs, id, 'standoff') ??
    nameIn(fans, id, 'fan') ??
    id
  );
}

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
export function sidesOfPoints({ points, paths }: Tray): ReadonlyMap<string, TraySide> {
  const isPoint = new Set(points.map(({ id }) => id));
  return new Map(
    paths.flatMap(({ from, to, side }) =>
      [from, to].filter((id) => isPoint.has(id)).map((id) => [id, side] as const),
    ),
  );
}

function nameIn(
  items: readonly { readonly id: string; readonly name?: string | undefined }[],
  id: string,
  what: string,
): string | undefined {
  const at = items.findIndex((each) => each.id === id);
  const item = items[at];
  if (item === undefined) return undefined;
  return item.name || `${what}\u00a0${at + 1}`;
}
