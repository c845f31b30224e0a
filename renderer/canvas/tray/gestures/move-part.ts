import { trayPlaceOf } from '../../../../boards/document/tray-places';
import type { Point } from '../../../../boards/drawing/geometry';
import type { TrayDraft, TrayPart } from '../../../store/session';
import type { Gesture } from '../../gestures/gesture';
import { draftedTray, nearestWall, placeAt, rectOfPlace, within } from '../drafted';
import { snappedOnTray } from '../snap-tray';
import { sheetPoint, snapReach, type TrayBench } from './tray-bench';

/** A place or the board comes along with the pointer, and is put down at release; a fan goes from wall to wall. */
export function movePart(bench: TrayBench, part: TrayPart, down: Point): Gesture {
  const from = sheetPoint(bench, down);
  bench.setCursor('grabbing');
  return {
    move: (at) => {
      const to = sheetPoint(bench, at);
      const draft = movedBy(bench, part, from, to);
      if (draft) bench.props().onDraft(draft);
    },
    up: () => {
      bench.setCursor('grab');
      bench.props().onDrop();
    },
    cancel: () => {
      bench.setCursor('default');
      bench.props().onDraft(null);
    },
  };
}

function movedBy(bench: TrayBench, part: TrayPart, from: Point, to: Point): TrayDraft | undefined {
  const { tray, draft } = bench.props();
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (part.kind === 'board') {
    const { board } = tray;
    if (board === undefined) return undefined;
    const whole = { xMm: Math.round(board.xMm + dx), yMm: Math.round(board.yMm + dy) };
    return { kind: 'board', board: { ...board, xMm: within(whole.xMm), yMm: within(whole.yMm) } };
  }
  const place = trayPlaceOf(tray, part.id);
  if (place === undefined) return undefined;
  if (place.what === 'fan') {
    const wall = nearestWall(draftedTray(tray, draft), to);
    return { kind: 'place', place: { what: 'fan', place: { ...place.place, wall } } };
  }
  const rect = rectOfPlace(place);
  if (rect === undefined) return undefined;
  const moved = { ...rect, x: rect.x + dx, y: rect.y + dy };
  return { kind: 'place', place: placeAt(place, snappedOnTray(tray, part.id, moved, snapReach(bench))) };
}
