import type { Mm } from '../../../boards/base/units';
import type { Lead } from '../../../boards/document/lead';
import { type PlugRef, samePlug } from '../../../boards/document/lookup';
import type { Tray } from '../../../boards/document/tray';
import type { Line, Rect } from '../../../boards/drawing/geometry';
import { bundleDiameter } from '../../../boards/routing/fill/bundle';
import type { AsLaid } from '../../../boards/routing/laid/as-laid';
import { type PathShape, pathShapes } from './path-shapes';
import type { Look } from './tray-look';

/** One or more cables along one path of the tray, or the last stretch of one to a connector of the board. */
export interface StretchShape {
  readonly path: string;
  readonly line: Line;
  readonly box: Rect;
  /** On the side looked at. */
  readonly near: boolean;
  /** Of the one cable, or of the bundle that they make when they are tied by hand. */
  readonly widthMm: Mm;
  /** The runs that lie there, each by the plug at its far end. */
  readonly runs: readonly PlugRef[];
}

/**
 * The cables that have a way, as they lie. Where several share a path they are one bundle; of cables that are
 * not shown nothing is drawn, and a bundle is as thick as what is shown of it.
 *
 * @param tray as it is drawn now, which may be on its way to another
 */
export function stretchShapes(
  { laying, runs }: AsLaid,
  tray: Tray,
  look: Look,
  isShown: (lead: Lead) => boolean,
): readonly StretchShape[] {
  const along = new Map<string, { readonly ref: PlugRef; readonly diameterMm: Mm }[]>();
  for (const { lead, run, state } of runs) {
    if (state.kind !== 'laid' || lead.cable === undefined || !isShown(lead)) continue;
    const laid = { ref: { lead: lead.id, plug: run.to }, diameterMm: lead.cable.diameterMm };
    for (const path of state.route.paths) along.set(path, [...(along.get(path) ?? []), laid]);
  }
  return pathsOfLaying(laying, tray, look).flatMap(({ id, line, box, near }): readonly StretchShape[] => {
    const together = along.get(id);
    if (together === undefined) return [];
    const { usualMm } = bundleDiameter(together.map(({ diameterMm }) => diameterMm));
    return [{ path: id, line, box, near, widthMm: usualMm, runs: together.map(({ ref }) => ref) }];
  });
}

/** Every path that a cable may lie along, also the last stretches to connectors of the board. */
export function pathsOfLaying(laying: Tray, tray: Tray, look: Look): readonly PathShape[] {
  return pathShapes(asDrawn(laying, tray), look);
}

/** The connectors that cables end at, which come after the bays, beside the places as they are drawn now. */
function asDrawn(laying: Tray, tray: Tray): Tray {
  const known = new Set(tray.bays.map(({ id }) => id));
  const sockets = laying.bays.filter(({ id }) => !known.has(id));
  const places = new Set([...tray.points, ...tray.openings, ...tray.bays, ...sockets].map(({ id }) => id));
  if (tray.supply !== undefined) places.add(tray.supply.id);
  return {
    ...tray,
    bays: [...tray.bays, ...sockets],
    paths: laying.paths.filter(({ from, to }) => places.has(from) && places.has(to)),
  };
}

/** Whether a run lies along a stretch. */
export function liesAlong({ runs }: StretchShape, ref: PlugRef): boolean {
  return runs.some((each) => samePlug(each, ref));
}

/**
 * Which of the cables of a bundle a press chooses: the first, and with each further press the next one;
 * null after the last.
 */
export function nextOfBundle(runs: readonly PlugRef[], chosen: PlugRef | undefined): PlugRef | null {
  const at = chosen === undefined ? -1 : runs.findIndex((each) => samePlug(each, chosen));
  return runs[at + 1] ?? null;
}
