import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import type { Pin } from '../../document/connector';
import type { Cell, Grid } from '../../document/grid';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { inCountingOrder } from '../pin-order';

const WAYS = ['left-right', 'top-bottom', 'half-turn'] as const;
export type MirrorWay = (typeof WAYS)[number];

/**
 * Moves what is known of every pin to the position opposite, for a manual that was drawn from below or
 * from the other side. The positions keep their labels. Sides are those of the unturned grid, seen from
 * above. Refuses when something known would come to lie where the grid has no position.
 */
export const mirrorPins = defineCommand({
  name: 'mirror-pins',
  args: z.strictObject({ connector: IdZ, way: z.enum(WAYS) }),
  label: (build, { connector, way }) =>
    `${way === 'half-turn' ? 'Turn' : 'Mirror'} the pins of ${connectorName(build, connector)}`,
  apply: (build, { connector: id, way }) =>
    changeConnector(build, id, (connector) => {
      const { cellOf, labelAt } = gridIndex(connector.grid);
      const lost: string[] = [];
      const moved = connector.pins.flatMap((pin): readonly Pin[] => {
        const cell = cellOf(pin.pin);
        const to = cell && labelAt(opposite(cell, connector.grid, way));
        if (to !== undefined) return [{ ...pin, pin: to }];
        lost.push(pin.pin);
        return [];
      });
      if (lost.length > 0) return refuse({ code: 'no-mirror', connector: id, pins: lost });
      return ok({ ...connector, pins: inCountingOrder(connector.grid, moved) });
    }),
});

function opposite([row, col]: Cell, { rows, cols }: Grid, way: MirrorWay): Cell {
  return [way === 'left-right' ? row : rows - 1 - row, way === 'top-bottom' ? col : cols - 1 - col];
}
