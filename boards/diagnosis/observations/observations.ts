import { AFTER_SECONDS } from './after-seconds';
import { BEFORE_PRESS } from './before-press';
import { IN_USE } from './in-use';
import type { Observation } from './observation';
import { ON_PRESS } from './on-press';

/** The whole vocabulary in the order of a start. */
export const OBSERVATIONS = [...BEFORE_PRESS, ...ON_PRESS, ...AFTER_SECONDS, ...IN_USE];

export type ObservationId = (typeof OBSERVATIONS)[number]['id'];

const BY_NAME: ReadonlyMap<string, Observation<ObservationId>> = new Map(
  OBSERVATIONS.flatMap((each) => [each.id, ...each.codes].map((name) => [name, each] as const)),
);

/** The observation with an id or one of its codes; undefined for a name that none has. */
export function observationNamed(name: string): Observation<ObservationId> | undefined {
  return BY_NAME.get(name);
}
