import { z } from 'zod';
import { ok } from '../../base/result';
import { NameZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Gives the build another name. */
export const renameBuild = defineCommand({
  name: 'rename-build',
  args: z.strictObject({ name: NameZ }),
  label: () => 'Rename the build',
  apply: (build, { name }) => ok({ ...build, name }),
});
