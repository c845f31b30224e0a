import type { Mm } from '../../base/units';
import { count } from '../../document/problem/shown-value';

/** A length in whole millimetres; below 10 mm, to the tenth. */
export function lengthWords(mm: Mm): string {
  const kept = Math.abs(mm) < 10 ? Math.round(mm * 10) / 10 : Math.round(mm);
  return `${count(kept)}\u00a0mm`;
}

/** How much is missing: rounded up, so that what is added is enough. */
export function missingWords(mm: Mm): string {
  return `${count(Math.ceil(mm - 1e-9))}\u00a0mm`;
}

/** What is left over: rounded down, so that it is there. */
export function spareWords(mm: Mm): string {
  return `${count(Math.floor(mm + 1e-9))}\u00a0mm`;
}
