import type { Pin } from '../../../../boards/document/connector';
import type { PlaceCompared } from '../../../../boards/pinout/looks-like/compare';
import { VERDICT_SIGNS } from '../../../../boards/pinout/looks-like/looks-like-words';
import { frameOf } from './frame';

const CELL = 36;
const SIDE = 30;
const EDGE = 6;

interface HeaderDrawingProps {
  readonly caption: string;
  readonly places: readonly PlaceCompared[];
  readonly side: 'here' | 'there';
  /** The place that is chosen in the list. */
  readonly pointed: string | null;
}

/**
 * One of two headers laid over each other, both in the same frame so that places lie at the same spot of
 * either drawing. Pins bear their own number and the sign of how they compare; the list says it in words.
 */
export function HeaderDrawing({ caption, places, side, pointed }: HeaderDrawingProps) {
  const { top, left, rows, cols } = frameOf(places);
  const width = cols * CELL + 2 * EDGE;
  const height = rows * CELL + 2 * EDGE;
  return (
    <figure className="header-drawing">
      <figcaption className="soft small">{caption}</figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
        <rect className="header-body" x="1" y="1" width={width - 2} height={height - 2} rx="4" />
        {places.map((place) => {
          const pin = place[side];
          if (pin === undefined) return null;
          const x = EDGE + (place.cell[1] - left) * CELL + (CELL - SIDE) / 2;
          const y = EDGE + (place.cell[0] - top) * CELL + (CELL - SIDE) / 2;
          return (
            <g key={String(place.cell)} className={classOf(place, pin, pointed)}>
              <rect x={x} y={y} width={SIDE} height={SIDE} rx="2" />
              {pin.missing && <path d={`M${x} ${y + SIDE}l${SIDE} ${-SIDE}`} />}
              <text x={x + SIDE / 2} y={y + 13}>
                {pin.pin}
              </text>
              <text x={x + SIDE / 2} y={y + 26} className="place-sign">
                {VERDICT_SIGNS[place.verdict]}
              </text>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}

function classOf({ cell, verdict }: PlaceCompared, pin: Pin, pointed: string | null): string {
  const gap = pin.missing ? ' place-gap' : '';
  return `place place-${verdict}${gap}${String(cell) === pointed ? ' place-pointed' : ''}`;
}
