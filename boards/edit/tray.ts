import { type Result, refuse } from '../base/result';
import type { Build } from '../document/build';
import { LIMITS } from '../document/limits';
import type { Tray, TraySide } from '../document/tray';
import { hasPaths, type PlaceKind, type TrayPath, trayPlaces } from '../document/tray-places';
import type { Countable, Refusal } from './refusal';
import { soundBuild } from './sound';

/**
 * A build with the tray of its case changed. Refuses where there is no tray yet, where the changed one holds
 * too much, and where it contradicts itself.
 */
export function changeTray(
  build: Build,
  change: (tray: Tray) => Result<Tray, Refusal>,
): Result<Build, Refusal> {
  const { tray } = build.case;
  if (tray === undefined) return refuse({ code: 'no-tray' });
  const next = change(tray);
  if (!next.ok) return next;
  const full = fullOf(next.value);
  return full === undefined ? soundBuild(withTray(build, next.value)) : refuse(full);
}

export function withTray(build: Build, tray: Tray): Build {
  return { ...build, case: { ...build.case, tray } };
}

const HOLDS: readonly (readonly [PlaceKind, Countable, number])[] = [
  ['point', 'tray points', LIMITS.trayPoints],
  ['opening', 'openings', LIMITS.trayOpenings],
  ['bay', 'bays', LIMITS.trayBays],
  ['standoff', 'standoff places', LIMITS.trayStandoffs],
  ['fan', 'fan places', LIMITS.trayFans],
];

function fullOf(tray: Tray): Refusal | undefined {
  const places = trayPlaces(tray);
  for (const [kind, what, limit] of HOLDS)
    if (places.filter((each) => each.what === kind).length > limit) return { code: 'full', what, limit };
  if (tray.paths.length <= LIMITS.trayPaths) return undefined;
  return { code: 'full', what: 'paths', limit: LIMITS.trayPaths };
}

/**
 * Why one of these paths, which are in the tray already, cannot be there: an end that is no station of a
 * cable, both ends the same, or a point that paths on the other side lead to. Undefined when all can.
 */
export function pathRefusal(tray: Tray, paths: readonly TrayPath[]): Refusal | undefined {
  const kinds = new Map(trayPlaces(tray).map(({ what, place }) => [place.id, what]));
  const sides = sidesAt(tray);
  for (const { from, to, side } of paths) {
    for (const end of [from, to]) {
      const what = kinds.get(end);
      if (what === undefined) return { code: 'unknown-place', place: end };
      if (!hasPaths(what)) return { code: 'no-path-end', place: end };
      const other = [...(sides.get(end) ?? [])].find((each) => each !== side);
      if (what === 'point' && other !== undefined) return { code: 'path-sides', place: end, side: other };
    }
    if (from === to) return { code: 'path-loop', place: from };
  }
  return undefined;
}

/** On which sides paths lead to each place. */
function sidesAt({ paths }: Tray): ReadonlyMap<string, ReadonlySet<TraySide>> {
  const sides = new Map<string, Set<TraySide>>();
  for (const { from, to, side } of paths)
    for (const end of [from, to]) sides.set(end, (sides.get(end) ?? new Set()).add(side));
  return sides;
}

/** The first that is there a second time. */
export function twiceIn(ids: readonly string[]): string | undefined {
  const seen = new Set<string>();
  for (const id of ids) {
    if (seen.has(id)) return id;
    seen.add(id);
  }
  return undefined;
}
