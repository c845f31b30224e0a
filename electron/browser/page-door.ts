import type { Door } from '../host/door';

/** A door that has no dialogs of the system and no window of its own: what they show, the page shows itself. */
export function pageDoor(showState: Door['showState']): Door {
  return {
    kind: 'browser',
    dialogs: 'page',
    chooseOpen: async () => null,
    chooseSave: async () => null,
    chooseFolder: async () => null,
    showTheme: () => undefined,
    showState,
  };
}
