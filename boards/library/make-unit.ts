import type { Seat } from '../document/build';
import type { Lead } from '../document/lead';
import type { Unit } from '../document/unit';
import { UNIT_TYPES } from './units/index';

/** A unit with the cables in its box, as a build takes it. */
export interface MadeUnit {
  readonly unit: Unit;
  readonly leads: Lead[];
  readonly seats: Seat[];
}

/**
 * A library unit in a machine: its own id and name, the rest from the library. Connectors and cables get ids
 * that begin with the unit's, so that two of a kind can be in one machine. An id that the library lacks is a
 * bug of the caller and throws; ids come from its own list.
 */
export function makeUnit(typeId: string, inBuild: Pick<Unit, 'id' | 'name'>): MadeUnit {
  const type = UNIT_TYPES.find((candidate) => candidate.id === typeId);
  if (type === undefined) throw new Error(`No unit type ${typeId} in the library`);
  const own = (id: string) => `${inBuild.id}-${id}`;
  return {
    unit: {
      ...type.unit,
      ...inBuild,
      connectors: type.unit.connectors.map((connector) => ({ ...connector, id: own(connector.id) })),
    },
    leads: type.cables.map((lead) => ({
      ...lead,
      id: own(lead.id),
      name: `${lead.name} of ${inBuild.name}`,
    })),
    seats: type.seats.map((seat) => ({ ...seat, lead: own(seat.lead), connector: own(seat.connector) })),
  };
}
