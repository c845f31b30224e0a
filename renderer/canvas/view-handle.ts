import type Konva from 'konva/lib/Core';
import type { Point, Rect } from '../../boards/drawing/geometry';
import { fitted, pannedBy, type SizePx, type View, zoomedAt } from './view';

/** The view of one canvas. It is set on the stage directly and never passes through React. */
export interface ViewHandle {
  readonly now: () => View;
  readonly size: () => SizePx;
  readonly zoomAt: (factor: number, at: Point) => void;
  readonly panBy: (dx: number, dy: number) => void;
  readonly fit: (rect: Rect, marginPx: number, mostScale: number) => void;
  /** Brings a point of the drawing into the middle. */
  readonly centreOn: (point: Point) => void;
  /** Calls back after every change; returns how to stop that. */
  readonly subscribe: (listener: () => void) => () => void;
}

export function viewHandle(stage: Konva.Stage): ViewHandle {
  let view: View = { scale: stage.scaleX(), x: stage.x(), y: stage.y() };
  const listeners = new Set<() => void>();
  const size = () => ({ width: stage.width(), height: stage.height() });
  const set = (next: View) => {
    view = next;
    stage.setAttrs({ scaleX: next.scale, scaleY: next.scale, x: next.x, y: next.y });
    for (const listener of listeners) listener();
  };
  return {
    now: () => view,
    size,
    zoomAt: (factor, at) => set(zoomedAt(view, factor, at)),
    panBy: (dx, dy) => set(pannedBy(view, dx, dy)),
    fit: (rect, marginPx, mostScale) => set(fitted(rect, size(), marginPx, mostScale)),
    centreOn: (point) => {
      const { width, height } = size();
      set({ ...view, x: width / 2 - point.x * view.scale, y: height / 2 - point.y * view.scale });
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
