import { z } from 'zod';
import { ok } from '../../base/result';
import { defineCommand } from '../definition';

/** Takes every plug off the board. */
export const unseatAll = defineCommand({
  name: 'unseat-all',
  args: z.strictObject({}),
  label: () => 'Take off every plug',
  apply: (build) => ok({ ...build, seats: [] }),
});
