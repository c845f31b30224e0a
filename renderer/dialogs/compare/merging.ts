import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Build } from '../../../boards/document/build';
import { applyCommand } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { type Choices, takeOf } from '../../../boards/edit/compare/choices';
import { compareBoards } from '../../../boards/edit/compare/compare-boards';
import { compareCases } from '../../../boards/edit/compare/compare-cases';
import { mergeBoards } from '../../../boards/edit/compare/merge-boards';
import { mergeCases } from '../../../boards/edit/compare/merge-cases';
import { refusalWords } from '../../../boards/edit/refusal-words';
import { same } from '../../../boards/edit/same';
import { EMPTY_BOARD, EMPTY_CASE, newBuild } from '../../files/new-build';
import type { Sheet } from '../../files/sheet';

/** The command that takes over from another sheet what was chosen. */
export function mergeCommand(theirs: Sheet, choices: Choices): Command {
  return theirs.format === 'leadwright/board'
    ? { name: 'merge-board', args: { board: theirs, choices } }
    : { name: 'merge-case', args: { case: theirs, choices } };
}

/** What would become of a sheet; or why it cannot be. */
export type Preview =
  | {
      readonly ok: true;
      readonly sheet: Sheet;
      /** Plugs of the build that would come off. */
      readonly plugsOff: number;
      readonly changes: boolean;
    }
  | { readonly ok: false; readonly words: string };

/** Tries a command out on the build without doing it. */
export function previewOf(build: Build, command: Command): Preview {
  const result = applyCommand(build, command);
  if (!result.ok) return { ok: false, words: refusalWords(result.problem, build) };
  const after = result.value;
  return {
    ok: true,
    sheet: command.name === 'merge-case' ? after.case : after.board,
    plugsOff: build.seats.length - after.seats.length,
    changes: after !== build,
  };
}

/** The same for a sheet that lies in the library. */
export function sheetPreview(mine: Sheet, theirs: Sheet, choices: Choices): Preview {
  const result = mergedSheets(mine, theirs, choices);
  if (!result.ok)
    return { ok: false, words: refusalWords(result.problem, newBuild('', EMPTY_BOARD, EMPTY_CASE)) };
  return { ok: true, sheet: result.value, plugsOff: 0, changes: !same(mine, result.value) };
}

function mergedSheets(mine: Sheet, theirs: Sheet, choices: Choices) {
  const take = takeOf(choices);
  if (mine.format === 'leadwright/board' && theirs.format === 'leadwright/board')
    return mergeBoards(compareBoards(mine, theirs), take);
  if (mine.format === 'leadwright/case' && theirs.format === 'leadwright/case')
    return mergeCases(compareCases(mine, theirs), take);
  throw new Error('A board sheet cannot be merged with a case sheet');
}

/** The board of a preview, where it is one of a board. */
export function boardOf(preview: Preview | null): BoardSheet | null {
  return preview?.ok && preview.sheet.format === 'leadwright/board' ? preview.sheet : null;
}
