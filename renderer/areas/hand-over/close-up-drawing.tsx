import { centreOf, type Point, type Rect } from '../../../boards/drawing/geometry';
import type { CloseUp, CloseUpPin, CloseUpWire, Probe } from '../../../boards/handover/steps/close-up';

/** Where there is room: from two metres numbers are to have 32 px. At the desk a tall header may be smaller. */
const PX_PER_MM = { near: 28, nearLeast: 22, far: 38 } as const;
const TALLEST_NEAR_PX = 460;

interface CloseUpDrawingProps {
  readonly closeUp: CloseUp;
  /** What is seen, in words: for those who do not see it. */
  readonly label: string;
  /** To be read from two metres: the table beside then says the colours, in larger letters. */
  readonly large: boolean;
}

/** A header from near by as it lies: pins with their numbers, the plug over them, wires in their colours, probes. */
export function CloseUpDrawing({ closeUp, label, large }: CloseUpDrawingProps) {
  const { window: shown, outline, pinOne, walls, pins, wires, plug } = closeUp;
  return (
    <svg
      className="close-up"
      viewBox={`${shown.x} ${shown.y} ${shown.width} ${shown.height}`}
      width={shown.width * pxPerMm(shown, large)}
      role="img"
      aria-label={label}
    >
      <path className="close-up-shell" d={closed(outline)} />
      <path className="close-up-ink" d={closed(pinOne)} />
      {walls.map(([from, to]) => (
        <path key={`${from.x} ${from.y} ${to.x} ${to.y}`} className="close-up-wall" d={open([from, to])} />
      ))}
      {plug && <rect className="close-up-plug" {...plug.body} rx="0.35" />}
      {wires.map((wire) => (
        <WireOut key={open(wire.line)} wire={wire} words={!large} />
      ))}
      {pins.map((pin) => (
        <PinSquare key={pin.pin} pin={pin} />
      ))}
      {plug?.stopped.map((box) => (
        <rect key={`${box.x} ${box.y}`} className="close-up-ink" {...box} />
      ))}
      {plug?.mark && <path className="close-up-ink" d={closed(plug.mark)} />}
      {closeUp.goesOn.map((side) => (
        <path key={side} className="close-up-cut" d={edge(shown, side)} />
      ))}
    </svg>
  );
}

function pxPerMm({ height }: Rect, large: boolean): number {
  if (large) return PX_PER_MM.far;
  return Math.min(PX_PER_MM.near, Math.max(PX_PER_MM.nearLeast, TALLEST_NEAR_PX / height));
}

function PinSquare({ pin: { pin, box, missing, numberMm, probe } }: { readonly pin: CloseUpPin }) {
  const { x, y } = centreOf(box);
  return (
    <g className={missing ? 'close-up-gap' : 'close-up-pin'}>
      <rect {...box} />
      {missing && <path d={`M${box.x} ${box.y + box.height}l${box.width} ${-box.height}`} />}
      {!missing && (
        <text x={x} y={y + numberMm * 0.36} fontSize={numberMm}>
          {pin}
        </text>
      )}
      {probe && <ProbeOn box={box} probe={probe} />}
    </g>
  );
}

/** A ring round the pin: drawn through for red, broken for black, and the word in the table beside. */
function ProbeOn({ box, probe }: { readonly box: Rect; readonly probe: Probe }) {
  const { x, y } = centreOf(box);
  return <circle className={`close-up-probe close-up-probe-${probe}`} cx={x} cy={y} r={box.width * 0.78} />;
}

const WORD_MM = 0.62;

function WireOut({
  wire: { wire, line, towards },
  words,
}: {
  readonly wire: CloseUpWire;
  readonly words: boolean;
}) {
  const [, end] = line;
  const lines = [wire.colour, ...(wire.stripe ? [wire.stripe, 'stripe'] : [])];
  const sideways = towards === 'left' || towards === 'right';
  const size = Math.min(WORD_MM, sideways ? WORD_MM : 4.2 / Math.max(...lines.map((each) => each.length)));
  const x = end.x + (towards === 'right' ? 0.2 : towards === 'left' ? -0.2 : 0);
  const first = sideways
    ? end.y + size * 0.36 - ((lines.length - 1) * size * 1.1) / 2
    : towards === 'down'
      ? end.y + size * 1.05
      : end.y - size * 0.35 - (lines.length - 1) * size * 1.1;
  return (
    <g data-wire={wire.colour}>
      <path className="close-up-wire-edge" d={open(line)} />
      <path className="close-up-wire" d={open(line)} />
      {wire.stripe && <path className="close-up-stripe" data-wire={wire.stripe} d={open(line)} />}
      {words &&
        lines.map((each, at) => (
          <text
            key={each}
            className={`close-up-word close-up-word-${towards}`}
            x={x}
            y={first + at * size * 1.1}
            fontSize={size}
          >
            {each}
          </text>
        ))}
    </g>
  );
}

/** The side at which the header goes on past what is shown. */
function edge({ x, y, width, height }: Rect, side: CloseUp['goesOn'][number]): string {
  switch (side) {
    case 'left':
      return `M${x} ${y}v${height}`;
    case 'right':
      return `M${x + width} ${y}v${height}`;
    case 'top':
      return `M${x} ${y}h${width}`;
    case 'bottom':
      return `M${x} ${y + height}h${width}`;
  }
}

function open(points: readonly Point[]): string {
  return points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}

function closed(points: readonly Point[]): string {
  return `${open(points)}z`;
}
