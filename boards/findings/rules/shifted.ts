import type { Seat } from '../../document/build';
import type { Side } from '../../document/connector';
import { atPlug, plugOnConnector } from '../about';
import type { CheckedPlug } from '../context';
import type { FindingOf } from '../finding';
import { actsAs, placementOf } from '../placement';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A plug of several contacts must not sit one column or one row beside its place.
 *
 * Good: a drive LED on pins 1 and 3.
 * Bad: the same plug on pins 3 and 5: one column too far.
 */
export const shifted: Rule<'shifted'> = {
  id: 'shifted',
  source: 'common practice, no source',
  explains: ['contact-off-pins', 'overhang', 'pair-split', 'ports-mixed', 'wrong-pins', 'wrong-function'],
  check: (context) =>
    context.plugs.flatMap((plug): readonly FindingOf<'shifted'>[] => {
      if (!isAstray(plug)) return [];
      const toward =
        nearest(plug.seat, context.properSeats(plug.ref)) ??
        nearest(plug.seat, context.properSeatsWhenBare(plug.ref));
      if (!toward) return [];
      return [
        {
          code: 'shifted',
          severity: 'fault',
          ...atPlug(plug),
          data: { ...plugOnConnector(plug), toward },
          remedies: remediesFor(context, plug.ref),
        },
      ];
    }),
};

/** Not right, and not wholly on another function's pins either: that is a choice, not a slip of the hand. */
function isAstray({ parts, joints }: CheckedPlug): boolean {
  if (joints.every(({ hole }) => hole === joints[0]?.hole)) return false;
  if (parts.some((part) => placementOf(part) === 'wrong' && actsAs(part) !== undefined)) return false;
  const off = joints.some(({ pin, terminal }) => pin === undefined && terminal?.spare !== true);
  return off || parts.some((part) => placementOf(part) !== 'right');
}

function nearest(now: Seat, right: readonly Seat[]): Side | undefined {
  return right.map((seat) => sideToward(now, seat)).find((side) => side !== undefined);
}

/** The side on which the right seat lies, when it is one cell away in the same turn. */
function sideToward(now: Seat, right: Seat): Side | undefined {
  if (now.connector !== right.connector || now.turn !== right.turn) return undefined;
  const down = right.at[0] - now.at[0];
  const along = right.at[1] - now.at[1];
  if (Math.abs(down) + Math.abs(along) !== 1) return undefined;
  if (down !== 0) return down < 0 ? 'top' : 'bottom';
  return along < 0 ? 'left' : 'right';
}
