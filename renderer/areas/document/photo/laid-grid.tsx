import type { Grid } from '../../../../boards/document/grid';
import type { Lay } from '../../../../boards/pinout/photo/lay';
import { type Matrix3, mapped, stretchAt } from '../../../../boards/pinout/photo/matrix3';
import { cellPlace, type PinPoint } from '../../../../boards/pinout/photo/pointed';

interface LaidGridProps {
  readonly spots: readonly PinPoint[];
  readonly lay: Pick<Lay, 'toPx'>;
  readonly grid: Grid;
  readonly px: number;
}

/** Half a square pin, as a share of the pitch. */
const HALF_POST = 0.13;

/** Every position of the grid where it lies in the picture: its pin as the camera would see it, and the edge of the grid. */
export function LaidGrid({ spots, lay: { toPx }, grid, px }: LaidGridProps) {
  return (
    <g>
      <path className="photo-halo" d={edge(grid, toPx)} strokeWidth={3.5 * px} />
      <path className="photo-edge" d={edge(grid, toPx)} strokeWidth={1.5 * px} />
      {spots.map(({ pin, xPx, yPx }) => (
        <circle
          key={pin}
          className="photo-spot"
          data-pin={pin}
          cx={xPx}
          cy={yPx}
          r={Math.max(4 * px, radiusAt(toPx, grid))}
          strokeWidth={2 * px}
        />
      ))}
    </g>
  );
}

function radiusAt(toPx: Matrix3, grid: Grid): number {
  const { xByX, yByX } = stretchAt(toPx, { x: 0, y: 0 });
  return HALF_POST * 1.5 * grid.pitchMm * Math.hypot(xByX, yByX);
}

/** The outline half a pitch round the outermost pins. */
function edge(grid: Grid, toPx: Matrix3): string {
  const half = grid.pitchMm / 2;
  const last = cellPlace(grid, [grid.rows - 1, grid.cols - 1]);
  const corners = [
    { x: -half, y: -half },
    { x: last.x + half, y: -half },
    { x: last.x + half, y: last.y + half },
    { x: -half, y: last.y + half },
  ].map((corner) => mapped(toPx, corner));
  return `M${corners.map(({ x, y }) => `${x} ${y}`).join('L')}Z`;
}
