import type { Point } from '../../../boards/drawing/geometry';
import type { Gesture, Ground } from './gesture';

/** The ground follows the pointer. */
export function pan({ view, setCursor }: Pick<Ground, 'view' | 'setCursor'>, down: Point): Gesture {
  let last = down;
  setCursor('grabbing');
  return {
    move: (at) => {
      view.panBy(at.x - last.x, at.y - last.y);
      last = at;
    },
    up: () => setCursor('default'),
    cancel: () => setCursor('default'),
  };
}
