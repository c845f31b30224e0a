import { partKindOf } from '../signals/part-kinds';
import { signalOf } from '../signals/signals';
import type { BoardSheet } from './board-sheet';
import type { CaseSheet } from './case-sheet';

/** What a sheet is called and how much is in it, without the sheet itself. */
export interface SheetHead {
  readonly kind: 'board' | 'case';
  readonly id: string;
  readonly title: string;
  /** Connectors of a board, leads of a case. */
  readonly count: number;
  /** Every word that a person might look for it by, each once. */
  readonly words: string;
}

/** More words than this tell nothing more of a sheet. */
const WORDS_LENGTH = 4_000;

/** The head of a sheet: what a list of many sheets shows, and is searched by. */
export function sheetHead(sheet: BoardSheet | CaseSheet): SheetHead {
  const { id, name: title } = sheet;
  if (sheet.format === 'leadwright/board')
    return { kind: 'board', id, title, count: sheet.connectors.length, words: joined(boardWords(sheet)) };
  return { kind: 'case', id, title, count: sheet.leads.length, words: joined(caseWords(sheet)) };
}

function boardWords({ outline, connectors }: BoardSheet): readonly string[] {
  return [
    outline.formFactor ?? '',
    ...connectors.flatMap(({ print, title }) => [print, title]),
    ...connectors.flatMap(({ pins }) => pins.map(({ signal }) => signalOf(signal ?? 'unknown').name)),
    ...connectors.flatMap(({ pins }) => pins.map(({ name }) => name ?? '')),
  ];
}

function caseWords({ leads }: CaseSheet): readonly string[] {
  return leads.flatMap(({ name, parts, plugs }) => [
    name,
    ...plugs.map(({ print }) => print),
    ...parts.map(({ kind }) => partKindOf(kind).name),
  ]);
}

function joined(words: readonly string[]): string {
  return [...new Set(words)]
    .filter((word) => word !== '')
    .join(' \u00b7 ')
    .slice(0, WORDS_LENGTH);
}
