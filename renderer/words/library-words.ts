import type { ReadProblem, SheetHead } from '../../boards/host';
import type { Message } from '../store/dialog';
import { readProblemWords } from './host-words';
import { counted } from './list-words';

/** Why the folder of the library cannot be listed, and what to do. */
export function libraryProblemWords(problem: ReadProblem): Message {
  const advice = 'Choose another folder, or go back to the usual one.';
  const title = `The folder “${problem.name}” cannot be read`;
  switch (problem.code) {
    case 'not-found':
      return {
        title,
        lines: ['It has been moved, renamed or deleted, or its disk is not connected.'],
        advice,
      };
    case 'no-permission':
      return { title, lines: ['Your account has no permission to read it.'], advice };
    case 'unreadable':
      return { title, lines: [`The system says: ${problem.detail}.`], advice };
    default:
      return { title, lines: ['It is not a folder any more.'], advice };
  }
}

/** "board sheet, 12 connectors": what a sheet of the library is. */
export function headWords(head: Extract<SheetHead, { outcome: 'sheet' }>): string {
  return head.kind === 'board'
    ? `board sheet, ${counted(head.count, 'connector')}`
    : `case sheet, ${counted(head.count, 'lead')}`;
}

/** Why a file of the library is no sheet: the particulars, then what to do. */
export function refusedWords(head: Exclude<SheetHead, { outcome: 'sheet' }>): readonly string[] {
  switch (head.outcome) {
    case 'build':
      return [`It is the build “${head.title}”, not a sheet.`, 'Open it with File, Open.'];
    case 'unsound':
      return [...head.lines, head.advice];
    case 'unreadable': {
      const { lines, advice } = readProblemWords(head.problem);
      return [...lines.slice(0, 1), advice];
    }
  }
}
