import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import { connectorBox } from '../../../boards/fit/geometry';
import type { Sheet } from '../../files/sheet';
import { plugWords } from '../../words/plug-words';

/** What a sheet holds, at a glance: the board from above, or the leads of the case. */
export function SheetPicture({ sheet }: { readonly sheet: Sheet }) {
  return sheet.format === 'leadwright/board' ? <BoardFromAbove board={sheet} /> : <LeadNames sheet={sheet} />;
}

const MARGIN_MM = 4;
/** A connector smaller than this on paper would be a speck. */
const LEAST_MM = 4;

function BoardFromAbove({ board }: { readonly board: BoardSheet }) {
  const { widthMm, depthMm, holes = [] } = board.outline;
  const view = `${-MARGIN_MM} ${-MARGIN_MM} ${widthMm + 2 * MARGIN_MM} ${depthMm + 2 * MARGIN_MM}`;
  return (
    <svg
      className="sheet-picture"
      viewBox={view}
      role="img"
      aria-label={`${board.name} from above, ${widthMm} by ${depthMm} millimetres`}
    >
      <rect className="sheet-board" width={widthMm} height={depthMm} rx="2" />
      {holes.map(({ id, xMm, yMm }) => (
        <circle key={id} className="sheet-hole" cx={xMm} cy={yMm} r="2" />
      ))}
      {board.connectors.map((connector) => {
        const { leftMm, topMm, rightMm, bottomMm } = connectorBox(connector);
        return (
          <rect
            key={connector.id}
            className="sheet-connector"
            x={leftMm}
            y={topMm}
            width={Math.max(LEAST_MM, rightMm - leftMm)}
            height={Math.max(LEAST_MM, bottomMm - topMm)}
          >
            <title>{connector.print || connector.title}</title>
          </rect>
        );
      })}
    </svg>
  );
}

/** More than these are told as a number. */
const LEADS_NAMED = 10;

function LeadNames({ sheet: { leads } }: { readonly sheet: CaseSheet }) {
  const more = leads.length - LEADS_NAMED;
  return (
    <ul className="sheet-leads">
      {leads.slice(0, LEADS_NAMED).map((lead) => (
        <li key={lead.id} className="option-words">
          <span>{lead.name}</span>
          <span className="soft small">{lead.plugs.map((plug) => plugWords(lead, plug)).join('; ')}</span>
        </li>
      ))}
      {more > 0 && <li className="soft small">and {more} more</li>}
    </ul>
  );
}
