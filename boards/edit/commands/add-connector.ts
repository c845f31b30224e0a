import { z } from 'zod';
import { refuse } from '../../base/result';
import { ConnectorZ } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { connectorOf } from '../../document/lookup';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/** Adds a connector to the board. Refuses an id that is taken and a connector that contradicts itself. */
export const addConnector = defineCommand({
  name: 'add-connector',
  args: z.strictObject({ connector: ConnectorZ }),
  label: (_, { connector }) => `Add ${connector.print || connector.title || connector.id}`,
  apply: (build, { connector }) => {
    const { id } = connector;
    const { connectors } = build.board;
    if (connectorOf(build.board, id) !== undefined)
      return refuse({ code: 'id-taken', kind: 'connector', id });
    if (connectors.length >= LIMITS.connectors)
      return refuse({ code: 'full', what: 'connectors', limit: LIMITS.connectors });
    return soundBuild({ ...build, board: { ...build.board, connectors: [...connectors, connector] } });
  },
});
