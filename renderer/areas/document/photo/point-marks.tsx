import { Cross } from './magnifier';
import type { Points } from './use-points';

interface PointMarksProps {
  readonly points: Points['points'];
  readonly doubted: ReadonlySet<string>;
  readonly chosen: string | null;
  readonly px: number;
}

/** Each point that was set: a cross with the pin's label; one that may be off has a frame round it too. */
export function PointMarks({ points, doubted, chosen, px }: PointMarksProps) {
  return points.map(({ pin, xPx, yPx }) => (
    <g
      key={pin}
      className="photo-point"
      data-pin={pin}
      data-off={doubted.has(pin) || undefined}
      data-chosen={pin === chosen || undefined}
    >
      <Cross x={xPx} y={yPx} reach={(pin === chosen ? 18 : 11) * px} px={px} />
      {doubted.has(pin) && (
        <rect
          className="photo-off"
          x={xPx - 9 * px}
          y={yPx - 9 * px}
          width={18 * px}
          height={18 * px}
          strokeWidth={2.5 * px}
        />
      )}
      <text className="photo-tag" x={xPx + 8 * px} y={yPx - 8 * px} fontSize={15 * px} strokeWidth={4 * px}>
        {pin}
      </text>
    </g>
  ));
}
