import type { Job } from './signal';
import type { SignalId } from './signals';

/** Where one wire ends at the far side of a lead, and which pins of a board it is made for. */
export interface Terminal {
  readonly id: string;
  readonly name: string;
  /** Board signals that are right here, best first. Empty: the part does not care. */
  readonly wants: readonly SignalId[];
  /** May be left off without any loss: a shield, a second ground. */
  readonly spare?: boolean;
}

export interface PartKind {
  readonly id: string;
  readonly name: string;
  readonly job: Job;
  readonly terminals: readonly Terminal[];
  /** Terminals that may change places with no effect at all: the two legs of a switch. */
  readonly exchangeable?: readonly [string, string];
  /** What happens when it sits on the right pins the wrong way round. */
  readonly reversed: 'nothing' | 'other-colour' | 'dark' | 'dead' | 'harm';
  /** What the two legs are to each other at rest and in use, as far as geometry rules need it. */
  readonly path: 'closes-when-pressed' | 'one-way' | 'low-resistance' | 'load' | 'lines';
  readonly source: string;
}
