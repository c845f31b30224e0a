import type { Build } from '../../boards/document/build';
import type { Lead } from '../../boards/document/lead';

/** Copies of one machine lie on a board without end, in rows of so many. */
const IN_A_ROW = 8;
const APART_MM = 235;
const FIRST_MM = -960;

/** As many as fit on what a board may measure. */
const MOST_COPIES = IN_A_ROW * IN_A_ROW;

/**
 * A build as large as so many of another one: its connectors, leads and seats again and again, side by side,
 * on one board and in one case with its tray; without its units. The first leads are cables that are measured.
 *
 * @param more how many of the leads are cables with a run, and how many more lie beside the board
 */
export function largeBuild(
  one: Build,
  copies: number,
  { cables = 0, loose = 0 }: { readonly cables?: number; readonly loose?: number } = {},
): Build {
  if (copies > MOST_COPIES) throw new Error(`${copies} do not fit: at most ${MOST_COPIES}`);
  const { photos: _, ...sheet } = one.board;
  const { units: _units, routes: _routes, ...rest } = one;
  const onBoard = new Set(one.board.connectors.map(({ id }) => id));
  const seats = one.seats.filter(({ connector }) => onBoard.has(connector));
  const each = Array.from({ length: copies }, (_none, at) => at);
  const leads = each.flatMap((at) => one.case.leads.map((lead) => ({ ...lead, id: `${lead.id}-${at}` })));
  const connectors = each.flatMap((at) =>
    one.board.connectors.map((connector) => ({
      ...connector,
      id: `${connector.id}-${at}`,
      print: `${connector.print} ${at + 1}`,
      place: {
        ...connector.place,
        xMm: connector.place.xMm + FIRST_MM + (at % IN_A_ROW) * APART_MM,
        yMm: connector.place.yMm + FIRST_MM + Math.floor(at / IN_A_ROW) * APART_MM,
      },
    })),
  );
  return {
    ...rest,
    board: { ...sheet, outline: { widthMm: 1_000, depthMm: 1_000 }, connectors },
    case: {
      ...one.case,
      leads: leads.map((lead, at) => (at < cables ? asCable(lead) : withoutCable(lead))),
    },
    extras: [
      ...each.flatMap((at) => one.extras.map((lead) => withoutCable({ ...lead, id: `${lead.id}-${at}` }))),
      ...one.case.leads.slice(0, 1).flatMap((lead) => copiesOf(lead, loose)),
    ],
    seats: each.flatMap((at) =>
      seats.map((seat) => ({
        ...seat,
        lead: `${seat.lead}-${at}`,
        connector: `${seat.connector}-${at}`,
      })),
    ),
  };
}

function copiesOf(lead: Lead, many: number): readonly Lead[] {
  const bare = withoutCable(lead);
  return Array.from({ length: many }, (_none, at) => ({
    ...bare,
    id: `loose-${at}`,
    setAside: true as const,
  }));
}

/** The lead as a cable that is measured, which it may be already. */
function asCable(lead: Lead): Lead {
  const [plug] = lead.plugs;
  if (plug === undefined || lead.cable !== undefined) return lead;
  return { ...lead, cable: { diameterMm: 3, slackMm: 10, runs: [{ to: plug.id, lengthMm: 700 }] } };
}

function withoutCable({ cable: _, ...lead }: Lead): Lead {
  return lead;
}

/** How many positions, leads and seats a build has. */
export function sizeOf({ board, case: sheet, extras, seats }: Build) {
  const leads = [...sheet.leads, ...extras];
  return {
    pins: board.connectors.reduce((sum, { grid }) => sum + grid.rows * grid.cols, 0),
    leads: leads.length,
    cables: leads.filter(({ cable }) => cable !== undefined).length,
    seats: seats.length,
  };
}
