import { useEffect } from 'react';
import type { Placing } from '../../../store/session';
import { useWorkbench } from '../../../workbench';
import { pressKey } from './hand';
import { type PlacingKey, placingKey } from './keys';

/** Lets the keys work on the plug in the hand, while the focus is on the canvas or nowhere. */
export function useHandKeys(by: Placing['by'] | undefined): void {
  const workbench = useWorkbench();
  useEffect(() => {
    if (by === undefined) return;
    const onKey = (event: KeyboardEvent) => {
      const key = placingKey(event);
      if (key === undefined || !belongsToHand(key, event.target, by)) return;
      if (workbench.session.getState().dialogs.length > 0) return;
      event.preventDefault();
      event.stopPropagation();
      pressKey(workbench, key);
    };
    window.addEventListener('keydown', onKey, { capture: true });
    return () => window.removeEventListener('keydown', onKey, { capture: true });
  }, [workbench, by]);
}

function belongsToHand(key: PlacingKey, target: EventTarget | null, by: Placing['by']): boolean {
  const element = target instanceof Element ? target : null;
  if (element?.closest('[role="menu"], [role="listbox"], input, textarea')) return false;
  // During a drag the focus is wherever the drag began; the pointer decides where, the keys only turn and cancel.
  if (by === 'drag') return key.kind === 'turn' || key.kind === 'cancel';
  if (key.kind === 'cancel') return true;
  const onCanvas = element === null || element === document.body || element.closest('.canvas-pane') !== null;
  return onCanvas && !(key.kind === 'seat' && element?.closest('button'));
}
