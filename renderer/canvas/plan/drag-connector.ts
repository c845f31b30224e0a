import { connectorOf } from '../../../boards/document/lookup';
import type { Point } from '../../../boards/drawing/geometry';
import { movedPlace } from '../../../boards/fit/board-place';
import { type Gesture, type Ground, SLACK_PX } from '../gestures/gesture';
import { pan } from '../gestures/pan';
import type { PlanProps } from './plan-props';
import { snappedPlace } from './snap';

/** A level is met from so many pixels away. */
const REACH_PX = 5;

/** What a press on the plan may see and use. */
export interface PlanGround extends Pick<Ground, 'view' | 'targetAt' | 'setCursor'> {
  readonly props: () => PlanProps;
}

/**
 * A press with the main button on the plan: let go in place, it chooses. Moved on, a connector comes
 * along as a preview and is put down at release; anything else drags the ground along.
 */
export function dragConnector(ground: PlanGround, down: Point): Gesture {
  const { view, props, setCursor } = ground;
  const target = ground.targetAt(down);
  const id = target?.kind === 'connector' ? target.connector : null;
  const connector = id === null ? undefined : connectorOf(props().build.board, id);
  let panning: Gesture | null = null;
  let dragged = false;

  const drag = (at: Point) => {
    const { build, step, onChoose, onMove } = props();
    if (connector === undefined) return;
    if (!dragged) {
      dragged = true;
      setCursor('grabbing');
      onChoose(connector.id);
    }
    const { scale } = view.now();
    const there = movedPlace(connector.place, (at.x - down.x) / scale, (at.y - down.y) / scale);
    const place = snappedPlace(build.board, connector, there, step, REACH_PX / scale);
    onMove({ connector: connector.id, place });
  };

  return {
    move: (at) => {
      if (panning) panning.move(at);
      else if (dragged) drag(at);
      else if (Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) {
        if (connector) drag(at);
        else {
          panning = pan(ground, down);
          panning.move(at);
        }
      }
    },
    up: (at) => {
      if (panning) panning.up(at);
      else if (dragged) {
        setCursor('grab');
        props().onDrop();
      } else props().onChoose(id);
    },
    cancel: () => {
      panning?.cancel();
      if (dragged) props().onMove(null);
    },
  };
}
