import { refuse } from '../../base/result';
import { type Tray, TrayZ } from '../../document/tray';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';
import { withTray } from '../tray';

const EMPTY: Omit<Tray, 'widthMm' | 'heightMm'> = {
  points: [],
  openings: [],
  bays: [],
  paths: [],
};

/** Begins the tray of the case: a bare sheet of metal of that size. Refuses where there is one. */
export const beginTray = defineCommand({
  name: 'begin-tray',
  args: TrayZ.pick({ widthMm: true, heightMm: true, behindMm: true }),
  label: () => 'Begin the tray',
  apply: (build, size) =>
    build.case.tray === undefined
      ? soundBuild(withTray(build, { ...size, ...EMPTY }))
      : refuse({ code: 'tray-there' }),
});
