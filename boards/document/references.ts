import type { Build } from './build';
import { checkConnectors } from './check-connectors';
import { checkLeads } from './check-leads';
import { checkSeats } from './check-seats';
import type { Document } from './document';
import { type FieldProblems, ProblemList } from './problem-list';

/**
 * Where a document that passes its schema contradicts itself: a name twice, or a name of something
 * that is not there. Counts up to the same limits as the schema check.
 */
export function referenceProblems(document: Document): FieldProblems {
  const list = new ProblemList();
  switch (document.format) {
    case 'leadwright/board':
      checkConnectors(document.connectors, 'connectors', list);
      break;
    case 'leadwright/case':
      checkLeads([{ path: 'leads', leads: document.leads }], list);
      break;
    case 'leadwright/build':
      checkBuild(document, list);
  }
  return list.problems;
}

function checkBuild(build: Build, list: ProblemList): void {
  checkConnectors(build.board.connectors, 'board.connectors', list);
  const ofCase = { path: 'case.leads', leads: build.case.leads };
  checkLeads([ofCase, { path: 'extras', leads: build.extras }], list);
  checkSeats(build, list);
}
