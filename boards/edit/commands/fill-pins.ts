import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { PinZ } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { pinOf } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { tooFull } from '../compare/taking';
import { defineCommand } from '../definition';
import { mergePin } from '../merge-pin';
import { inCountingOrder } from '../pin-order';

/**
 * Writes what one source says of many pins of a connector, in one step. What other sources said stays: as
 * it is where they agree, as an alternative where they do not. Refuses labels that the connector has not,
 * labels named twice, and a pin of which too much is said already.
 */
export const fillPins = defineCommand({
  name: 'fill-pins',
  args: z.strictObject({
    connector: IdZ,
    pins: z
      .array(PinZ)
      .min(1)
      .max(LIMITS.gridSide * LIMITS.gridSide),
  }),
  label: (build, { connector, pins: { length } }) =>
    `Fill ${length === 1 ? '1 pin' : `${length} pins`} of ${connectorName(build, connector)}`,
  apply: (build, { connector: id, pins }) =>
    changeConnector(build, id, (connector) => {
      const labels = pins.map(({ pin }) => pin);
      const { cellOf } = gridIndex(connector.grid);
      const unknown = labels.filter((label) => cellOf(label) === undefined);
      if (unknown.length > 0) return refuse({ code: 'unknown-pins', connector: id, pins: unknown });
      const twice = labels.filter((label, at) => labels.indexOf(label) !== at);
      if (twice.length > 0) return refuse({ code: 'pins-twice', connector: id, pins: [...new Set(twice)] });
      const merged = pins.map((pin) => mergePin(pinOf(connector, pin.pin), pin));
      const full = tooFull(merged);
      if (full !== null) return refuse(full);
      const filled = new Set(labels);
      const others = connector.pins.filter(({ pin }) => !filled.has(pin));
      return ok({ ...connector, pins: inCountingOrder(connector.grid, [...others, ...merged]) });
    }),
});
