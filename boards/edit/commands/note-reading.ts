import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { connectorName } from '../../document/names';
import { PinReadingZ } from '../../document/pin-reading';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { ReadingIndexZ } from '../reading-index';
import { soundBuild } from '../sound';

/**
 * Notes what was measured on a connector: after the others, or in place of the reading counted from 0 as
 * "instead". The same may be noted twice: to measure again tells something too.
 */
export const noteReading = defineCommand({
  name: 'note-reading',
  args: z.strictObject({ connector: IdZ, reading: PinReadingZ, instead: ReadingIndexZ.optional() }),
  label: (build, { connector }) => `Note a reading on ${connectorName(build, connector)}`,
  apply: (build, { connector: id, reading, instead }) => {
    const changed = changeConnector(build, id, (connector) => {
      const { readings = [] } = connector;
      if (instead !== undefined) {
        if (readings[instead] === undefined)
          return refuse({ code: 'unknown-reading', connector: id, reading: instead });
        return ok({ ...connector, readings: readings.with(instead, reading) });
      }
      if (readings.length >= LIMITS.readingsPerConnector)
        return refuse({ code: 'full', what: 'readings', limit: LIMITS.readingsPerConnector });
      return ok({ ...connector, readings: [...readings, reading] });
    });
    return changed.ok ? soundBuild(changed.value) : changed;
  },
});
