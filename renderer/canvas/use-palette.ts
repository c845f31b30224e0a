import { type RefObject, useLayoutEffect, useState } from 'react';
import type { CanvasProps } from './canvas-props';
import { type Palette, readPalette } from './drawing/palette';

const FACES = ['400 32px', '650 32px', '600 32px'] as const;

/** The page's colours for a theme; read again when theme or type size change, and when the fonts have come. */
export function usePalette(
  element: RefObject<HTMLElement | null>,
  theme: CanvasProps['theme'],
): Palette | null {
  const [palette, setPalette] = useState<Palette | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the theme decides what the page answers
  useLayoutEffect(() => {
    const page = element.current;
    if (!page) return;
    let current = true;
    const read = () => {
      if (current) setPalette(readPalette(page));
    };
    const look = new MutationObserver(read);
    look.observe(document.documentElement, { attributes: true });
    read();
    void loadFaces(page).then(read);
    return () => {
      current = false;
      look.disconnect();
    };
  }, [element, theme]);
  return palette;
}

async function loadFaces(page: HTMLElement): Promise<void> {
  const { textFace, monoFace } = readPalette(page);
  await Promise.allSettled(
    FACES.flatMap((weight) => [textFace, monoFace].map((face) => document.fonts.load(`${weight} ${face}`))),
  );
}
