import { trayPlaceOf } from '../../../../boards/document/tray-places';
import type { Gesture } from '../../gestures/gesture';
import { placeWith, rectOfPlace } from '../drafted';
import { type Handle, resized } from '../resize-handles';
import { snappedPoint } from '../snap-tray';
import { sheetPoint, snapReach, type TrayBench } from './tray-bench';

/**
 * A side or a corner of an opening, a bay or the supply is taken elsewhere.
 *
 * @param handle as the sheet has it, also when the tray is looked at from the back
 */
export function resizeArea(bench: TrayBench, id: string, handle: Handle): Gesture {
  return {
    move: (at) => {
      const { tray, onDraft } = bench.props();
      const place = trayPlaceOf(tray, id);
      const rect = place && rectOfPlace(place);
      if (!place || !rect) return;
      const to = snappedPoint(tray, id, sheetPoint(bench, at), snapReach(bench));
      onDraft({ kind: 'place', place: placeWith(place, resized(rect, handle, to)) });
    },
    up: () => bench.props().onDrop(),
    cancel: () => bench.props().onDraft(null),
  };
}
