import type { Mm } from '../../../../boards/base/units';
import { sidesOfPoints } from '../../../../boards/document/place-names';
import type { Tray } from '../../../../boards/document/tray';
import { type TrayPlace, trayPlaceOf } from '../../../../boards/document/tray-places';
import type { Point } from '../../../../boards/drawing/geometry';
import { draftedTray, isStation, rectOfPlace } from '../../../canvas/tray/drafted';
import { pathShapes } from '../../../canvas/tray/path-shapes';
import { doCommand } from '../../../do-command';
import { freshId } from '../../../files/file-name';
import type { TrayTool } from '../../../store/session';
import { SUPPLY_THERE_WORDS, trayPartName, trayPartWords } from '../../../words/tray-words';
import { newPlace, straightMm } from './new-place';
import { type Bench, buildOf, choose, chosenPart, trayOf } from './tray-bench';
import { drop } from './tray-moves';

/** A place as a tool makes it; says so where the tray can have no second one. */
export function makePlace(bench: Bench, tool: TrayTool, from: Point, to: Point | null): TrayPlace | null {
  const tray = trayOf(bench);
  if (tray === undefined) return null;
  if (tool === 'supply' && tray.supply !== undefined) {
    bench.session.getState().tell(SUPPLY_THERE_WORDS);
    return null;
  }
  return newPlace(tray, tool, from, to) ?? null;
}

/** Takes a tool for the pointer. */
export function takeTool(bench: Bench, tool: TrayTool): void {
  drop(bench);
  bench.session.getState().pickTool(tool);
}

/** Begins a new place for the keys: in the middle of the tray, or beside what is chosen. */
export function beginNew(bench: Bench, tool: TrayTool): void {
  drop(bench);
  const tray = trayOf(bench);
  if (tray === undefined) return;
  const { session } = bench;
  if (tool === 'choose' || tool === 'path') {
    session.getState().pickTool(tool);
    if (tool === 'path') beginPath(bench);
    return;
  }
  session.getState().pickTool('choose');
  const place = makePlace(bench, tool, besideChosen(bench, tray), null);
  if (place === null) return;
  session.getState().draft({ kind: 'new', place });
  const build = buildOf(bench);
  const would = draftedTray(tray, { kind: 'new', place });
  const said = build && trayPartWords(build, would, { kind: place.what, id: place.place.id });
  session.getState().tell(`New: ${said}. Arrow keys move it, Enter puts it there, Escape drops it.`);
}

/** How far a new place is set off from the one that is chosen. */
const BESIDE_MM: Mm = 20;

function besideChosen(bench: Bench, tray: Tray): Point {
  const part = chosenPart(bench);
  const chosen = part && trayPlaceOf(tray, part.id);
  const rect = chosen && rectOfPlace(chosen);
  if (rect === undefined) return { x: Math.round(tray.widthMm / 2), y: Math.round(tray.heightMm / 2) };
  return {
    x: Math.round(rect.x + rect.width / 2 + BESIDE_MM),
    y: Math.round(rect.y + rect.height / 2 + BESIDE_MM),
  };
}

/** Begins a path at the chosen place, where paths lead to it. */
export function beginPath(bench: Bench): void {
  const build = buildOf(bench);
  const tray = trayOf(bench);
  const part = chosenPart(bench);
  if (build === undefined || tray === undefined) return;
  const { draft, tell } = bench.session.getState();
  if (part === undefined || !isStation(part)) {
    tell('Choose the place where the path begins, then the one where it ends.');
    return;
  }
  draft({ kind: 'path', from: part.id });
  tell(`A path from ${trayPartName(build, tray, part)}. Choose the place where it ends; Enter draws it.`);
}

/**
 * Draws a path between two places and chooses it. Its length is at first that of the straight line; its side
 * is that of a point at its ends, otherwise the one that is looked at.
 */
export function join(bench: Bench, from: string, to: string): void {
  const tray = trayOf(bench);
  if (tray === undefined) return;
  const { traySide, draft } = bench.session.getState();
  draft(null);
  const sides = sidesOfPoints(tray);
  const side = sides.get(from) ?? sides.get(to) ?? traySide;
  const id = freshId(`${from}-to-${to}`, 'path', new Set(tray.paths.map((path) => path.id)));
  const path = { id, from, to, lengthMm: 1, side };
  const [shape] = pathShapes({ ...tray, paths: [path] }, { side: 'front', widthMm: tray.widthMm });
  if (shape === undefined) return;
  const measured = { ...path, lengthMm: straightMm(shape.line) };
  if (!doCommand(bench, { name: 'add-to-tray', args: { places: [], paths: [measured] } })) return;
  choose(bench, { kind: 'path', id });
  const build = buildOf(bench);
  const after = trayOf(bench);
  const words = build && after && trayPartWords(build, after, { kind: 'path', id });
  bench.session.getState().tell(`${words}: the straight way. Measure it, and type its length.`);
}

/** Enter: puts down what is on its way, or ends a path at the chosen place; false where nothing is on its way. */
export function put(bench: Bench): boolean {
  const { trayDraft } = bench.session.getState();
  if (trayDraft?.kind !== 'path') {
    drop(bench);
    return trayDraft !== null;
  }
  const part = chosenPart(bench);
  if (part && isStation(part) && part.id !== trayDraft.from) join(bench, trayDraft.from, part.id);
  return true;
}
