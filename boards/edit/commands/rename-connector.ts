import { z } from 'zod';
import { ok } from '../../base/result';
import { connectorName } from '../../document/names';
import { IdZ, LineZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';

/** Says what is printed beside a connector and what it is. */
export const renameConnector = defineCommand({
  name: 'rename-connector',
  args: z.strictObject({ connector: IdZ, print: LineZ, title: LineZ }),
  label: (build, { connector }) => `Rename ${connectorName(build, connector)}`,
  apply: (build, { connector: id, print, title }) =>
    changeConnector(build, id, (connector) => ok({ ...connector, print, title })),
});
