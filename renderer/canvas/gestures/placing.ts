import type { Seat } from '../../../boards/document/build';
import { sameSeat } from '../../../boards/document/lookup';
import { contains, type Point } from '../../../boards/drawing/geometry';
import { orientationOf, oriented, undone } from '../../../boards/drawing/orientation';
import { seatUnder } from '../../../boards/fit/nearest-seat';
import { toMm } from '../view';
import { type Bench, screenPoint } from './gesture';

/** The pointer's part in placing a plug, from when it is taken into the hand. */
export interface PlacingPointer {
  /** Where the pointer is over the canvas; null when it is elsewhere. */
  readonly at: () => Point | null;
  /** Looks again under the pointer, after the plug was turned. */
  readonly refresh: () => void;
  readonly stop: () => void;
}

/**
 * Follows the pointer over the whole window while a plug is in the hand: the drag may have begun on
 * the shelf. Tells the seat under it, and when it is let go.
 */
export function followPlacing(bench: Bench, onMove: () => void): PlacingPointer {
  let pointer: Point | null = null;
  let told: Seat | null = null;

  const look = () => {
    const { build, placing, onCandidate } = bench.props();
    if (!placing) return;
    const { scale, x, y } = bench.view.now();
    const point = pointer && toMm({ scale, x, y }, pointer);
    const onBoard = point && oriented(undone(orientationOf(build.view)), point);
    const candidate =
      onBoard && seatUnder(build, placing.plug, placing.turn, { xMm: onBoard.x, yMm: onBoard.y });
    if (!isSame(candidate, told) || !isSame(candidate, placing.candidate)) onCandidate(candidate);
    told = candidate;
  };

  const move = (event: PointerEvent) => {
    const at = screenPoint(bench.element, event);
    const inside = contains({ x: 0, y: 0, ...bench.view.size() }, at);
    if (!inside && pointer === null) return;
    pointer = inside ? at : null;
    look();
    onMove();
  };

  const up = () => {
    if (bench.props().placing?.by === 'drag') bench.props().onRelease();
  };

  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', up);
  return {
    at: () => pointer,
    refresh: () => {
      const { placing } = bench.props();
      if (pointer && placing && samePlace(placing.candidate, told)) look();
    },
    stop: () => {
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', up);
    },
  };
}

/** Still where the pointer led it, not moved on by a key. */
function samePlace(a: Seat | null, b: Seat | null): boolean {
  return isSame(a && { ...a, turn: 0 }, b && { ...b, turn: 0 });
}

function isSame(a: Seat | null, b: Seat | null): boolean {
  return a && b ? sameSeat(a, b) : a === b;
}
