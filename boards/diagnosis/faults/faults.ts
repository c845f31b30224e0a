import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { wiringOf } from '../../fit/seated-plug';
import { BOARD_FAULTS } from './board-faults';
import type { Fault } from './fault';
import { FRONT_FAULTS } from './front-faults';
import { SUPPLY_FAULTS } from './supply-faults';
import { wiringFaultsOf } from './wiring-faults';

/**
 * Everything that may be wrong with a machine: what its own seats and switches may have, and what any
 * machine may have. Kept while the wiring stays the same.
 */
export const faultsOf = byIdentity(
  (build: Build): readonly Fault[] => [
    ...wiringFaultsOf(build),
    ...FRONT_FAULTS,
    ...SUPPLY_FAULTS,
    ...BOARD_FAULTS,
  ],
  wiringOf,
);
