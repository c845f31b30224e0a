import type { Finding } from '../boards/findings/finding';

/** The same finding in two builds has the same key: it is made of what the finding says, not of when. */
export function findingKey({ code, leads, pins, data }: Finding): string {
  return JSON.stringify([code, leads, pins, data]);
}
