import { type Result, refuse } from '../base/result';
import type { BoardSheet } from '../document/board-sheet';
import type { Document } from '../document/document';
import { benchPaper } from './bench-sheet/bench-paper';
import { headerPicture } from './bench-sheet/header-picture';
import { labelPaper } from './cables/label-paper';
import type { Print } from './order';
import type { Letters } from './page/letters';
import type { Paper } from './page/page';
import type { PaperProblem } from './paper-problem';
import { pinoutPaper } from './pinout/pinout-paper';
import { troublePaper } from './trouble-sheet/trouble-paper';

/** Lays out what is to be printed: the one way for every format. Only a build has a bench sheet. */
export function layPaper(
  document: Document,
  { kind, options }: Print,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const build = document.format === 'leadwright/build' ? document : null;
  if (kind === 'bench-sheet')
    return build ? benchPaper(build, options, printedOn, letters) : expected('a build');
  if (kind === 'trouble-sheet')
    return build ? troublePaper(build, options, printedOn, letters) : expected('a build');
  if (kind === 'labels') return build ? labelPaper(build, options, printedOn, letters) : expected('a build');
  if (kind === 'header')
    return build ? headerPicture(build, options, printedOn, letters) : expected('a build');
  const board = boardIn(document);
  return board ? pinoutPaper(board, options, printedOn, letters) : expected('a board sheet or a build');
}

/** The board of a board sheet or a build; null for a case sheet. */
export function boardIn(document: Document): BoardSheet | null {
  switch (document.format) {
    case 'leadwright/build':
      return document.board;
    case 'leadwright/board':
      return document;
    case 'leadwright/case':
      return null;
  }
}

function expected(what: string): Result<never, PaperProblem> {
  return refuse({ code: 'not-a-board', path: '', expected: what });
}
