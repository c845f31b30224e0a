import type { Point } from '../../../boards/drawing/geometry';
import type { CanvasProps, Target } from '../canvas-props';
import type { ViewHandle } from '../view-handle';

/** What a gesture may see and use. */
export interface Bench {
  readonly element: HTMLElement;
  readonly view: ViewHandle;
  /** The canvas's properties as they are now. */
  readonly props: () => CanvasProps;
  readonly targetAt: (screen: Point) => Target | null;
  readonly setCursor: (cursor: Cursor) => void;
  /** Brings the connector of a target near enough to be read; the whole drawing when there is none. */
  readonly showNear: (target: Target | null) => void;
}

export type Cursor = 'default' | 'pointer' | 'grab' | 'grabbing';

/** One press of the pointer, from down to up. Positions are CSS pixels from the canvas's corner. */
export interface Gesture {
  readonly move: (at: Point) => void;
  readonly up: (at: Point) => void;
  readonly cancel: () => void;
}

/** A press becomes a drag after so many pixels, so that a click with a shaking hand stays a click. */
export const SLACK_PX = 4;

export function screenPoint(element: HTMLElement, event: { clientX: number; clientY: number }): Point {
  const { left, top } = element.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}
