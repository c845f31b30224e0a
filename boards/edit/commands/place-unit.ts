import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import { unitName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';

/** Says where on the tray a unit sits; null: nowhere that is known. Refuses a place that the tray has not. */
export const placeUnit = defineCommand({
  name: 'place-unit',
  args: z.strictObject({ unit: IdZ, at: IdZ.nullable() }),
  label: (build, { unit }) => `Place ${unitName(build, unit)}`,
  apply: (build, { unit: id, at }) => {
    if (at !== null && !placesOfTray(build).includes(at)) return refuse({ code: 'no-unit-there', place: at });
    return changeUnit(build, id, ({ at: _, ...unit }) => ok(at === null ? unit : { ...unit, at }));
  },
});

/** Where a unit can sit: a point, a bay or the supply of the tray. */
function placesOfTray({ case: { tray } }: Build): readonly string[] {
  if (tray === undefined) return [];
  return [...tray.points, ...tray.bays, ...(tray.supply ? [tray.supply] : [])].map(({ id }) => id);
}
