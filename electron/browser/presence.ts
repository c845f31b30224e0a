import type { ServerResponse } from 'node:http';

const GRACE_MS = 60_000;

/**
 * Knows whether a page is there. The page keeps one request open for as long as it lives; unlike a
 * heartbeat by timer, that also holds while the browser lets a hidden page sleep.
 */
export interface Presence {
  readonly hold: (response: ServerResponse, page: string | null) => void;
  /** Stops waiting and lets go of all pages. */
  readonly end: () => void;
}

/** A page comes and goes: what else there is to do about it. */
interface Pages {
  readonly begin: (page: string) => void;
  readonly end: (page: string) => void;
}

/** Calls `gone` once no page has been there for a minute, the first minute after the start included. */
export function watchPresence(gone: () => void, pages: Pages, graceMs: number = GRACE_MS): Presence {
  const held = new Set<ServerResponse>();
  let timer: NodeJS.Timeout | undefined = setTimeout(gone, graceMs);
  let ended = false;
  return {
    hold: (response, page) => {
      clearTimeout(timer);
      held.add(response);
      if (page !== null) pages.begin(page);
      response.once('close', () => {
        held.delete(response);
        if (page !== null) pages.end(page);
        if (held.size === 0 && !ended) timer = setTimeout(gone, graceMs);
      });
    },
    end: () => {
      ended = true;
      clearTimeout(timer);
      for (const response of held) response.destroy();
    },
  };
}
