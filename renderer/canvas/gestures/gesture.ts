import type { Point } from '../../../boards/drawing/geometry';
import type { CanvasProps, Target } from '../canvas-props';
import type { ViewHandle } from '../view-handle';

/** What every gesture may see and use, on any canvas. */
export interface Ground {
  readonly element: HTMLElement;
  readonly view: ViewHandle;
  readonly targetAt: (screen: Point) => Target | null;
  readonly setCursor: (cursor: Cursor) => void;
  /** The cursor over a target while nothing is held. */
  readonly cursorOver: (target: Target | null) => Cursor;
  /** The gesture that a press with the main button begins. */
  readonly begin: (down: Point) => Gesture;
  /** Pressed twice in place. */
  readonly twice: (target: Target | null) => void;
}

/** What a gesture on the wired board may see and use. */
export interface Bench extends Ground {
  /** The canvas's properties as they are now. */
  readonly props: () => CanvasProps;
}

export type Cursor = 'default' | 'pointer' | 'grab' | 'grabbing' | 'crosshair';

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
