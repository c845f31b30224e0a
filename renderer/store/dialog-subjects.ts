import type { Build } from '../../boards/document/build';
import { anyConnectorOf, plugOf, unitOf } from '../../boards/document/lookup';
import type { Dialog } from './dialog';
import type { EditorStore } from './editor';
import type { SessionStore } from './session-store';

/**
 * Closes dialogs whose subject is gone: of a connector whose adding was undone, of a build in whose place another one
 * lies. They would stay in the way of every key, or speak of what is not there. Those that ask are left: somebody
 * waits for the answer.
 */
export function closeWithoutSubject(editor: EditorStore, session: SessionStore): void {
  editor.subscribe(({ open }, { open: before }) => {
    const build = open?.history.present;
    if (build === before?.history.present) return;
    const another = open?.opening !== before?.opening;
    const { dialogs, closeDialog } = session.getState();
    for (const dialog of dialogs)
      if (!(another ? standsAlone(dialog) : isThere(dialog, build))) closeDialog(dialog);
  });
}

/** Whether a dialog is of no build in particular. */
function standsAlone(dialog: Dialog): boolean {
  return isThere(dialog, undefined);
}

function isThere(dialog: Dialog, build: Build | undefined): boolean {
  switch (dialog.kind) {
    case 'number-connector':
    case 'header-picture':
    case 'pin-list':
    case 'looks-like':
    case 'photo':
    case 'meter':
      return build !== undefined && anyConnectorOf(build, dialog.connector) !== undefined;
    case 'unit':
      return build !== undefined && unitOf(build, dialog.unit) !== undefined;
    case 'places':
      return build !== undefined && plugOf(build, dialog.plug) !== undefined;
    case 'versions':
    case 'add-connector':
    case 'add-lead':
    case 'add-unit':
    case 'print-pinout':
    case 'print-bench-sheet':
    case 'print-trouble':
    case 'print-labels':
    case 'large-steps':
    case 'large-trial':
      return build !== undefined;
    case 'search':
    case 'keys':
    case 'cautions':
    case 'new-build':
    case 'recent':
    case 'library':
    case 'pick-sheet':
    case 'compare':
    case 'message':
    case 'question':
    case 'browse-open':
    case 'browse-folder':
    case 'browse-save':
      return true;
  }
}
