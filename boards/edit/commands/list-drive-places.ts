import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { DrivePlaceZ } from '../../document/rating';
import { defineCommand } from '../definition';
import { twiceIn } from '../tray';

/** Says which places for drives without cables the board has. Refuses an id that comes twice. */
export const listDrivePlaces = defineCommand({
  name: 'list-drive-places',
  args: z.strictObject({ places: z.array(DrivePlaceZ).max(LIMITS.drivePlaces) }),
  label: () => 'List the places for drives on the board',
  apply: (build, { places }) => {
    const twice = twiceIn(places.map(({ id }) => id));
    if (twice !== undefined) return refuse({ code: 'id-taken', kind: 'place', id: twice });
    const { drivePlaces: _, ...board } = build.board;
    return ok({ ...build, board: places.length === 0 ? board : { ...board, drivePlaces: places } });
  },
});
