import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { pinOf } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { IdZ, LabelZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { exchanged } from '../exchanged-source';
import { inCountingOrder } from '../pin-order';

/**
 * Takes a pin for what another source says of it; what it was taken for until now is kept beside it, in
 * the same place of the list. Refuses an alternative that is not there.
 */
export const believeSource = defineCommand({
  name: 'believe-source',
  args: z.strictObject({
    connector: IdZ,
    pin: LabelZ,
    /** Its place among the pin's alternatives, from 0. */
    alternative: z
      .int()
      .min(0)
      .max(LIMITS.alternativesPerPin - 1),
  }),
  label: (build, { connector, pin }) =>
    `Believe another source for pin ${pin} of ${connectorName(build, connector)}`,
  apply: (build, { connector: id, pin: label, alternative: at }) =>
    changeConnector(build, id, (connector) => {
      const pin = pinOf(connector, label);
      const alternative = pin.alternatives?.[at];
      if (alternative === undefined) return refuse({ code: 'no-alternative', connector: id, pin: label });
      const others = connector.pins.filter((other) => other.pin !== label);
      const pins = [...others, exchanged(pin, alternative)];
      return ok({ ...connector, pins: inCountingOrder(connector.grid, pins) });
    }),
});
