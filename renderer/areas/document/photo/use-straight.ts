import { useEffect, useState } from 'react';
import type { Matrix3 } from '../../../../boards/pinout/photo/matrix3';
import {
  type Pixels,
  type StraightView,
  straightenRows,
  viewSize,
} from '../../../../boards/pinout/photo/straighten';
import { penOn } from './take-photo';

/** The window is to answer between two slices. */
const SLICE_MS = 10;
const ROWS_AT_ONCE = 16;

/** A straight picture, and the view it shows: what is drawn over it goes by that one. */
interface Straight {
  readonly image: OffscreenCanvas;
  readonly view: StraightView;
}

/** The straight view, made in slices between frames; the one before stays until it is there. */
export function useStraight(
  pixels: Pixels,
  toPx: Matrix3,
  view: StraightView,
): { readonly straight: Straight | null; readonly share: number } {
  const [straight, setStraight] = useState<Straight | null>(null);
  const [share, setShare] = useState(0);
  const wanted = JSON.stringify([toPx, view]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text says all that map and view say
  useEffect(() => {
    const size = viewSize(view);
    const data = new ImageData(size.width, size.height);
    let row = 0;
    let frame = 0;
    const slice = () => {
      const began = performance.now();
      while (row < size.height && performance.now() - began < SLICE_MS) {
        const until = Math.min(size.height, row + ROWS_AT_ONCE);
        straightenRows(pixels, toPx, view, data, row, until);
        row = until;
      }
      if (row < size.height) {
        setShare(row / size.height);
        frame = requestAnimationFrame(slice);
        return;
      }
      const canvas = new OffscreenCanvas(size.width, size.height);
      penOn(canvas).putImageData(data, 0, 0);
      setStraight({ image: canvas, view });
      setShare(1);
    };
    frame = requestAnimationFrame(slice);
    return () => cancelAnimationFrame(frame);
  }, [pixels, wanted]);
  return { straight, share };
}
