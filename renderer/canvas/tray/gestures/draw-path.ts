import type { Point } from '../../../../boards/drawing/geometry';
import type { Gesture } from '../../gestures/gesture';
import { isStation } from '../drafted';
import type { TrayTarget } from '../tray-hits';
import type { TrayBench } from './tray-bench';

/**
 * A path from a place to another: dragged, or one pressed after the other. Let go beside everything it is
 * dropped.
 */
export function drawPath(bench: TrayBench, down: Point): Gesture {
  const { draft, onDraft, onPath } = bench.props();
  const before = draft?.kind === 'path' ? draft.from : null;
  const here = stationOf(bench.targetAt(down));
  if (before === null) onDraft(here === null ? null : { kind: 'path', from: here });
  return {
    move: () => undefined,
    up: (at) => {
      const from = before ?? here;
      const to = stationOf(bench.targetAt(at));
      if (from === null) return;
      if (to === null) onDraft(null);
      else if (to !== from) onPath(from, to);
    },
    cancel: () => onDraft(null),
  };
}

/** The id of a place that paths lead to. */
export function stationOf(target: TrayTarget | null): string | null {
  return target?.kind === 'on-tray' && isStation(target.part) ? target.part.id : null;
}
