import type { BoardSheet } from '../../boards/document/board-sheet';
import type { CaseSheet } from '../../boards/document/case-sheet';
import type { FileKind } from '../../boards/host';
import type { Dialog, Question, SavePlace } from './dialog';
import type { SessionStore } from './session-store';

/** Opens a dialog that asks, and waits for its answer; the dialog closes with it. */
function ask<T>(session: SessionStore, dialogOf: (answer: (value: T) => void) => Dialog): Promise<T> {
  return new Promise((resolve) => {
    const dialog = dialogOf((value) => {
      session.getState().closeDialog(dialog);
      resolve(value);
    });
    session.getState().openDialog(dialog);
  });
}

/** The id of the chosen answer; null when the person steps back. */
export function askQuestion(session: SessionStore, question: Question): Promise<string | null> {
  return ask(session, (answer) => ({ kind: 'question', question, answer }));
}

/** A file chosen in the window's own list of folders. */
export function askOpen(session: SessionStore): Promise<string | null> {
  return ask(session, (answer) => ({ kind: 'browse-open', answer }));
}

/** A place to save, chosen in the window's own list of folders. */
export function askSave(session: SessionStore, suggested: string, file: FileKind): Promise<SavePlace | null> {
  return ask(session, (answer) => ({ kind: 'browse-save', suggested, file, answer }));
}

/** A folder chosen in the window's own list of folders. */
export function askFolder(session: SessionStore): Promise<string | null> {
  return ask(session, (answer) => ({ kind: 'browse-folder', answer }));
}

/** A sheet of the library. */
export function askSheet(
  session: SessionStore,
  of: 'board' | 'case',
): Promise<BoardSheet | CaseSheet | null> {
  return ask(session, (answer) => ({ kind: 'pick-sheet', of, answer }));
}
