import { addTurns, type Turn } from '../base/units';
import type { Seat } from '../document/build';
import { footprintOf } from '../document/footprint';
import type { Plug } from '../document/lead';

/**
 * Where a seated plug may come to lie when it is turned in place, best first: about its own middle,
 * to either side where the middle falls between cells, then with one corner held. A half turn covers
 * the same cells, so all of these are one.
 */
export function turnedSeats(seat: Seat, plug: Plug, by: Exclude<Turn, 0>): readonly Seat[] {
  const turn = addTurns(seat.turn, by);
  const old = footprintOf(plug.grid, seat.turn);
  const next = footprintOf(plug.grid, turn);
  const spareRows = old.rows - next.rows;
  const spareCols = old.cols - next.cols;
  const shifts = [Math.floor, Math.ceil].flatMap((half) =>
    [Math.floor, Math.ceil].map((other) => [half(spareRows / 2), other(spareCols / 2)] as const),
  );
  for (const rows of [0, spareRows]) for (const cols of [0, spareCols]) shifts.push([rows, cols]);
  const seats = shifts.map(
    ([rows, cols]): Seat => ({
      ...seat,
      turn,
      at: [seat.at[0] + old.top + rows - next.top, seat.at[1] + old.left + cols - next.left],
    }),
  );
  const key = ({ at }: Seat) => at.join(' ');
  return [...new Map(seats.map((turned) => [key(turned), turned])).values()];
}
