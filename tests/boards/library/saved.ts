import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import type { Connector } from '../../../boards/document/connector';
import type { Document } from '../../../boards/document/document';
import type { Lead } from '../../../boards/document/lead';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';

/** The document after its text was written and read. */
function reopened(document: Document): Document {
  const opened = parseDocument(serialize(document));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened.value;
}

export function savedAndOpened(connector: Connector): Connector {
  const board: BoardSheet = {
    format: 'leadwright/board',
    version: 1,
    id: 'board',
    name: 'Board',
    outline: { widthMm: 100, depthMm: 100 },
    connectors: [connector],
  };
  const opened = reopened(board);
  const [only] = opened.format === 'leadwright/board' ? opened.connectors : [];
  if (only === undefined) throw new Error('The connector was lost');
  return only;
}

export function leadsSavedAndOpened(leads: readonly Lead[]): readonly Lead[] {
  const sheet: CaseSheet = {
    format: 'leadwright/case',
    version: 1,
    id: 'case',
    name: 'Case',
    leads: [...leads],
  };
  const opened = reopened(sheet);
  return opened.format === 'leadwright/case' ? opened.leads : [];
}
