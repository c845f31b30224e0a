import type { Output, Settings } from '../../boards/host';

/** What the front doors do differently. Everything else about the machine is the same for both. */
export interface Door {
  readonly kind: Output<'about'>['door'];
  readonly dialogs: Output<'about'>['dialogs'];
  /** The path a person chose in the system's own dialog, or null. */
  readonly chooseOpen: () => Promise<string | null>;
  readonly chooseSave: (suggested: string) => Promise<string | null>;
  readonly chooseFolder: () => Promise<string | null>;
  /** The parts of the window that are not the page's take on the theme. */
  readonly showTheme: (theme: Settings['theme']) => void;
  /** The window's title and unsaved mark have changed. */
  readonly showState: (state: { readonly name: string; readonly unsaved: boolean }) => void;
}
