import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import { unitName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';

/** Says where a unit sits, on the tray or on the board; null: nowhere that is known. Refuses a place that neither has. */
export const placeUnit = defineCommand({
  name: 'place-unit',
  args: z.strictObject({ unit: IdZ, at: IdZ.nullable() }),
  label: (build, { unit }) => `Place ${unitName(build, unit)}`,
  apply: (build, { unit: id, at }) => {
    if (at !== null && !placesFor(build).includes(at)) return refuse({ code: 'no-unit-there', place: at });
    return changeUnit(build, id, ({ at: _, ...unit }) => ok(at === null ? unit : { ...unit, at }));
  },
});

/** Where a unit can sit: a point, a bay or the supply of the tray, or a place for drives on the board. */
function placesFor({ board, case: { tray } }: Build): readonly string[] {
  const onTray = tray ? [...tray.points, ...tray.bays, ...(tray.supply ? [tray.supply] : [])] : [];
  return [...onTray, ...(board.drivePlaces ?? [])].map(({ id }) => id);
}
