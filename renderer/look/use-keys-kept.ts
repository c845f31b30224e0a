import { type RefObject, useEffect } from 'react';

/**
 * Keeps the keyboard with a window over the window. What has the focus may be disabled or taken away, and the
 * browser then lets the focus fall to the page without a word: the next key brings it back, and Escape closes.
 */
export function useKeysKept(inside: RefObject<HTMLElement | null>, onClose: () => void): void {
  useEffect(() => {
    const keep = (event: KeyboardEvent) => {
      const { activeElement } = document;
      const isLost = activeElement === null || activeElement === document.body;
      const isTopmost = [...document.querySelectorAll('.window-inside')].at(-1) === inside.current;
      if (!isLost || !isTopmost) return;
      inside.current?.focus();
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      onClose();
    };
    document.addEventListener('keydown', keep, true);
    return () => document.removeEventListener('keydown', keep, true);
  }, [inside, onClose]);
}
