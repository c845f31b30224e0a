import type { Build } from '../../boards/document/build';
import { anyConnectorOf, plugOf, unitOf } from '../../boards/document/lookup';
import type { Dialog } from './dialog';
import type { EditorStore } from './editor';
import type { SessionStore } from './session-store';

/**
 * Closes dialogs whose subject is gone from the open build, as a connector whose adding was undone: unseen they would
 * stay in the way of every key. With another build all that are about a build go (`beginAnew`).
 */
export function closeWithoutSubject(editor: EditorStore, session: SessionStore): void {
  editor.subscribe(({ open }, { open: before }) => {
    const build = open?.history.present;
    if (build === undefined || build === before?.history.present) return;
    const { dialogs, closeDialog } = session.getState();
    for (const dialog of dialogs) if (!isThere(dialog, build)) closeDialog(dialog);
  });
}

function isThere(dialog: Dialog, build: Build): boolean {
  switch (dialog.kind) {
    case 'number-connector':
    case 'header-picture':
    case 'pin-list':
    case 'looks-like':
    case 'photo':
    case 'meter':
      return anyConnectorOf(build, dialog.connector) !== undefined;
    case 'unit':
      return unitOf(build, dialog.unit) !== undefined;
    case 'places':
      return plugOf(build, dialog.plug) !== undefined;
    default:
      return true;
  }
}
