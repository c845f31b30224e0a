import { z } from 'zod';
import { ok } from '../../base/result';
import { unitName } from '../../document/names';
import { IdZ, NameZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';

/** Says what a unit is called. */
export const renameUnit = defineCommand({
  name: 'rename-unit',
  args: z.strictObject({ unit: IdZ, name: NameZ }),
  label: (build, { unit }) => `Rename ${unitName(build, unit)}`,
  apply: (build, { unit: id, name }) => changeUnit(build, id, (unit) => ok({ ...unit, name })),
});
