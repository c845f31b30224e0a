import type { Point } from '../../../boards/drawing/geometry';
import type { Target } from '../canvas-props';
import { sameTarget } from '../hit-index';
import { type Bench, type Cursor, type Gesture, screenPoint } from './gesture';
import { pan } from './pan';
import { pinch } from './pinch';
import { press } from './press';
import { putDown } from './put-down';
import { wheel } from './wheel';

const MAIN_BUTTON = 0;
const MIDDLE_BUTTON = 1;

/** Listens to the canvas and gives each press to the gesture that it begins. Returns how to stop. */
export function listenToPointer(bench: Bench, onHover: (target: Target | null) => void): () => void {
  const { element } = bench;
  let gesture: Gesture | null = null;
  let spaceHeld = false;
  let hovered: Target | null = null;
  const touches = new Map<number, Point>();

  const cursorOver = (target: Target | null): Cursor => {
    if (bench.props().placing) return 'grabbing';
    if (spaceHeld || target?.kind === 'plug') return 'grab';
    return target ? 'pointer' : 'default';
  };

  const hover = (target: Target | null) => {
    if (!gesture) bench.setCursor(cursorOver(target));
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
      gesture = pan(bench, at);
    } else if (event.button === MAIN_BUTTON) {
      gesture = bench.props().placing?.by === 'carry' ? putDown(bench, at) : press(bench, at);
    }
  };

  const move = (event: PointerEvent) => {
    const at = screenPoint(element, event);
    const before = touches.get(event.pointerId);
    if (before && touches.size === 2) {
      const [other] = [...touches].filter(([id]) => id !== event.pointerId);
      if (other) pinch(bench.view, [before, other[1]], [at, other[1]]);
    }
    if (before) touches.set(event.pointerId, at);
    if (gesture) gesture.move(at);
    else if (event.target instanceof Node && element.contains(event.target)) hover(bench.targetAt(at));
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

  const double = (event: MouseEvent) => {
    if (!bench.props().placing) bench.showNear(bench.targetAt(screenPoint(element, event)));
  };
  const leave = () => hover(null);
  const onWheel = (event: WheelEvent) => wheel(bench, event);
  const key = (event: KeyboardEvent) => {
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
  return !(
    target instanceof Element && target.closest('button, input, textarea, select, [role], [contenteditable]')
  );
}
