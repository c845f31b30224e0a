import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { whatFindingsNeed } from '../../findings/findings';
import { wiringOf } from '../../fit/seated-plug';
import { BOARD_FAULTS } from './board-faults';
import type { Fault } from './fault';
import { FRONT_FAULTS } from './front-faults';
import { asBuilt } from './own/own-faults';
import { weighedBy } from './priors';
import { SUPPLY_FAULTS } from './supply-faults';
import { wiringFaults } from './wiring-faults';

export const NO_PRIORS: NonNullable<Build['priors']> = [];

/** All of a build that decides which faults it may have: what the checks read of it. */
export function machineOf(build: Build): readonly object[] {
  return whatFindingsNeed(build);
}

/** The same with how often each is met. */
export function faultsHang(build: Build): readonly object[] {
  return [...machineOf(build), build.priors ?? NO_PRIORS];
}

/** The same weighed as is usual: kept while the machine stays the same, however the build weighs it. */
export const plainFaultsOf = byIdentity(
  (build: Build): readonly Fault[] => [...wiringFaultsKept(build), ...asBuilt(build, OF_ANY_MACHINE)],
  machineOf,
);

/** A tray that changes solves nothing anew. */
const wiringFaultsKept = byIdentity(wiringFaults, wiringOf);

const OF_ANY_MACHINE: readonly Fault[] = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];

/**
 * Everything that may be wrong with a machine: what its own seats and switches may have, and what any machine may
 * have, by name where the build tells of it and weighed as the build has it.
 */
export const faultsOf = byIdentity(
  (build: Build): readonly Fault[] => weighedBy(plainFaultsOf(build), build.priors ?? NO_PRIORS),
  faultsHang,
);
