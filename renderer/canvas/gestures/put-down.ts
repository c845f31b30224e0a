import type { Point } from '../../../boards/drawing/geometry';
import { type Bench, type Gesture, SLACK_PX } from './gesture';
import { pan } from './pan';

/** A press while a plug is carried: let go in place, it goes down; moved on, the ground follows. */
export function putDown(bench: Bench, down: Point): Gesture {
  let panning: Gesture | null = null;
  return {
    move: (at) => {
      if (!panning && Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) panning = pan(bench, down);
      panning?.move(at);
    },
    up: (at) => {
      if (panning) panning.up(at);
      else bench.props().onRelease();
    },
    cancel: () => panning?.cancel(),
  };
}
