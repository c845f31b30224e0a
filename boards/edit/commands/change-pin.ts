import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { PinZ } from '../../document/connector';
import { connectorName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { inCountingOrder } from '../pin-order';

/** Writes what is known of one pin, in place of what was known. Refuses a pin that the connector has not. */
export const changePin = defineCommand({
  name: 'change-pin',
  args: z.strictObject({ connector: IdZ, pin: PinZ }),
  label: (build, { connector, pin }) => `Change pin ${pin.pin} of ${connectorName(build, connector)}`,
  apply: (build, { connector: id, pin }) =>
    changeConnector(build, id, (connector) => {
      if (gridIndex(connector.grid).cellOf(pin.pin) === undefined)
        return refuse({ code: 'unknown-pin', connector: id, pin: pin.pin });
      const others = connector.pins.filter((other) => other.pin !== pin.pin);
      return ok({ ...connector, pins: inCountingOrder(connector.grid, [...others, pin]) });
    }),
});
