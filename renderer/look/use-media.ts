import { useSyncExternalStore } from 'react';
import type { Settings } from '../../boards/host';
import { type ShownTheme, shownTheme, THEME_QUERIES } from './shown-theme';

const REDUCED_MOTION = '(prefers-reduced-motion: reduce)';

function watch(queries: readonly string[]): (changed: () => void) => () => void {
  return (changed) => {
    const lists = queries.map((query) => window.matchMedia(query));
    for (const list of lists) list.addEventListener('change', changed);
    return () => {
      for (const list of lists) list.removeEventListener('change', changed);
    };
  };
}

const watchMotion = watch([REDUCED_MOTION]);
const watchTheme = watch(THEME_QUERIES);

export function useReducedMotion(): boolean {
  return useSyncExternalStore(watchMotion, () => window.matchMedia(REDUCED_MOTION).matches);
}

export function useShownTheme(chosen: Settings['theme']): ShownTheme {
  return useSyncExternalStore(watchTheme, () => shownTheme(chosen));
}
