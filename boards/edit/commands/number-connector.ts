import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { NumberingZ } from '../../document/grid';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { pinsOfReading } from '../../document/pin-reading';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { inCountingOrder } from '../pin-order';
import { soundBuild } from '../sound';

/**
 * Counts the positions of a connector another way. What is known stays with its label and so moves to
 * another position; refuses when a label that something is known about would be no more.
 */
export const numberConnector = defineCommand({
  name: 'number-connector',
  args: z.strictObject({ connector: IdZ, numbering: NumberingZ }),
  label: (build, { connector }) => `Number ${connectorName(build, connector)}`,
  apply: (build, { connector: id, numbering }) => {
    const changed = changeConnector(build, id, (connector) => {
      const grid = { ...connector.grid, numbering };
      const known = [
        ...connector.pins.map(({ pin }) => pin),
        ...(connector.readings ?? []).flatMap(pinsOfReading),
      ];
      const lost = [...new Set(known)].filter((pin) => gridIndex(grid).cellOf(pin) === undefined);
      if (lost.length > 0) return refuse({ code: 'pins-lost', connector: id, pins: lost });
      return ok({ ...connector, grid, pins: inCountingOrder(grid, connector.pins) });
    });
    return changed.ok ? soundBuild(changed.value) : changed;
  },
});
