import type { PointerEvent } from 'react';

/** A press becomes a drag after so many pixels, so that a click with a shaking hand stays a click. */
const SLACK_PX = 4;

/** Pointer-down handler that calls back once the pointer has moved far enough with the button held. */
export function dragStart(onDrag: () => void): (event: PointerEvent) => void {
  return (down) => {
    if (down.button !== 0) return;
    const stop = () => {
      window.removeEventListener('pointermove', move);
      window.removeEventListener('pointerup', stop);
      window.removeEventListener('pointercancel', cancel);
    };
    // A list row that is held for half a second sends a made-up cancel to its other handlers; a person
    // may well hold a lead that long before moving it.
    const cancel = (event: globalThis.PointerEvent) => {
      if (event.pointerId === down.pointerId) stop();
    };
    const move = (event: globalThis.PointerEvent) => {
      if (Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) <= SLACK_PX) return;
      stop();
      onDrag();
    };
    window.addEventListener('pointermove', move);
    window.addEventListener('pointerup', stop);
    window.addEventListener('pointercancel', cancel);
  };
}
