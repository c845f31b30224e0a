import type { Build } from '../../../boards/document/build';
import type { KnownStandoffs } from '../../../boards/handover/steps/standoff-lines';
import { planKey, type StandoffMark, standoffPlan } from '../../../boards/handover/steps/standoff-plan';

const PX_PER_MM = 1.6;
const MARK_MM = 5;
const LETTER_MM = 9;
/** Round the board, for marks at its edge and their letters. */
const ROUND_MM = 14;

interface StandoffDrawingProps {
  readonly build: Build;
  readonly known: KnownStandoffs;
}

/** The board over the standoffs of the tray: which places get one, which stay empty. */
export function StandoffDrawing({ build, known }: StandoffDrawingProps) {
  const plan = standoffPlan(build, known);
  if (plan === undefined) return null;
  const { board, rear, marks } = plan;
  const [from, to] = rear;
  const [width, height] = [board.width + 2 * ROUND_MM, board.height + 2 * ROUND_MM];
  return (
    <figure className="step-figure">
      <svg
        className="standoff-drawing"
        viewBox={`${board.x - ROUND_MM} ${board.y - ROUND_MM} ${width} ${height}`}
        width={width * PX_PER_MM}
        role="img"
        aria-label="The board over the standoffs of the tray, as the lines say"
      >
        <rect className="standoff-board" {...board} />
        <path className="standoff-rear" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
        {marks.map((mark) => (
          <Mark key={mark.id} mark={mark} left={mark.at.x > board.x + board.width - 2 * ROUND_MM} />
        ))}
      </svg>
      <figcaption className="soft">{planKey(marks)}</figcaption>
    </figure>
  );
}

interface MarkProps {
  readonly mark: StandoffMark;
  /** Whether its letter stands on the left, because the edge is near. */
  readonly left: boolean;
}

function Mark({ mark: { kind, at, label }, left }: MarkProps) {
  const { x, y } = at;
  const half = MARK_MM * 0.7;
  return (
    <g className={`standoff-mark standoff-${kind}`}>
      <circle cx={x} cy={y} r={MARK_MM} />
      {kind === 'empty' && (
        <path
          d={`M${x - half} ${y - half}l${2 * half} ${2 * half}M${x - half} ${y + half}l${2 * half} ${-2 * half}`}
        />
      )}
      {kind === 'off' && (
        <text x={x} y={y + LETTER_MM * 0.3} fontSize={LETTER_MM * 0.9} textAnchor="middle">
          ?
        </text>
      )}
      <text
        x={left ? x - MARK_MM - 2 : x + MARK_MM + 2}
        y={y + LETTER_MM * 0.35}
        fontSize={LETTER_MM}
        textAnchor={left ? 'end' : 'start'}
      >
        {label}
      </text>
    </g>
  );
}
