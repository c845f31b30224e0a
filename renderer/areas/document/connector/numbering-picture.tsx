import type { Grid, Numbering } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';
import { type Orientation, oriented } from '../../../../boards/drawing/orientation';

/** The picture shows as much of a header as is needed to see how it is counted. */
const MOST_ALONG = 5;
const MOST_ACROSS = 3;
const STEP = 10;
const SCALE = 1.6;

interface NumberingPictureProps {
  readonly rows: number;
  readonly cols: number;
  readonly numbering: Exclude<Numbering, { scheme: 'free' }>;
  readonly orientation: Orientation;
}

/** A small header with the way of counting drawn through it, from the filled square at pin 1. */
export function NumberingPicture({ rows, cols, numbering, orientation }: NumberingPictureProps) {
  const wide = cols >= rows;
  const sample: Grid = {
    rows: Math.min(rows, wide ? MOST_ACROSS : MOST_ALONG),
    cols: Math.min(cols, wide ? MOST_ALONG : MOST_ACROSS),
    pitchMm: 1,
    numbering,
  };
  const points = gridIndex(sample).positions.map(({ cell: [row, col] }) =>
    oriented(orientation, { x: STEP * col, y: STEP * row }),
  );
  const left = Math.min(...points.map(({ x }) => x)) - STEP / 2;
  const top = Math.min(...points.map(({ y }) => y)) - STEP / 2;
  const width = Math.max(...points.map(({ x }) => x)) - left + STEP / 2;
  const height = Math.max(...points.map(({ y }) => y)) - top + STEP / 2;
  const [first] = points;
  return (
    <svg
      className="numbering-picture"
      viewBox={`${left} ${top} ${width} ${height}`}
      width={SCALE * width}
      height={SCALE * height}
      aria-hidden="true"
    >
      <polyline className="numbering-way" points={points.map(({ x, y }) => `${x},${y}`).join(' ')} />
      {points.slice(1).map(({ x, y }) => (
        <rect key={`${x} ${y}`} className="numbering-pin" x={x - 2} y={y - 2} width={4} height={4} />
      ))}
      {first && <rect className="numbering-first" x={first.x - 3.5} y={first.y - 3.5} width={7} height={7} />}
    </svg>
  );
}
