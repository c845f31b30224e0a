import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { connectorOf } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Removes a connector from the board, and takes off the plugs that sit on it. */
export const removeConnector = defineCommand({
  name: 'remove-connector',
  args: z.strictObject({ connector: IdZ }),
  label: (build, { connector }) => `Remove ${connectorName(build, connector)}`,
  apply: (build, { connector: id }) => {
    if (connectorOf(build.board, id) === undefined)
      return refuse({ code: 'unknown-connector', connector: id });
    const connectors = build.board.connectors.filter((connector) => connector.id !== id);
    return ok({
      ...build,
      board: { ...build.board, connectors },
      seats: build.seats.filter((seat) => seat.connector !== id),
    });
  },
});
