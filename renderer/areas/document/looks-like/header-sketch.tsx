import type { PlaceCompared } from '../../../../boards/pinout/looks-like/compare';
import { frameOf } from './frame';

const CELL = 8;
const SIDE = 5;

/** A known layout as it lies here, small: full where it agrees, crossed where it differs. The words say the same. */
export function HeaderSketch({ places }: { readonly places: readonly PlaceCompared[] }) {
  const { top, left, rows, cols } = frameOf(places);
  return (
    <svg
      className="header-sketch"
      viewBox={`0 0 ${cols * CELL} ${rows * CELL}`}
      width={cols * CELL}
      height={rows * CELL}
      aria-hidden="true"
    >
      {places.map(({ cell, there, verdict }) => {
        const x = (cell[1] - left) * CELL + (CELL - SIDE) / 2;
        const y = (cell[0] - top) * CELL + (CELL - SIDE) / 2;
        if (there === undefined) return null;
        const kind = there.missing ? 'gap' : verdict;
        return (
          <g key={String(cell)} className={`sketch sketch-${kind}`}>
            <rect x={x} y={y} width={SIDE} height={SIDE} />
            {verdict === 'differ' && <path d={`M${x} ${y}l${SIDE} ${SIDE}m0 ${-SIDE}l${-SIDE} ${SIDE}`} />}
          </g>
        );
      })}
    </svg>
  );
}
