import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { ReadingIndexZ } from '../reading-index';

/** Forgets one reading of a connector, counted from 0. Refuses one that is not there. */
export const dropReading = defineCommand({
  name: 'drop-reading',
  args: z.strictObject({ connector: IdZ, reading: ReadingIndexZ }),
  label: (build, { connector }) => `Drop a reading on ${connectorName(build, connector)}`,
  apply: (build, { connector: id, reading: index }) =>
    changeConnector(build, id, (connector) => {
      const { readings = [], ...rest } = connector;
      if (readings[index] === undefined)
        return refuse({ code: 'unknown-reading', connector: id, reading: index });
      const kept = readings.filter((_, at) => at !== index);
      return ok(kept.length === 0 ? rest : { ...rest, readings: kept });
    }),
});
