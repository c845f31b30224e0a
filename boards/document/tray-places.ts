import { z } from 'zod';
import { byIdentity } from '../base/by-identity';
import { type Tray, TrayZ } from './tray';

const { points, openings, bays, supply, standoffs, fans, paths } = TrayZ.shape;

/** One thing that has a place of its own in the tray, and what it is. */
export const TrayPlaceZ = z.discriminatedUnion('what', [
  z.strictObject({ what: z.literal('point'), place: points.element }),
  z.strictObject({ what: z.literal('opening'), place: openings.element }),
  z.strictObject({ what: z.literal('bay'), place: bays.element }),
  z.strictObject({ what: z.literal('standoff'), place: standoffs.unwrap().element }),
  z.strictObject({ what: z.literal('fan'), place: fans.unwrap().element }),
  z.strictObject({ what: z.literal('supply'), place: supply.unwrap() }),
]);

export const TrayPathZ = paths.element;

export type TrayPlace = z.infer<typeof TrayPlaceZ>;
/** Kinds of places that a tray has; all of them together have ids of their own. */
export type PlaceKind = TrayPlace['what'];
export type TrayPath = z.infer<typeof TrayPathZ>;

/** Every place of the tray with what it is, kind by kind, in the order of the sheet. */
export const trayPlaces = byIdentity(
  ({ points, openings, bays, supply, standoffs = [], fans = [] }: Tray): readonly TrayPlace[] => [
    ...points.map((place) => ({ what: 'point' as const, place })),
    ...openings.map((place) => ({ what: 'opening' as const, place })),
    ...bays.map((place) => ({ what: 'bay' as const, place })),
    ...(supply === undefined ? [] : [{ what: 'supply' as const, place: supply }]),
    ...standoffs.map((place) => ({ what: 'standoff' as const, place })),
    ...fans.map((place) => ({ what: 'fan' as const, place })),
  ],
);

/** The tray with these places and no others; of several supplies the last. Paths stay as they are. */
export function withPlaces(tray: Tray, places: readonly TrayPlace[]): Tray {
  const { supply: _, standoffs: __, fans: ___, ...plain } = tray;
  const lists = {
    points: places.flatMap((each) => (each.what === 'point' ? [each.place] : [])),
    openings: places.flatMap((each) => (each.what === 'opening' ? [each.place] : [])),
    bays: places.flatMap((each) => (each.what === 'bay' ? [each.place] : [])),
  };
  const supply = places.findLast((each) => each.what === 'supply')?.place;
  const standoffs = places.flatMap((each) => (each.what === 'standoff' ? [each.place] : []));
  const fans = places.flatMap((each) => (each.what === 'fan' ? [each.place] : []));
  return {
    ...plain,
    ...lists,
    ...(supply !== undefined && { supply }),
    ...(standoffs.length > 0 && { standoffs }),
    ...(fans.length > 0 && { fans }),
  };
}

export function trayPlaceOf(tray: Tray, id: string): TrayPlace | undefined {
  return trayPlaces(tray).find(({ place }) => place.id === id);
}

export function trayPathOf(tray: Tray, id: string): TrayPath | undefined {
  return tray.paths.find((path) => path.id === id);
}

/** Whether paths lead to a thing of this kind. Standoffs and fans are no stations of a cable. */
export function hasPaths(what: PlaceKind): boolean {
  return what !== 'standoff' && what !== 'fan';
}
