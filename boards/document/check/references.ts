import type { BoardSheet } from '../board-sheet';
import type { Build } from '../build';
import type { Document } from '../document';
import { type FieldProblems, ProblemList } from '../problem/problem-list';
import { checkConnectors } from './connectors';
import { checkLeads } from './leads';
import { Once } from './once';
import { checkOutline } from './outline';
import { checkPhotos } from './photos';
import { checkSeats } from './seats';
import { checkTray } from './tray';
import { checkUnits } from './units';

/**
 * Where a document that passes its schema contradicts itself: a name twice, or a name of something
 * that is not there. Counts up to the same limits as the schema check.
 */
export function referenceProblems(document: Document): FieldProblems {
  const list = new ProblemList();
  switch (document.format) {
    case 'leadwright/board':
      checkOutline(document.outline, 'outline', list);
      checkConnectors([{ path: 'connectors', connectors: document.connectors }], list);
      checkPhotos(document, 'photos', list);
      checkDrivePlaces(document, 'drivePlaces', list);
      break;
    case 'leadwright/case':
      checkLeads([{ path: 'leads', leads: document.leads }], list);
      checkTray(document.tray, 'tray', list);
      break;
    case 'leadwright/build':
      checkBuild(document, list);
  }
  return list.problems;
}

function checkBuild(build: Build, list: ProblemList): void {
  checkOutline(build.board.outline, 'board.outline', list);
  checkUnits(build, list);
  checkPhotos(build.board, 'board.photos', list);
  checkDrivePlaces(build.board, 'board.drivePlaces', list);
  const ofCase = { path: 'case.leads', leads: build.case.leads };
  checkLeads([ofCase, { path: 'extras', leads: build.extras }], list);
  checkTray(build.case.tray, 'case.tray', list);
  checkSeats(build, list);
}

function checkDrivePlaces({ drivePlaces }: BoardSheet, path: string, list: ProblemList): void {
  const ids = new Once('an id', list);
  drivePlaces?.forEach(({ id }, at) => {
    ids.enter(id, `${path}[${at}].id`);
  });
}
