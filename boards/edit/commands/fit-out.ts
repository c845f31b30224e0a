import { z } from 'zod';
import { ok } from '../../base/result';
import { FITTED, FittedZ } from '../../document/fitted';
import { defineCommand } from '../definition';

/** Says what the machine has beside its leads, which the order of the work depends on. */
export const fitOut = defineCommand({
  name: 'fit-out',
  args: z.strictObject({ fitted: z.array(FittedZ).max(FITTED.length) }),
  label: () => 'Say what the machine has',
  apply: (build, { fitted }) => ok({ ...build, fitted: FITTED.filter((each) => fitted.includes(each)) }),
});
