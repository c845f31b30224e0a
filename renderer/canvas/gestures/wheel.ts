import { type Ground, screenPoint } from './gesture';

const LINE_PX = 32;
const PAGE_PX = 400;
/** So many pixels of wheel double or halve the scale. */
const DOUBLE_PX = 420;
/** Pinching sends small deltas with the control key set. */
const PINCH_DOUBLE_PX = 80;

/**
 * The plain wheel zooms at the pointer, as does a pinch; with shift, and for a sideways wheel, the
 * ground moves sideways.
 */
export function wheel({ element, view }: Ground, event: WheelEvent): void {
  event.preventDefault();
  const unit = event.deltaMode === 1 ? LINE_PX : event.deltaMode === 2 ? PAGE_PX : 1;
  const dx = event.deltaX * unit;
  const dy = event.deltaY * unit;
  if (!event.ctrlKey && (event.shiftKey || Math.abs(dx) > Math.abs(dy))) {
    view.panBy(-(Math.abs(dx) > Math.abs(dy) ? dx : dy), 0);
    return;
  }
  const double = event.ctrlKey && Math.abs(dy) < LINE_PX ? PINCH_DOUBLE_PX : DOUBLE_PX;
  view.zoomAt(2 ** (-dy / double), screenPoint(element, event));
}
