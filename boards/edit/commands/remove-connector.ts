import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { connectorOf, unitWith } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';

/** Removes a connector from the board or from its unit, and takes off the plugs that sit on it. */
export const removeConnector = defineCommand({
  name: 'remove-connector',
  args: z.strictObject({ connector: IdZ }),
  label: (build, { connector }) => `Remove ${connectorName(build, connector)}`,
  apply: (build, { connector: id }) => {
    const seats = build.seats.filter((seat) => seat.connector !== id);
    const others = <T extends { readonly id: string }>(all: readonly T[]) =>
      all.filter((each) => each.id !== id);
    const unit = unitWith(build, id);
    if (unit !== undefined)
      return changeUnit({ ...build, seats }, unit.id, () =>
        ok({ ...unit, connectors: others(unit.connectors) }),
      );
    if (connectorOf(build.board, id) === undefined)
      return refuse({ code: 'unknown-connector', connector: id });
    return ok({ ...build, board: { ...build.board, connectors: others(build.board.connectors) }, seats });
  },
});
