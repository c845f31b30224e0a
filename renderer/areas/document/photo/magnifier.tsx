import { useLayoutEffect, useRef } from 'react';
import type { PlanePoint } from '../../../../boards/pinout/photo/matrix3';

const SIDE_PX = 176;
/** How many pixels of the screen a pixel of the picture becomes. */
const FACTOR = 6;

/** What lies under a point, much nearer, with a cross on the point itself. */
export function Magnifier({
  image,
  at,
}: {
  readonly image: OffscreenCanvas;
  readonly at: PlanePoint | null;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!canvas.current || !pen) return;
    const ratio = window.devicePixelRatio;
    const side = Math.round(SIDE_PX * ratio);
    canvas.current.width = side;
    canvas.current.height = side;
    if (at === null) return;
    const scale = FACTOR * ratio;
    pen.imageSmoothingEnabled = false;
    pen.setTransform(scale, 0, 0, scale, side / 2 - at.x * scale, side / 2 - at.y * scale);
    pen.drawImage(image, 0, 0);
  }, [image, at]);
  const middle = SIDE_PX / 2;
  return (
    <div className="photo-magnifier" aria-hidden="true">
      <canvas ref={canvas} />
      {at && (
        <svg aria-hidden="true" viewBox={`0 0 ${SIDE_PX} ${SIDE_PX}`}>
          <Cross x={middle} y={middle} reach={middle} px={1} />
        </svg>
      )}
    </div>
  );
}

interface CrossProps {
  readonly x: number;
  readonly y: number;
  /** Half the length of its lines. */
  readonly reach: number;
  /** A pixel of the screen. */
  readonly px: number;
}

/** Two crossed lines that leave the middle free; light on dark, so that they show on any photo. */
export function Cross({ x, y, reach, px }: CrossProps) {
  const gap = 3 * px;
  const lines =
    `M${x - reach} ${y}H${x - gap}M${x + gap} ${y}H${x + reach}` +
    `M${x} ${y - reach}V${y - gap}M${x} ${y + gap}V${y + reach}`;
  return (
    <>
      <path className="photo-halo" d={lines} strokeWidth={3.5 * px} />
      <path className="photo-core" d={lines} strokeWidth={1.5 * px} />
    </>
  );
}
