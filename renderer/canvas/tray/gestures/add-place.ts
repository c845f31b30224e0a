import type { Point } from '../../../../boards/drawing/geometry';
import type { TrayTool } from '../../../store/session';
import { type Gesture, SLACK_PX } from '../../gestures/gesture';
import { snappedPoint } from '../snap-tray';
import { sheetPoint, snapReach, type TrayBench } from './tray-bench';

/** A press puts a new place there; moved on, an area is drawn from corner to corner. Release adds it. */
export function addPlace(bench: TrayBench, tool: TrayTool, down: Point): Gesture {
  const snapped = (at: Point) =>
    snappedPoint(bench.props().tray, '', sheetPoint(bench, at), snapReach(bench));
  const from = snapped(down);
  let drawn = false;
  const show = (to: Point | null) => {
    const { makePlace, onDraft } = bench.props();
    const place = makePlace(tool, from, to);
    onDraft(place && { kind: 'new', place });
  };
  show(null);
  return {
    move: (at) => {
      if (Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) drawn = true;
      if (drawn) show(snapped(at));
    },
    up: () => bench.props().onDrop(),
    cancel: () => bench.props().onDraft(null),
  };
}
