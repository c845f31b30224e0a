import type { BoardSheet } from '../../boards/document/board-sheet';
import type { CaseSheet } from '../../boards/document/case-sheet';

/** What the library holds. */
export type Sheet = BoardSheet | CaseSheet;

export type SheetKind = 'board' | 'case';

export function kindOfSheet(sheet: Sheet): SheetKind {
  return sheet.format === 'leadwright/board' ? 'board' : 'case';
}

/** "board sheet", "case sheet". */
export function sheetWords(kind: SheetKind): string {
  return `${kind} sheet`;
}
