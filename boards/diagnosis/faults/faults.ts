import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { wiringOf } from '../../fit/seated-plug';
import { BOARD_FAULTS } from './board-faults';
import type { Fault } from './fault';
import { FRONT_FAULTS } from './front-faults';
import { weighedBy } from './priors';
import { standoffFaults } from './standoff-faults';
import { SUPPLY_FAULTS } from './supply-faults';
import { wiringFaults } from './wiring-faults';

export const NO_PRIORS: NonNullable<Build['priors']> = [];

const NO_TRAY = {};

/** All of a build that decides which faults it may have. */
export function machineOf(build: Build): readonly object[] {
  return [...wiringOf(build), build.board.outline, build.case.tray ?? NO_TRAY];
}

/** The same with how often each is met. */
export function faultsHang(build: Build): readonly object[] {
  return [...machineOf(build), build.priors ?? NO_PRIORS];
}

/** The same weighed as is usual: kept while the machine stays the same, however the build weighs it. */
export const plainFaultsOf = byIdentity(
  (build: Build): readonly Fault[] => [...wiringFaultsKept(build), ...besidesWiring(build)],
  machineOf,
);

/** A tray that changes solves nothing anew. */
const wiringFaultsKept = byIdentity(wiringFaults, wiringOf);

/** What any machine may have, whatever its wiring; of standoffs what this tray says. */
function besidesWiring(build: Build): readonly Fault[] {
  return [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS].flatMap((fault) =>
    fault.cause === 'short-standoff' ? standoffFaults(build, fault) : [fault],
  );
}

/**
 * Everything that may be wrong with a machine: what its own seats, switches and standoffs may have, and what any
 * machine may have, weighed as the build has it.
 */
export const faultsOf = byIdentity(
  (build: Build): readonly Fault[] => weighedBy(plainFaultsOf(build), build.priors ?? NO_PRIORS),
  faultsHang,
);
