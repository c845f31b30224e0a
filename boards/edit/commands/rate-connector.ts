import { z } from 'zod';
import { ok } from '../../base/result';
import { connectorName } from '../../document/names';
import { RatingZ } from '../../document/rating';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';

/** Says what a connector may be asked for; null for not known. */
export const rateConnector = defineCommand({
  name: 'rate-connector',
  args: z.strictObject({ connector: IdZ, rating: RatingZ.nullable() }),
  label: (build, { connector }) => `Rate ${connectorName(build, connector)}`,
  apply: (build, { connector: id, rating }) =>
    changeConnector(build, id, ({ rating: _, ...rest }) => ok(rating === null ? rest : { ...rest, rating })),
});
