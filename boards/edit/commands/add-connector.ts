import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { ConnectorZ } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { anyConnectorOf } from '../../document/lookup';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/**
 * Adds a connector to the board, or to a unit where one is named. Refuses an id that is taken and a connector
 * that contradicts itself.
 */
export const addConnector = defineCommand({
  name: 'add-connector',
  args: z.strictObject({ connector: ConnectorZ, unit: IdZ.optional() }),
  label: (_, { connector }) => `Add ${connector.print || connector.title || connector.id}`,
  apply: (build, { connector, unit }) => {
    const { id } = connector;
    const { connectors } = build.board;
    if (anyConnectorOf(build, id) !== undefined) return refuse({ code: 'id-taken', kind: 'connector', id });
    if (unit !== undefined) {
      const changed = changeUnit(build, unit, (had) =>
        had.connectors.length >= LIMITS.connectorsPerUnit
          ? refuse({ code: 'full', what: 'sockets', limit: LIMITS.connectorsPerUnit })
          : ok({ ...had, connectors: [...had.connectors, connector] }),
      );
      return changed.ok ? soundBuild(changed.value) : changed;
    }
    if (connectors.length >= LIMITS.connectors)
      return refuse({ code: 'full', what: 'connectors', limit: LIMITS.connectors });
    return soundBuild({ ...build, board: { ...build.board, connectors: [...connectors, connector] } });
  },
});
