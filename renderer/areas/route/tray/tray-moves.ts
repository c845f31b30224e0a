import type { Mm } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';
import { SIDES } from '../../../../boards/document/connector';
import { placesOf, sidesOfPoints } from '../../../../boards/document/place-names';
import type { Tray } from '../../../../boards/document/tray';
import { hasPaths, type TrayPlace, trayPathOf, trayPlaceOf } from '../../../../boards/document/tray-places';
import type { Point } from '../../../../boards/drawing/geometry';
import {
  draftedTray,
  nearestWall,
  placeAt,
  placeWith,
  rectOfPlace,
  within,
} from '../../../canvas/tray/drafted';
import { pathShapes } from '../../../canvas/tray/path-shapes';
import { doCommand } from '../../../do-command';
import { freshId } from '../../../files/file-name';
import type { TrayDraft, TrayPart, TrayTool } from '../../../store/session';
import { SUPPLY_THERE_WORDS, trayPartName, trayPartWords } from '../../../words/tray-words';
import type { Workbench } from '../../../workbench';
import { newPlace, straightMm } from './new-place';

export type Bench = Pick<Workbench, 'editor' | 'session'>;

function buildOf({ editor }: Bench): Build | undefined {
  return editor.getState().open?.history.present;
}

function trayOf(bench: Bench): Tray | undefined {
  return buildOf(bench)?.case.tray;
}

/** The part of the tray that is chosen, while it is there. */
export function chosenPart(bench: Bench): TrayPart | undefined {
  const { selection } = bench.session.getState();
  const tray = trayOf(bench);
  if (tray === undefined || selection.kind !== 'on-tray') return undefined;
  return isThere(tray, selection.part) ? selection.part : undefined;
}

function isThere(tray: Tray, { kind, id }: TrayPart): boolean {
  if (kind === 'board') return tray.board !== undefined;
  return kind === 'path' ? trayPathOf(tray, id) !== undefined : trayPlaceOf(tray, id) !== undefined;
}

export function choose({ session }: Bench, part: TrayPart): void {
  session.getState().select({ kind: 'on-tray', part });
}

/** Puts down what is on its way. One command, or none where it is as before. */
export function drop(bench: Bench): void {
  const { trayDraft, draft } = bench.session.getState();
  // A path has no other end yet.
  if (trayDraft === null || trayDraft.kind === 'path') return;
  draft(null);
  switch (trayDraft.kind) {
    case 'place':
      write(bench, trayDraft.place);
      break;
    case 'new':
      add(bench, trayDraft.place);
      break;
    case 'board':
      doCommand(bench, { name: 'lay-board', args: { board: trayDraft.board } });
  }
}

/** Writes what is known of a place, and says it with where it is now. */
export function write(bench: Bench, place: TrayPlace): boolean {
  const before = trayOf(bench);
  const was = before && trayPlaceOf(before, place.place.id);
  if (!doCommand(bench, { name: 'change-tray-place', args: place })) return false;
  if (was !== undefined) tellPlace(bench, place);
  return true;
}

function add(bench: Bench, place: TrayPlace): void {
  if (!doCommand(bench, { name: 'add-to-tray', args: { places: [place], paths: [] } })) return;
  choose(bench, { kind: place.what, id: place.place.id });
  tellPlace(bench, place);
}

function tellPlace(bench: Bench, { what, place }: TrayPlace): void {
  const build = buildOf(bench);
  const tray = trayOf(bench);
  const words = build && tray && trayPartWords(build, tray, { kind: what, id: place.id });
  if (words) bench.session.getState().tell(`${words}.`);
}

/** Moves what is chosen or about to be added, as a preview; `drop` makes one step of all of it. */
export function nudge(bench: Bench, dx: Mm, dy: Mm): void {
  const going = onItsWay(bench);
  const tray = trayOf(bench);
  if (going === undefined || tray === undefined) return;
  const { draft } = bench.session.getState();
  if (going.kind === 'board') {
    const { xMm, yMm } = going.board;
    draft({ kind: 'board', board: { ...going.board, xMm: within(xMm + dx), yMm: within(yMm + dy) } });
    return;
  }
  const { kind, place } = going;
  const rect = rectOfPlace(place);
  if (rect !== undefined) draft({ kind, place: placeAt(place, { x: rect.x + dx, y: rect.y + dy }) });
  else if (place.what === 'fan') {
    // To the wall that lies in the direction of the key.
    const far = {
      x: tray.widthMm / 2 + Math.sign(dx) * 10_000,
      y: tray.heightMm / 2 + Math.sign(dy) * 10_000,
    };
    draft({ kind, place: { what: 'fan', place: { ...place.place, wall: nearestWall(tray, far) } } });
  }
}

