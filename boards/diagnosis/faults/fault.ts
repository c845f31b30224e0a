import type { Seat } from '../../document/build';
import type { PlugRef } from '../../document/lookup';
import type { Machine } from '../start-chain/machine';
import type { Signs } from '../start-chain/signs-of-end';
import type { CauseId } from './causes';

/** One of the ways in which a fault can show. What is not named of the machine is sound. */
export interface Way {
  /** Its share among the ways of the fault, in any common measure. */
  readonly share: number;
  readonly machine: Partial<Machine>;
  /** What shows besides the end of the start. */
  readonly signs: Signs;
}

/** One thing that may be wrong with a machine. */
export interface Fault {
  readonly id: string;
  readonly cause: CauseId;
  /** The fault of any machine that it is the build's own case of, by id; undefined for one of any machine. */
  readonly caseOf?: string;
  /** What is wrong, as a sentence about it. */
  readonly name: string;
  /** How often it is met among all that goes wrong at a bench, in any common measure. */
  readonly weight: number;
  /** The lead that it is about; undefined where it is none of the build's. */
  readonly lead?: string;
  /** Where the plug would then be, of a wrong seat; undefined where it is off. */
  readonly seat?: Seat;
  /** The plug that would then be off its pins. */
  readonly off?: PlugRef;
  readonly ways: readonly Way[];
}

export function way(share: number, machine: Partial<Machine>, signs: Signs = {}): Way {
  return { share, machine, signs };
}

export function fault(id: string, cause: CauseId, weight: number, name: string, ...ways: Way[]): Fault {
  return { id, cause, name, weight, ways };
}
