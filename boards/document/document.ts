import type { BoardSheet } from './board-sheet';
import type { Build } from './build';
import type { CaseSheet } from './case-sheet';

export type Document = Build | BoardSheet | CaseSheet;
export type DocumentKind = 'build' | 'board' | 'case';
