import type { Point } from '../../../boards/drawing/geometry';
import { type Bench, type Gesture, SLACK_PX } from './gesture';
import { pan } from './pan';

/**
 * A press with the main button: let go in place, it selects. Moved on, a plug is taken into the hand
 * (from there on the parent's `placing` leads), and anything else drags the ground along.
 */
export function press(bench: Bench, down: Point): Gesture {
  const target = bench.targetAt(down);
  let panning: Gesture | null = null;
  let handedOver = false;
  return {
    move: (at) => {
      if (handedOver) return;
      if (panning) panning.move(at);
      else if (Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) {
        if (target?.kind === 'plug') {
          handedOver = true;
          bench.props().onGrab(target.plug);
        } else {
          panning = pan(bench, down);
          panning.move(at);
        }
      }
    },
    up: (at) => {
      if (panning) panning.up(at);
      else if (!handedOver) bench.props().onSelect(target);
    },
    cancel: () => panning?.cancel(),
  };
}
