import type { Lead, Plug } from '../../../boards/document/lead';
import { type Hole, holesOf } from '../../words/plug-words';

const CELL = 14;
const EDGE = 3;
const SIDE = 8;

interface PlugDrawingProps {
  readonly lead: Lead;
  readonly plug: Plug;
  /** Pixels for one hole at the base type size. */
  readonly cellPx?: number;
}

/** A plug from above, wires towards you: holes, stops, the mark, the colours. The words beside it say the same. */
export function PlugDrawing({ lead, plug, cellPx = CELL }: PlugDrawingProps) {
  const { rows, cols } = plug.grid;
  const width = cols * CELL + 2 * EDGE;
  const height = rows * CELL + 2 * EDGE;
  const scale = cellPx / CELL;
  return (
    <svg
      className="plug-drawing"
      viewBox={`0 0 ${width} ${height}`}
      width={width * scale}
      height={height * scale}
      aria-hidden="true"
    >
      <rect className="plug-body" x="1" y="1" width={width - 2} height={height - 2} rx="3" />
      {holesOf(lead, plug).map((hole) => (
        <HoleDrawing key={hole.label} hole={hole} marked={plug.mark === hole.label} />
      ))}
    </svg>
  );
}

function HoleDrawing({ hole, marked }: { readonly hole: Hole; readonly marked: boolean }) {
  const x = EDGE + hole.col * CELL + (CELL - SIDE) / 2;
  const y = EDGE + hole.row * CELL + (CELL - SIDE) / 2;
  const { wire } = hole;
  return (
    <g>
      <rect
        className={`plug-hole plug-hole-${hole.state}`}
        data-wire={wire?.colour}
        x={x}
        y={y}
        width={SIDE}
        height={SIDE}
        rx="1"
      />
      {wire?.stripe && (
        <path
          className="plug-stripe"
          data-wire={wire.stripe}
          d={`M${x + 1} ${y + SIDE - 1}l${SIDE - 2} ${2 - SIDE}`}
        />
      )}
      {hole.state === 'blocked' && <path className="plug-stop" d={`M${x + 2} ${y + 2}l4 4m0 -4l-4 4`} />}
      {marked && <path className="plug-mark" d={`M${x - 2} ${y - 2.5}h5l-5 5z`} />}
    </g>
  );
}
