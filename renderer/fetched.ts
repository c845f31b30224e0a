import { type ComponentType, lazy, useState } from 'react';

/** A part of the window that comes in a file of its own. */
export interface FetchedPart<Props> {
  /** Fetches it before it is shown. */
  readonly fetch: () => Promise<ComponentType<Props>>;
  readonly ifThere: () => ComponentType<Props> | null;
  /** Fetches it when it is shown; suspends until it is there. */
  readonly Awaited: ComponentType<Props>;
}

const all: (() => Promise<unknown>)[] = [];

export function fetched<Props extends object>(load: () => Promise<ComponentType<Props>>): FetchedPart<Props> {
  let part: ComponentType<Props> | null = null;
  const fetch = async () => {
    part = await load();
    return part;
  };
  all.push(fetch);
  return { fetch, ifThere: () => part, Awaited: lazy(async () => ({ default: await fetch() })) };
}

/** The part to show. Not awaited once it is there: React keeps back for 0.3 s what it had to show a gap for. */
export function usePart<Props>(part: FetchedPart<Props>): ComponentType<Props> {
  const [shown] = useState(() => part.ifThere() ?? part.Awaited);
  return shown;
}

/** A part that is shown as it comes. */
export function fetchedLater<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  return fetched(load).Awaited;
}

/**
 * Fetches, one after the other, what has not been shown yet: a window whose program has ended must still be able to
 * say so, and to show all of the work.
 */
export async function fetchRest(): Promise<void> {
  // What is fetched may bring parts of its own, which are gone through too.
  for (const fetch of all) await fetch().catch(() => undefined);
}
