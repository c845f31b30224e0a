import type { Chains } from '../migrate';

/**
 * Every step from an old version of a format to the next, oldest first: the first leads from version 1
 * to 2. Version 1 is today's, so there is none yet. A step is a file of its own, `0001-what-it-does.ts`,
 * never changed after its release, with a test of one file before and after.
 */
export const MIGRATIONS: Chains = {
  'leadwright/build': [],
  'leadwright/board': [],
  'leadwright/case': [],
};
