import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { leadsOf, type PlugRef, samePlug, seatOf } from '../../../boards/document/lookup';
import { placesOf } from '../../../boards/fit/places';
import { properSeats } from '../../../boards/fit/proper-seats';

/** A plug that could sit on a connector, and where. */
export interface FittingPlug {
  readonly ref: PlugRef;
  readonly seat: Seat;
  /** It sits somewhere else now. */
  readonly elsewhere: boolean;
}

/** Shown at most: on open posts nearly every small plug of the case could be put. */
const MOST = 12;

/**
 * The plugs that fit on a connector as it is now, each the right way round: those that are made for it first,
 * then cables, then the rest; what lies loose before what would be moved.
 */
export function fittingPlugs(build: Build, connector: Connector): readonly FittingPlug[] {
  const found = leadsOf(build).flatMap((lead) =>
    lead.plugs
      .filter(({ family }) => family === connector.family)
      .flatMap(({ id }): readonly (FittingPlug & { readonly rank: number })[] => {
        const ref = { lead: lead.id, plug: id };
        const now = seatOf(build, ref);
        if (now?.connector === connector.id || lead.setAside) return [];
        const here = (seat: Seat) => seat.connector === connector.id;
        const proper = properSeats(build, ref).find(here);
        const seat = proper ?? placesOf(build, ref).find(here);
        if (seat === undefined) return [];
        const kind = proper ? 0 : lead.parts.length === 0 ? 1 : 2;
        return [{ ref, seat, elsewhere: now !== undefined, rank: 2 * kind + (now ? 1 : 0) }];
      }),
  );
  return found.toSorted((a, b) => a.rank - b.rank).slice(0, MOST);
}

/** What sits on a connector, with its seat. */
export function seatsOn(build: Build, connector: string): readonly Seat[] {
  return build.seats.filter((seat) => seat.connector === connector);
}

/** Where the other ends of a plug's cable are. */
export function otherEnds(build: Build, ref: PlugRef): readonly Seat[] {
  return build.seats.filter((seat) => seat.lead === ref.lead && !samePlug(seat, ref));
}
