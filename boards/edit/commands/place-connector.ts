import { z } from 'zod';
import { ok } from '../../base/result';
import { PlaceZ } from '../../document/connector';
import { anyConnectorOf } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';

/** Says where a connector stands on the board or the unit, and how it is turned. */
export const placeConnector = defineCommand({
  name: 'place-connector',
  args: z.strictObject({ connector: IdZ, place: PlaceZ }),
  label: (build, { connector, place }) => {
    const turned = anyConnectorOf(build, connector)?.place.turn !== place.turn;
    return `${turned ? 'Turn' : 'Place'} ${connectorName(build, connector)}`;
  },
  apply: (build, { connector: id, place }) =>
    changeConnector(build, id, (connector) => ok({ ...connector, place })),
});
