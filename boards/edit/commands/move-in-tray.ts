import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { IdZ } from '../../document/text';
import { TrayZ } from '../../document/tray';
import { type TrayPlace, trayPlaces, withPlaces } from '../../document/tray-places';
import { defineCommand } from '../definition';
import type { Refusal } from '../refusal';
import { changeTray, twiceIn } from '../tray';
import { manyWords, trayPlaceName } from '../tray-words';

const { xMm, yMm } = TrayZ.shape.points.element.shape;
const MoveZ = z.strictObject({ place: IdZ, xMm, yMm });

/**
 * Moves any number of places of the tray in one step. Paths go along, and keep the length that was measured.
 * Refuses a fan, which has a wall and no place on the tray.
 */
export const moveInTray = defineCommand({
  name: 'move-in-tray',
  args: z.strictObject({ to: z.array(MoveZ).min(1).max(LIMITS.trayPoints) }),
  label: ({ case: { tray } }, { to }) =>
    to.length === 1 && to[0]
      ? `Move ${trayPlaceName(tray, to[0].place)}`
      : `Move ${manyWords(to.length, 'place', 'places')}`,
  apply: (build, { to }) =>
    changeTray(build, (tray) => {
      const twice = twiceIn(to.map(({ place }) => place));
      if (twice !== undefined) return refuse({ code: 'named-twice', kind: 'place', id: twice });
      const moves = new Map(to.map(({ place, ...at }) => [place, at]));
      const places: TrayPlace[] = [];
      for (const each of trayPlaces(tray)) {
        const move = moves.get(each.place.id);
        moves.delete(each.place.id);
        const moved = move === undefined ? ok(each) : movedTo(each, move);
        if (!moved.ok) return moved;
        places.push(moved.value);
      }
      const [stranger] = moves.keys();
      if (stranger !== undefined) return refuse({ code: 'unknown-place', place: stranger });
      return ok(withPlaces(tray, places));
    }),
});

type At = Omit<z.output<typeof MoveZ>, 'place'>;

function movedTo(each: TrayPlace, at: At): Result<TrayPlace, Refusal> {
  switch (each.what) {
    case 'fan':
      return refuse({ code: 'in-a-wall', place: each.place.id });
    case 'point':
      return ok({ what: 'point', place: { ...each.place, ...at } });
    case 'opening':
      return ok({ what: 'opening', place: { ...each.place, ...at } });
    case 'bay':
      return ok({ what: 'bay', place: { ...each.place, ...at } });
    case 'standoff':
      return ok({ what: 'standoff', place: { ...each.place, ...at } });
    case 'supply':
      return ok({ what: 'supply', place: { ...each.place, ...at } });
  }
}