/** Makes the opening, the bay or the supply that is chosen or about to be added wider or higher, as a preview. */
export function grow(bench: Bench, byWidth: Mm, byHeight: Mm): void {
  const going = onItsWay(bench);
  if (going === undefined || going.kind === 'board') return;
  const rect = rectOfPlace(going.place);
  if (rect === undefined || rect.width === 0) return;
  const grown = { ...rect, width: rect.width + byWidth, height: rect.height + byHeight };
  bench.session.getState().draft({ kind: going.kind, place: placeWith(going.place, grown) });
}

/** What is on its way, or what is chosen as it is. */
function onItsWay(bench: Bench): Exclude<TrayDraft, { kind: 'path' }> | undefined {
  const { trayDraft } = bench.session.getState();
  if (trayDraft !== null && trayDraft.kind !== 'path') return trayDraft;
  const tray = trayOf(bench);
  const part = chosenPart(bench);
  if (tray === undefined || part === undefined || part.kind === 'path') return undefined;
  if (part.kind === 'board') return tray.board && { kind: 'board', board: tray.board };
  const place = trayPlaceOf(tray, part.id);
  return place && { kind: 'place', place };
}

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
  if (part === undefined || part.kind === 'path' || part.kind === 'board' || !hasPaths(part.kind)) {
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
  if (
    part &&
    part.kind !== 'path' &&
    part.kind !== 'board' &&
    hasPaths(part.kind) &&
    part.id !== trayDraft.from
  )
    join(bench, trayDraft.from, part.id);
  return true;
}

/** Takes the chosen part off the tray; with a place go the paths that lead to it. */
export function remove(bench: Bench): void {
  bench.session.getState().draft(null);
  const part = chosenPart(bench);
  if (part === undefined) return;
  if (part.kind === 'board') doCommand(bench, { name: 'lay-board', args: { board: null } });
  else if (part.kind === 'path')
    doCommand(bench, { name: 'remove-from-tray', args: { places: [], paths: [part.id] } });
  else doCommand(bench, { name: 'remove-from-tray', args: { places: [part.id], paths: [] } });
}

/** Turns the board a quarter clockwise about the corner that all boards share. */
export function turnBoard(bench: Bench): void {
  drop(bench);
  const board = trayOf(bench)?.board;
  if (board === undefined || chosenPart(bench)?.kind !== 'board') return;
  const rear = SIDES[(SIDES.indexOf(board.rear) + 1) % SIDES.length] ?? board.rear;
  doCommand(bench, { name: 'lay-board', args: { board: { ...board, rear } } });
}

/** Chooses the next place, path or the board, or the one before; false past the last, so that the focus can go on. */
export function walk(bench: Bench, by: 1 | -1): boolean {
  const build = buildOf(bench);
  const tray = trayOf(bench);
  if (build === undefined || tray === undefined) return false;
  const drawing = bench.session.getState().trayDraft?.kind === 'path';
  if (!drawing) drop(bench);
  const parts = walkedParts(tray).filter(
    ({ kind }) => !drawing || (kind !== 'path' && kind !== 'board' && hasPaths(kind)),
  );
  const chosen = chosenPart(bench);
  const at = chosen ? parts.findIndex(({ kind, id }) => kind === chosen.kind && id === chosen.id) : -1;
  const part = parts[at < 0 ? (by === 1 ? 0 : parts.length - 1) : at + by];
  if (part === undefined) return false;
  choose(bench, part);
  bench.session.getState().announce(trayPartWords(build, tray, part) ?? '');
  return true;
}

function walkedParts(tray: Tray): readonly TrayPart[] {
  return [
    ...placesOf(tray),
    ...tray.paths.map(({ id }) => ({ kind: 'path' as const, id })),
    ...(tray.board === undefined ? [] : [{ kind: 'board' as const, id: 'board' }]),
  ];
}

/** Escape: drops what is on its way, then puts the tool down, then chooses nothing. */
export function cancel({ session }: Bench): void {
  const { trayDraft, trayTool, draft, pickTool, select } = session.getState();
  if (trayDraft !== null) draft(null);
  else if (trayTool !== 'choose') pickTool('choose');
  else select({ kind: 'nothing' });
}

/** Looks at the tray from the other side. */
export function lookFromOther({ session }: Bench): void {
  const { traySide, lookFrom, announce } = session.getState();
  const side = traySide === 'front' ? 'back' : 'front';
  lookFrom(side);
  announce(`The tray from the ${side}`);
}
