import { useSyncExternalStore } from 'react';
import type { Settings } from '../../boards/host';

function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (changed) => {
      const list = window.matchMedia(query);
      list.addEventListener('change', changed);
      return () => list.removeEventListener('change', changed);
    },
    () => window.matchMedia(query).matches,
  );
}

export function useReducedMotion(): boolean {
  return useMedia('(prefers-reduced-motion: reduce)');
}

/** The theme as it is shown: the person's choice, the system's where they left it to it, forced colours before both. */
export function useShownTheme(chosen: Settings['theme']): 'light' | 'dark' | 'forced' {
  const forced = useMedia('(forced-colors: active)');
  const dark = useMedia('(prefers-color-scheme: dark)');
  if (forced) return 'forced';
  if (chosen === 'system') return dark ? 'dark' : 'light';
  return chosen;
}
