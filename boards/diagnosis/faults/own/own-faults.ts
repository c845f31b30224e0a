import { byIdentity } from '../../../base/by-identity';
import type { Build } from '../../../document/build';
import { wiringOf } from '../../../fit/seated-plug';
import { alikeWays } from '../alike-ways';
import type { Fault } from '../fault';
import { standoffFaults } from '../standoff-faults';
import { driveFaults } from './drive-faults';
import { fanFaults } from './fan-faults';
import { inlineFaults } from './inline-faults';
import { type OwnFault, type OwnFaults, sharedOut } from './share-out';
import { supplyCableFaults } from './supply-cable-faults';
import { powerCablesOf } from './supply-cables';

/** Those that its wiring tells of; a tray that changes works nothing out anew. */
const ofWiring = byIdentity((build: Build): OwnFaults => {
  const cables = powerCablesOf(build);
  return alike({
    ...supplyCableFaults(cables),
    ...driveFaults(build, cables),
    ...fanFaults(build),
    ...inlineFaults(build),
  });
}, wiringOf);

/**
 * Ways that come to the same are the same object, so that what is derived from them is found again. A plug that two
 * things hang on is off once: for what is told first.
 */
function alike(faults: OwnFaults): OwnFaults {
  const one = alikeWays();
  const told = new Set<string>();
  const once = ({ id }: OwnFault) => !told.has(id) && told.add(id);
  return Object.fromEntries(
    Object.entries(faults).map(([any, own]) => [
      any,
      own?.filter(once).map((fault) => (fault.ways ? { ...fault, ways: one(fault.ways) } : fault)),
    ]),
  );
}

function ownFaultsOf(build: Build): OwnFaults {
  return { ...ofWiring(build), standoff: standoffFaults(build) };
}

/** Faults of any machine as this build has them: by name where it tells of them. */
export function asBuilt(build: Build, faults: readonly Fault[]): readonly Fault[] {
  const own = ownFaultsOf(build);
  return faults.flatMap((any) => sharedOut(any, own[any.id]));
}

/** Ids of the faults that the build itself says are there. */
export function writtenFaults(build: Build): readonly string[] {
  return Object.values(ownFaultsOf(build)).flatMap((own = []) =>
    own.filter(({ isThere }) => isThere === true).map(({ id }) => id),
  );
}
