import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { PinZ } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { inCountingOrder } from '../pin-order';

/**
 * Writes what is known of many pins of a connector exactly, in place of what was known, in one step. A pin
 * of which nothing is said any more leaves the sheet's list. Refuses labels that the connector has not, and
 * labels named twice.
 */
export const changePins = defineCommand({
  name: 'change-pins',
  args: z.strictObject({
    connector: IdZ,
    pins: z
      .array(PinZ)
      .min(1)
      .max(LIMITS.gridSide * LIMITS.gridSide),
  }),
  label: (build, { connector, pins: [first, ...others] }) =>
    `Change ${others.length === 0 ? `pin ${first?.pin}` : `${others.length + 1} pins`} of ${connectorName(build, connector)}`,
  apply: (build, { connector: id, pins }) =>
    changeConnector(build, id, (connector) => {
      const { cellOf } = gridIndex(connector.grid);
      const unknown = pins.map(({ pin }) => pin).filter((label) => cellOf(label) === undefined);
      if (unknown.length > 0) return refuse({ code: 'unknown-pins', connector: id, pins: unknown });
      const changed = new Set<string>();
      const twice = new Set<string>();
      for (const { pin } of pins) (changed.has(pin) ? twice : changed).add(pin);
      if (twice.size > 0) return refuse({ code: 'pins-twice', connector: id, pins: [...twice] });
      const others = connector.pins.filter(({ pin }) => !changed.has(pin));
      const said = pins.filter((pin) => Object.keys(pin).length > 1);
      return ok({ ...connector, pins: inCountingOrder(connector.grid, [...others, ...said]) });
    }),
});
