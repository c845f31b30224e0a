import type { SessionStore } from '../store/session-store';
import { shownTheme, THEME_QUERIES } from './shown-theme';

/**
 * Puts theme and type size where the style sheets look for them. Not in a view: the canvas reads the
 * colours when it is drawn, and they have to be there by then.
 */
export function keepLook(session: SessionStore): void {
  const { dataset } = document.documentElement;
  const put = () => {
    const { theme, largeType } = session.getState().settings;
    dataset.theme = shownTheme(theme);
    dataset.type = largeType ? 'large' : 'normal';
  };
  put();
  session.subscribe(put);
  for (const query of THEME_QUERIES) window.matchMedia(query).addEventListener('change', put);
}
