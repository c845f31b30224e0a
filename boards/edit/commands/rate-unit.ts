import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { unitName } from '../../document/names';
import { DriveRatingZ, HubRatingZ } from '../../document/rating';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';

/** Says what a drive takes and moves, or how a hub is fed and what it carries; null for not read. Refuses figures of what it is not. */
export const rateUnit = defineCommand({
  name: 'rate-unit',
  args: z.strictObject({ unit: IdZ, drive: DriveRatingZ.nullable(), hub: HubRatingZ.nullable() }),
  label: (build, { unit }) => `Rate ${unitName(build, unit)}`,
  apply: (build, { unit: id, drive, hub }) =>
    changeUnit(build, id, ({ drive: _, hub: __, ...unit }) => {
      if (drive !== null && unit.kind !== 'drive') return refuse({ code: 'no-drive', unit: id });
      if (hub !== null && unit.kind !== 'hub') return refuse({ code: 'no-hub', unit: id });
      return ok({ ...unit, ...(drive !== null && { drive }), ...(hub !== null && { hub }) });
    }),
});
