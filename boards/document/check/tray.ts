import { nearestOf } from '../problem/nearest';
import type { ProblemList } from '../problem/problem-list';
import { shownText } from '../problem/shown-value';
import type { Tray, TraySide } from '../tray';
import { Once } from './once';

/**
 * Places have ids of their own over all their kinds, and paths run between two that are there.
 * Only an opening has paths on both sides of the metal. Parts of a tray that nothing joins are no mistake:
 * a sheet is drawn piece by piece, and whoever looks for a route is told.
 */
export function checkTray(tray: Tray | undefined, path: string, list: ProblemList): void {
  if (tray === undefined) return;
  const { points, openings, bays, supply, standoffs = [], fans = [] } = tray;
  const places = new Once('an id', list);
  for (const [key, items] of Object.entries({ points, openings, bays, standoffs, fans }))
    items.forEach(({ id }, at) => {
      places.enter(id, `${path}.${key}[${at}].id`);
    });
  if (supply !== undefined) places.enter(supply.id, `${path}.supply.id`);
  standoffs.forEach(({ fixed, seen }, at) => {
    if (fixed && seen === 'empty')
      list.add(() => ({
        path: `${path}.standoffs[${at}].seen`,
        expected: 'a standoff in it, since it is “fixed”',
        found: shownText('empty'),
      }));
  });
  const joined = [...points, ...openings, ...bays, ...(supply === undefined ? [] : [supply])];
  checkPaths(tray, new Set(joined.map(({ id }) => id)), path, list);
}

function checkPaths(
  { points, paths }: Tray,
  places: ReadonlySet<string>,
  trayPath: string,
  list: ProblemList,
): void {
  const ids = new Once('an id', list);
  const isPoint = new Set(points.map(({ id }) => id));
  const sideOf = new Map<string, { readonly side: TraySide; readonly path: string }>();
  paths.forEach(({ id, from, to, side }, at) => {
    if (list.full) return;
    const here = `${trayPath}.paths[${at}]`;
    ids.enter(id, `${here}.id`);
    checkEnds({ from, to }, places, 'a point, an opening, a bay or the supply of the tray', here, list);
    for (const end of [from, to]) {
      if (!isPoint.has(end)) continue;
      const first = sideOf.get(end);
      if (first === undefined) sideOf.set(end, { side, path: here });
      else if (first.side !== side)
        list.add(() => ({
          path: `${here}.side`,
          expected: `“${first.side}” as at ${first.path}, which also meets ${shownText(end)} (only an opening has paths on both sides)`,
          found: shownText(side),
        }));
    }
  });
}

/** Both ends are known, and not the same. */
function checkEnds(
  ends: { readonly from: string; readonly to: string },
  known: ReadonlySet<string>,
  what: string,
  path: string,
  list: ProblemList,
): void {
  for (const [key, end] of Object.entries(ends)) checkKnown(end, known, what, `${path}.${key}`, list);
  if (ends.from === ends.to)
    list.add(() => ({
      path: `${path}.to`,
      expected: 'another place than “from”',
      found: shownText(ends.to),
    }));
}

function checkKnown(
  id: string,
  known: ReadonlySet<string>,
  what: string,
  path: string,
  list: ProblemList,
): void {
  if (known.has(id)) return;
  list.add(() => {
    const nearest = nearestOf([...known], id);
    const meant = nearest === undefined ? '' : ` (perhaps ${shownText(nearest)} is meant)`;
    return { path, expected: `${what} that is there${meant}`, found: shownText(id) };
  });
}
