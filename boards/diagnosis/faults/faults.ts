import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { wiringOf } from '../../fit/seated-plug';
import { BOARD_FAULTS } from './board-faults';
import type { Fault } from './fault';
import { FRONT_FAULTS } from './front-faults';
import { weighedBy } from './priors';
import { SUPPLY_FAULTS } from './supply-faults';
import { wiringFaults } from './wiring-faults';

/** What any machine may have, whatever its wiring. */
const OF_ANY_MACHINE: readonly Fault[] = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];

export const NO_PRIORS: NonNullable<Build['priors']> = [];

/** All of a build that decides which faults it may have and how often. */
export function faultsHang(build: Build): readonly object[] {
  return [...wiringOf(build), build.priors ?? NO_PRIORS];
}

/** The same weighed as is usual: kept while the wiring stays the same, however the build weighs it. */
export const plainFaultsOf = byIdentity(
  (build: Build): readonly Fault[] => [...[...wiringFaults(build)].flat(), ...OF_ANY_MACHINE],
  wiringOf,
);

/**
 * Everything that may be wrong with a machine: what its own seats and switches may have, and what any
 * machine may have, weighed as the build has it.
 */
export const faultsOf = byIdentity(
  (build: Build): readonly Fault[] => weighedBy(plainFaultsOf(build), build.priors ?? NO_PRIORS),
  faultsHang,
);

/** The same piece by piece: after each plug the share of the work that is done, at last the faults. */
export function* faultsInSteps(build: Build): Generator<number, readonly Fault[]> {
  const found: Fault[] = [];
  const pieces = build.seats.length + 1;
  let done = 0;
  for (const piece of wiringFaults(build)) {
    found.push(...piece);
    done += 1;
    yield done / pieces;
  }
  return weighedBy([...found, ...OF_ANY_MACHINE], build.priors ?? NO_PRIORS);
}
