import { ok, refuse } from '../../base/result';
import { type TrayPlace, TrayPlaceZ, trayPlaceOf, trayPlaces, withPlaces } from '../../document/tray-places';
import { differingFields } from '../compare/differing-fields';
import { defineCommand } from '../definition';
import { changeTray } from '../tray';
import { trayPlaceName } from '../tray-words';

/**
 * Writes what is known of one place of the tray, in place of what was known. Refuses one that is not there,
 * and to make something else of it.
 */
export const changeTrayPlace = defineCommand({
  name: 'change-tray-place',
  args: TrayPlaceZ,
  label: ({ case: { tray } }, to) => {
    const before = tray && trayPlaceOf(tray, to.place.id);
    const what = before === undefined ? 'Change' : whatChanges(before, to);
    return `${what} ${trayPlaceName(tray, to.place.id)}`;
  },
  apply: (build, to) =>
    changeTray(build, (tray) => {
      const { id } = to.place;
      const before = trayPlaceOf(tray, id);
      if (before === undefined) return refuse({ code: 'unknown-place', place: id });
      if (before.what !== to.what) return refuse({ code: 'other-kind', place: id });
      return ok(
        withPlaces(
          tray,
          trayPlaces(tray).map((each) => (each === before ? to : each)),
        ),
      );
    }),
});

function whatChanges(before: TrayPlace, to: TrayPlace): string {
  const onlyIn = (...fields: readonly string[]) =>
    differingFields(before.place, to.place, fields).length === 0;
  if (onlyIn('name')) return 'Rename';
  return onlyIn('xMm', 'yMm') ? 'Move' : 'Change';
}
