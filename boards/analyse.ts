import { byIdentity } from './base/by-identity';
import type { Build, Seat } from './document/build';
import type { Finding } from './findings/finding';
import { findingsOf, whatFindingsNeed } from './findings/findings';
import type { Fit } from './fit/fit';
import { fitsOf } from './fit/fits';
import { type Joint, jointsOf } from './fit/joints';

/** Everything derived from a build. */
export interface Analysis {
  /** How each seat of the build fits. */
  readonly fits: ReadonlyMap<Seat, Fit>;
  readonly joints: readonly Joint[];
  /** Worst first. */
  readonly findings: readonly Finding[];
}

/**
 * Works out everything about a build, once for the same connectors, leads, seats and tray: a new name, a note
 * or a turn of the view costs nothing, and undo finds what was known before.
 */
export const analyse = byIdentity(
  (build: Build): Analysis => ({
    fits: fitsOf(build),
    joints: jointsOf(build),
    findings: findingsOf(build),
  }),
  whatFindingsNeed,
);
