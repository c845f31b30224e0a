import type { Settings } from '../../boards/host';

const FORCED = '(forced-colors: active)';
const DARK = '(prefers-color-scheme: dark)';

/** What the shown theme depends on beside the person's choice. */
export const THEME_QUERIES = [FORCED, DARK] as const;

export type ShownTheme = 'light' | 'dark' | 'forced';

/** The theme as it is shown: forced colours before all, then the person's choice, then the system's. */
export function shownTheme(chosen: Settings['theme']): ShownTheme {
  if (window.matchMedia(FORCED).matches) return 'forced';
  if (chosen !== 'system') return chosen;
  return window.matchMedia(DARK).matches ? 'dark' : 'light';
}
