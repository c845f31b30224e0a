import type { TrustRow } from './row';

/**
 * Every row there is: each file in `rows` exports its own as `ROWS`. A new file is found by itself, so two
 * people who add rows never touch the same file.
 */
export const ALL_ROWS: readonly TrustRow[] = Object.entries(
  import.meta.glob<{ readonly ROWS: readonly TrustRow[] }>('./rows/*.ts', { eager: true }),
).flatMap(([, { ROWS }]) => ROWS);
