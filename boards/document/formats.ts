import { BoardSheetZ } from './board-sheet';
import { BuildZ } from './build';
import { CaseSheetZ } from './case-sheet';
import type { DocumentKind } from './document';

/** The three kinds of file, each with the name it carries in "format" and its schema of today. */
export const FORMATS = [
  { kind: 'build', format: 'leadwright/build', schema: BuildZ },
  { kind: 'board', format: 'leadwright/board', schema: BoardSheetZ },
  { kind: 'case', format: 'leadwright/case', schema: CaseSheetZ },
] as const satisfies readonly { kind: DocumentKind; format: string; schema: unknown }[];

export type Format = (typeof FORMATS)[number];
