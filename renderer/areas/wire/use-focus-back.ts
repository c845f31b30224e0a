import { type RefObject, useEffect, useRef } from 'react';
import { useSession } from '../../workbench';

/**
 * Brings the focus back to the list on the shelf once the plug is out of the hand, so that the next
 * lead is one key away. Leaves it where it is when the person has gone elsewhere by themselves.
 */
export function useFocusBack(): RefObject<HTMLElement | null> {
  const shelf = useRef<HTMLElement>(null);
  const carrying = useSession(({ placing }) => placing?.by === 'carry');
  const carriedBefore = useRef(false);
  useEffect(() => {
    const ended = carriedBefore.current && !carrying;
    carriedBefore.current = carrying;
    if (!ended || document.activeElement !== document.body) return;
    shelf.current?.querySelector<HTMLElement>('[role="grid"], [role="treegrid"]')?.focus();
  }, [carrying]);
  return shelf;
}
