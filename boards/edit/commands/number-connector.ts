import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { type Grid, NumberingZ } from '../../document/grid';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { lostPins, onGrid } from '../relabelled-pins';
import { soundBuild } from '../sound';

/** What the knowledge of a pin goes with when positions are counted another way. */
const KEPT_WITH = ['labels', 'positions'] as const;

/**
 * Counts the positions of a connector another way. What is known stays with its label and so moves to
 * another position, or stays where it is and takes the label it finds there. Refuses when something known
 * would have no position any more; with "anyway" that goes.
 */
export const numberConnector = defineCommand({
  name: 'number-connector',
  args: z.strictObject({
    connector: IdZ,
    numbering: NumberingZ,
    keep: z.enum(KEPT_WITH).optional(),
    anyway: z.literal(true).optional(),
  }),
  label: (build, { connector }) => `Number ${connectorName(build, connector)}`,
  apply: (build, { connector: id, numbering, keep = 'labels', anyway }) => {
    const changed = changeConnector(build, id, (connector) => {
      const grid = { ...connector.grid, numbering };
      const labelFor = labelsIn(grid, connector.grid, keep);
      const lost = lostPins(connector, labelFor);
      if (lost.length > 0 && !anyway) return refuse({ code: 'pins-lost', connector: id, pins: lost });
      return ok(onGrid(connector, grid, labelFor));
    });
    return changed.ok ? soundBuild(changed.value) : changed;
  },
});

/** What a label becomes in the new grid; undefined where it has none for it. */
function labelsIn(next: Grid, old: Grid, keep: (typeof KEPT_WITH)[number]) {
  return (label: string): string | undefined => {
    const cell = gridIndex(keep === 'labels' ? next : old).cellOf(label);
    return cell && gridIndex(next).labelAt(cell);
  };
}
