import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { FamilyZ, ShroudZ } from '../../document/connector';
import { GridZ } from '../../document/grid';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeConnector } from '../change';
import { defineCommand } from '../definition';
import { withFollowingSeats } from '../following-seats';
import { lostPins } from '../relabelled-pins';
import { labelIn, reshaped } from '../reshaped';
import { soundBuild } from '../sound';

const ShapeZ = z.strictObject({
  ...GridZ.pick({ rows: true, cols: true, pitchMm: true }).shape,
  /** null: the same as along a row. */
  rowPitchMm: GridZ.shape.pitchMm.nullable(),
  family: FamilyZ,
  shroud: ShroudZ.nullable(),
});

/**
 * Gives a connector another shape: rows, columns, pitch, family, walls. What is known stays with pins whose
 * labels survive, and plugs stay on them. Refuses, and says which, when pins of which something is known would
 * go or plugs would no longer fit; with "anyway" those go, in the same step.
 */
export const reshapeConnector = defineCommand({
  name: 'reshape-connector',
  args: z.strictObject({ connector: IdZ, shape: ShapeZ, anyway: z.literal(true).optional() }),
  label: (build, { connector }) => `Reshape ${connectorName(build, connector)}`,
  apply: (build, { connector: id, shape, anyway }) => {
    let pins: readonly string[] = [];
    const changed = changeConnector(build, id, (connector) => {
      const next = reshaped(connector, shape);
      pins = lostPins(connector, labelIn(next.grid));
      return ok(next);
    });
    if (!changed.ok) return changed;
    const { build: followed, lost } = withFollowingSeats(build, changed.value, id);
    if ((pins.length > 0 || lost.length > 0) && !anyway) {
      const plugs = lost.map(({ lead, plug }) => ({ lead, plug }));
      return refuse({ code: 'reshape-loses', connector: id, pins, plugs });
    }
    const seats = followed.seats.filter((seat) => !lost.includes(seat));
    return soundBuild({ ...followed, seats });
  },
});
