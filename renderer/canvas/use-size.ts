import { type RefObject, useLayoutEffect, useState } from 'react';
import type { SizePx } from './view';

/** The size of an element in CSS pixels, kept up to date; null before it is known. */
export function useSize(element: RefObject<HTMLElement | null>): SizePx | null {
  const [size, setSize] = useState<SizePx | null>(null);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return;
    const read = () => {
      const { clientWidth: width, clientHeight: height } = watched;
      if (width > 0 && height > 0)
        setSize((known) => (known?.width === width && known.height === height ? known : { width, height }));
    };
    const observer = new ResizeObserver(read);
    observer.observe(watched);
    read();
    return () => observer.disconnect();
  }, [element]);
  return size;
}
