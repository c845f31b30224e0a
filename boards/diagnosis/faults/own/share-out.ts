import type { Fault } from '../fault';

/** How often what goes wrong is something that the build does not list. Common practice, no source. */
const UNLISTED_SHARE = 0.1;

/** What a build has of a fault of any machine, named as the build names it. */
export interface OwnFault
  extends Pick<Fault, 'id' | 'name'>,
    Partial<Pick<Fault, 'lead' | 'seat' | 'off' | 'ways'>> {
  /** How often it is met beside the others, in any common measure; 1 where nothing is said. */
  readonly part?: number;
  /** The build itself says that it is so. */
  readonly isThere?: boolean;
}

/** What a build has of faults of any machine, by their ids; undefined where it says nothing of one. */
export type OwnFaults = Readonly<Record<string, readonly OwnFault[] | undefined>>;

/**
 * A fault of any machine as a build has it: by name, and beside it one that the build does not list. Together
 * they are met as often as on any machine, so that to write things down makes nothing more likely.
 *
 * @param own undefined where the build says nothing of it: then the fault of any machine stands alone
 */
export function sharedOut(any: Fault, own: readonly OwnFault[] | undefined): readonly Fault[] {
  if (own === undefined) return [any];
  const parts = own.reduce((sum, { part = 1 }) => sum + part, 0);
  const named = own.map(({ part = 1, isThere: _, ...mine }): Fault => {
    const weight = (any.weight * (1 - UNLISTED_SHARE) * part) / parts;
    return { cause: any.cause, caseOf: any.id, ways: any.ways, ...mine, weight };
  });
  return [...named, { ...any, weight: any.weight * UNLISTED_SHARE }];
}
