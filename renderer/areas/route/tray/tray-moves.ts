import type { Mm } from '../../../../boards/base/units';
import { SIDES } from '../../../../boards/document/connector';
import { placesOf } from '../../../../boards/document/place-names';
import type { Tray } from '../../../../boards/document/tray';
import { type TrayPlace, trayPlaceOf } from '../../../../boards/document/tray-places';
import {
  isStation,
  nearestWall,
  placeAt,
  placeWith,
  rectOfPlace,
  within,
} from '../../../canvas/tray/drafted';
import { doCommand } from '../../../do-command';
import type { TrayDraft, TrayPart } from '../../../store/session';
import { trayPartWords } from '../../../words/tray-words';
import { type Bench, buildOf, choose, chosenPart, trayOf } from './tray-bench';

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
  const parts = walkedParts(tray).filter((part) => !drawing || isStation(part));
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
