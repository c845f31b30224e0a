import { TURNS } from '../base/units';
import type { BoardSheet } from '../document/board-sheet';
import type { Seat } from '../document/build';
import type { Lead, Plug } from '../document/lead';
import { gridIndex } from '../document/numbering';
import { boardRefusals } from '../fit/board-refusals';
import { firstCell } from '../fit/geometry';
import { type LaidPlug, layDown } from '../fit/laid-plug';
import { standingPinAt } from '../fit/landing';
import { couldSuit } from '../fit/match';
import { wireEndsAt } from '../fit/wire-ends';
import { partKindOf } from '../signals/part-kinds';

/**
 * The seats of a plug in which the board lets it sit and at least one of its wires lies on a pin it could
 * be made for. In any other seat it serves nothing, and leaving it off is as good and less dangerous: no
 * optimum needs them.
 */
export function seatsWorth(board: BoardSheet, lead: Lead, plug: Plug): readonly LaidPlug[] {
  const needs = gridIndex(plug.grid).positions.flatMap(({ label, cell }) =>
    wireEndsAt(lead, plug, label).flatMap(({ part, terminal }) =>
      part && terminal && terminal.spare !== true ? [{ cell, part, terminal }] : [],
    ),
  );
  // However a plug with one hole is turned, it is the same.
  const turns = plug.grid.rows * plug.grid.cols === 1 ? ([0] as const) : TURNS;
  const found = new Map<string, Seat>();
  for (const connector of board.connectors) {
    for (const { cell } of gridIndex(connector.grid).positions) {
      const pin = standingPinAt(connector, cell);
      if (pin === undefined) continue;
      for (const need of needs) {
        if (!couldSuit(partKindOf(need.part.kind), { terminal: need.terminal, pin })) continue;
        for (const turn of turns) {
          const at = firstCell(turn, need.cell, cell);
          found.set(`${connector.id} ${turn} ${at.join()}`, {
            lead: lead.id,
            plug: plug.id,
            connector: connector.id,
            at,
            turn,
          });
        }
      }
    }
  }
  const connectors = new Map(board.connectors.map((connector) => [connector.id, connector]));
  return [...found.values()].flatMap((seat) => {
    const connector = connectors.get(seat.connector);
    if (connector === undefined) return [];
    const laid = layDown({ seat, lead, plug, connector });
    return boardRefusals(board, laid).length === 0 ? [laid] : [];
  });
}
