import type { Build } from '../../boards/document/build';
import type { Lead } from '../../boards/document/lead';
import type { Tray } from '../../boards/document/tray';

/** Copies of one machine lie on a board without end, in rows of so many. */
const IN_A_ROW = 8;
const APART_MM = 235;
const FIRST_MM = -960;

/** As many as fit on what a board may measure. */
const MOST_COPIES = IN_A_ROW * IN_A_ROW;

/**
 * A build as large as so many of another one: its connectors, leads and seats again and again, side by side,
 * on one board and in one case with a tray. The first leads are cables that are measured.
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
    ...one,
    board: { ...sheet, outline: { widthMm: 1_000, depthMm: 1_000 }, connectors },
    case: {
      ...one.case,
      leads: leads.map((lead, at) => (at < cables ? asCable(lead) : lead)),
      ...(cables > 0 && { tray: TRAY }),
    },
    extras: [
      ...each.flatMap((at) => one.extras.map((lead) => ({ ...lead, id: `${lead.id}-${at}` }))),
      ...one.case.leads.slice(0, 1).flatMap((lead) => copiesOf(lead, loose)),
    ],
    seats: each.flatMap((at) =>
      one.seats.map((seat) => ({
        ...seat,
        lead: `${seat.lead}-${at}`,
        connector: `${seat.connector}-${at}`,
      })),
    ),
  };
}

function copiesOf(lead: Lead, many: number): readonly Lead[] {
  return Array.from({ length: many }, (_none, at) => ({
    ...lead,
    id: `loose-${at}`,
    setAside: true as const,
  }));
}

function asCable(lead: Lead): Lead {
  const [plug] = lead.plugs;
  if (plug === undefined) return lead;
  return {
    ...lead,
    cable: { diameterMm: 3, slackMm: 10, start: 'front', runs: [{ to: plug.id, lengthMm: 700 }] },
  };
}

const TRAY: Tray = {
  widthMm: 420,
  heightMm: 450,
  points: [
    { id: 'front', kind: 'end', xMm: 400, yMm: 420 },
    { id: 'tie', kind: 'tie', xMm: 300, yMm: 420 },
  ],
  openings: [
    { id: 'grommet', xMm: 200, yMm: 380, widthMm: 80, heightMm: 40, edge: 'grommet' },
    { id: 'slot', xMm: 120, yMm: 380, widthMm: 80, heightMm: 40, edge: 'rolled' },
  ],
  bays: [],
  board: { xMm: 20, yMm: 20, rear: 'left' },
  paths: [
    { id: 'a', from: 'front', to: 'tie', lengthMm: 100, side: 'back' },
    { id: 'b', from: 'tie', to: 'grommet', lengthMm: 80, side: 'back' },
    { id: 'c', from: 'tie', to: 'slot', lengthMm: 130, side: 'back' },
  ],
};

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
