import { useEffect, useEffectEvent, useState } from 'react';

/**
 * Files that are dropped or pasted while this is on the screen: the window itself would open them as
 * sheets. True while one hovers over the window.
 */
export function useDropped(take: (file: File) => void): boolean {
  const [hovering, setHovering] = useState(false);
  const taken = useEffectEvent(take);
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      setHovering(true);
    };
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setHovering(false);
    };
    const receive = (event: Event, data: DataTransfer | null) => {
      const file = data?.files[0];
      if (!file) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      taken(file);
    };
    const drop = (event: DragEvent) => {
      setHovering(false);
      receive(event, event.dataTransfer);
    };
    const paste = (event: ClipboardEvent) => receive(event, event.clipboardData);
    // Before anybody else: the window listens for files too.
    const first = { capture: true };
    window.addEventListener('dragover', over, first);
    window.addEventListener('dragleave', leave, first);
    window.addEventListener('drop', drop, first);
    window.addEventListener('paste', paste, first);
    return () => {
      window.removeEventListener('dragover', over, first);
      window.removeEventListener('dragleave', leave, first);
      window.removeEventListener('drop', drop, first);
      window.removeEventListener('paste', paste, first);
    };
  }, []);
  return hovering;
}
