import { z } from 'zod';
import { refuse } from '../../base/result';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/** Takes the tray out of the case, with everything that is drawn in it. */
export const removeTray = defineCommand({
  name: 'remove-tray',
  args: z.strictObject({}),
  label: () => 'Remove the tray',
  apply: (build) => {
    const { tray, ...plain } = build.case;
    return tray === undefined ? refuse({ code: 'no-tray' }) : soundBuild({ ...build, case: plain });
  },
});
