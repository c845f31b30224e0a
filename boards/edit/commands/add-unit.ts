import { z } from 'zod';
import { refuse } from '../../base/result';
import { SeatZ } from '../../document/build';
import { LeadZ } from '../../document/lead';
import { LIMITS } from '../../document/limits';
import { anyConnectorOf, leadOf, unitOf, unitsOf } from '../../document/lookup';
import { UnitZ } from '../../document/unit';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';
import { seatInTurn } from './seat-plug';

/**
 * Adds a supply, a drive, a card or a hub, with the cables that come with it and where they sit already: those
 * of a supply that cannot be unplugged, the tail of a hub. Refuses ids that are taken and what contradicts itself.
 */
export const addUnit = defineCommand({
  name: 'add-unit',
  args: z.strictObject({
    unit: UnitZ,
    leads: z.array(LeadZ).max(LIMITS.leads).optional(),
    seats: z.array(SeatZ).max(LIMITS.seats).optional(),
  }),
  label: (_, { unit }) => `Add ${unit.name}`,
  apply: (build, { unit, leads = [], seats = [] }) => {
    const units = unitsOf(build);
    if (unitOf(build, unit.id) !== undefined) return refuse({ code: 'id-taken', kind: 'unit', id: unit.id });
    for (const { id } of unit.connectors)
      if (anyConnectorOf(build, id) !== undefined) return refuse({ code: 'id-taken', kind: 'connector', id });
    for (const { id } of leads)
      if (leadOf(build, id) !== undefined) return refuse({ code: 'id-taken', kind: 'lead', id });
    if (units.length >= LIMITS.units) return refuse({ code: 'full', what: 'units', limit: LIMITS.units });
    const extras = [...build.extras, ...leads];
    if (extras.length > LIMITS.leads) return refuse({ code: 'full', what: 'leads', limit: LIMITS.leads });
    return seatInTurn(soundBuild({ ...build, units: [...units, unit], extras }), seats);
  },
});
