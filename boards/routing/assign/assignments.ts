import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { drivesToBranches } from './branches';
import { type BuildDrives, drivesOf } from './build-drives';
import { type Assumed, type BuildFans, fansOf, whatFansNeed } from './build-fans';
import { fanConnectors } from './fan-connectors';
import { type FanLoad, fanLoads, hubAmps } from './fan-loads';
import { fansToHeaders } from './fans';
import { drivesToPorts } from './ports';

/** Where every drive and fan of a build goes best, beside where it is now. */
export interface Assignments {
  readonly ports: ReturnType<typeof drivesToPorts>;
  readonly branches: ReturnType<typeof drivesToBranches>;
  readonly fans: ReturnType<typeof fansToHeaders>;
  /** By fan: the header, or the outlet of a hub, that it goes on. */
  readonly connectors: ReadonlyMap<string, string>;
  /** What headers and hubs carry as the fans are plugged in now; only those with a fan on them. */
  readonly loadsNow: readonly FanLoad[];
  readonly ofDrives: BuildDrives;
  readonly ofFans: BuildFans;
  /** What was taken as usual because the sheet is silent. */
  readonly assumed: readonly Assumed[];
}

/** Works out the places of all drives and fans, and keeps them while nothing that they depend on changes. */
export const assignmentsOf = byIdentity((build: Build): Assignments => {
  const ofFans = fansOf(build);
  const fans = fansToHeaders(ofFans.fans, ofFans.headers);
  const ofDrives = drivesOf(build, hubAmps(ofFans, fans.loads));
  return {
    ports: drivesToPorts(ofDrives.data, ofDrives.ports, ofDrives.usedPlaces),
    branches: drivesToBranches(ofDrives.powered, ofDrives.branches),
    fans,
    connectors: fanConnectors(ofFans, fans.fans),
    loadsNow: fanLoads(ofFans),
    ofDrives,
    ofFans,
    assumed: [...ofDrives.assumed, ...ofFans.assumed],
  };
}, whatFansNeed);
