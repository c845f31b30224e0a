import type { Point } from '../../../boards/drawing/geometry';
import type { Target } from '../canvas-props';
import { sameTarget } from '../hit-index';
import { type Cursor, type Gesture, type Ground, screenPoint } from './gesture';
import { pan } from './pan';
import { pinch } from './pinch';
import { wheel } from './wheel';

const MAIN_BUTTON = 0;
const MIDDLE_BUTTON = 1;

/**
 * Listens to the canvas and gives each press to the gesture that it begins. Escape drops a gesture that
 * is under way. Returns how to stop.
 */
export function listenToPointer(ground: Ground, onHover: (target: Target | null) => void): () => void {
  const { element } = ground;
  let gesture: Gesture | null = null;
  let spaceHeld = false;
  let hovered: Target | null = null;
  const touches = new Map<number, Point>();

  const cursorOver = (target: Target | null): Cursor => {
    const cursor = ground.cursorOver(target);
    return spaceHeld && cursor !== 'grabbing' ? 'grab' : cursor;
  };

  const hover = (target: Target | null) => {
    if (!gesture) ground.setCursor(cursorOver(target));
    if (sameTarget(hovered, target)) return;
    hovered = target;
    onHover(target);
  };

  const down = (event: PointerEvent) => {
    const at = screenPoint(element, event);
    if (event.pointerType === 'touch') touches.set(event.pointerId, at);
    if (touches.size > 1) {
      gesture?.cancel();
      gesture = null;
      return;
    }
    if (event.button === MIDDLE_BUTTON || (event.button === MAIN_BUTTON && spaceHeld)) {
      event.preventDefault();
      gesture = pan(ground, at);
    } else if (event.button === MAIN_BUTTON) {
      gesture = ground.begin(at);
    }
  };

  const move = (event: PointerEvent) => {
    const at = screenPoint(element, event);
    const before = touches.get(event.pointerId);
    if (before && touches.size === 2) {
      const [other] = [...touches].filter(([id]) => id !== event.pointerId);
      if (other) pinch(ground.view, [before, other[1]], [at, other[1]]);
    }
    if (before) touches.set(event.pointerId, at);
    if (gesture) gesture.move(at);
    else if (event.target instanceof Node && element.contains(event.target)) hover(ground.targetAt(at));
  };

  const up = (event: PointerEvent) => {
    touches.delete(event.pointerId);
    const ended = gesture;
    gesture = null;
    ended?.up(screenPoint(element, event));
  };

  const cancel = (event: PointerEvent) => {
    touches.delete(event.pointerId);
    gesture?.cancel();
    gesture = null;
  };

  const double = (event: MouseEvent) => ground.twice(ground.targetAt(screenPoint(element, event)));
  const leave = () => hover(null);
  const onWheel = (event: WheelEvent) => wheel(ground, event);
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Escape' && event.type === 'keydown') {
      gesture?.cancel();
      gesture = null;
    }
    if (event.code !== 'Space') return;
    spaceHeld = event.type === 'keydown' && isFree(event.target);
  };

  element.addEventListener('pointerdown', down);
  element.addEventListener('dblclick', double);
  element.addEventListener('pointerleave', leave);
  element.addEventListener('wheel', onWheel, { passive: false });
  window.addEventListener('pointermove', move);
  window.addEventListener('pointerup', up);
  window.addEventListener('pointercancel', cancel);
  window.addEventListener('keydown', key);
  window.addEventListener('keyup', key);
  return () => {
    element.removeEventListener('pointerdown', down);
    element.removeEventListener('dblclick', double);
    element.removeEventListener('pointerleave', leave);
    element.removeEventListener('wheel', onWheel);
    window.removeEventListener('pointermove', move);
    window.removeEventListener('pointerup', up);
    window.removeEventListener('pointercancel', cancel);
    window.removeEventListener('keydown', key);
    window.removeEventListener('keyup', key);
  };
}

/** The space bar belongs to buttons and fields while one of them has the focus. */
function isFree(target: EventTarget | null): boolean {
  if (!(target instanceof Element)) return true;
  const owner = target.closest('button, input, textarea, select, [role], [contenteditable]');
  return owner === null || owner.getAttribute('role') === 'application';
}
