import type { Build } from '../../../boards/document/build';
import { applyCommand } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import type { Choices } from '../../../boards/edit/compare/choices';
import { refusalWords } from '../../../boards/edit/refusal-words';
import type { Sheet } from '../../files/sheet';

/** The command that takes over from another sheet what was chosen. */
export function mergeCommand(theirs: Sheet, choices: Choices): Command {
  return theirs.format === 'leadwright/board'
    ? { name: 'merge-board', args: { board: theirs, choices } }
    : { name: 'merge-case', args: { case: theirs, choices } };
}

/** What would become of the build: the build itself, and why not where it cannot be. */
export type Preview =
  | { readonly ok: true; readonly after: Build; readonly plugsOff: number; readonly changes: boolean }
  | { readonly ok: false; readonly words: string };

/** Tries the command out without doing it. */
export function previewOf(build: Build, command: Command): Preview {
  const result = applyCommand(build, command);
  if (!result.ok) return { ok: false, words: refusalWords(result.problem, build) };
  const after = result.value;
  return { ok: true, after, plugsOff: build.seats.length - after.seats.length, changes: after !== build };
}
