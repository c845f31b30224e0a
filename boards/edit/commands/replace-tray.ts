import { z } from 'zod';
import { TrayZ } from '../../document/tray';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';
import { withTray } from '../tray';

/** Puts a whole tray in place of the one that is there, or of none. Refuses one that contradicts itself. */
export const replaceTray = defineCommand({
  name: 'replace-tray',
  args: z.strictObject({ tray: TrayZ }),
  label: ({ case: { tray } }) => (tray === undefined ? 'Use a tray' : 'Use another tray'),
  apply: (build, { tray }) => soundBuild(withTray(build, tray)),
});
