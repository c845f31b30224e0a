import type { BoardSheet } from '../../boards/document/board-sheet';
import type { Build } from '../../boards/document/build';
import type { CaseSheet } from '../../boards/document/case-sheet';
import type { Workbench } from '../workbench';
import { idFrom, suggestedName } from './file-name';
import { mayLeave } from './leave-build';

/** A board sheet with nothing on it yet, of the usual size. */
export const EMPTY_BOARD: BoardSheet = {
  format: 'leadwright/board',
  version: 1,
  id: 'board',
  name: 'Unnamed board',
  outline: { widthMm: 244, depthMm: 244 },
  connectors: [],
};

export const EMPTY_CASE: CaseSheet = {
  format: 'leadwright/case',
  version: 1,
  id: 'case',
  name: 'Unnamed case',
  leads: [],
};

/** A build with every lead still on the shelf. */
export function newBuild(name: string, board: BoardSheet, caseSheet: CaseSheet): Build {
  return {
    format: 'leadwright/build',
    version: 1,
    id: idFrom(name, 'build'),
    name,
    board,
    case: caseSheet,
    extras: [],
    seats: [],
    view: { turn: 0, mirrored: false },
  };
}

/** Puts a build on the bench that has no file yet, when what lies there may go. */
export async function startBuild(workbench: Workbench, build: Build): Promise<boolean> {
  if (!(await mayLeave(workbench))) return false;
  workbench.recovery.begin();
  const { session, editor } = workbench;
  session.getState().beginAnew();
  session.getState().goTo(build.board.connectors.length === 0 ? 'document' : 'wire');
  editor
    .getState()
    .load(
      build,
      { handle: null, name: suggestedName(build), folder: null, stamp: null, readOnly: false },
      build,
    );
  return true;
}
