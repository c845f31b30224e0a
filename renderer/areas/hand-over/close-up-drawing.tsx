import { centreOf, type Point, type Rect } from '../../../boards/drawing/geometry';
import type { CloseUp, CloseUpPin, CloseUpWire, Probe } from '../../../boards/handover/steps/close-up';

/** As large as it is drawn where there is room: its numbers are then 38 px. */
const PX_PER_MM = 44;

interface CloseUpDrawingProps {
  readonly closeUp: CloseUp;
  /** What is seen, in words: for those who do not see it. */
  readonly label: string;
  /** Colours beside the wires in words; off where letters have to be large, and the table says them. */
  readonly words: boolean;
}

/** A header from near by as it lies: pins with their numbers, the plug over them, wires in their colours, probes. */
export function CloseUpDrawing({ closeUp, label, words }: CloseUpDrawingProps) {
  const { window: shown, outline, pinOne, walls, pins, wires, plug } = closeUp;
  const cut = new Set(closeUp.goesOn);
  return (
    <svg
      className="close-up"
      viewBox={`${shown.x} ${shown.y} ${shown.width} ${shown.height}`}
      width={shown.width * PX_PER_MM}
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
        <WireOut key={open(wire.line)} wire={wire} words={words} />
      ))}
      {pins.map((pin) => (
        <PinSquare key={pin.pin} pin={pin} />
      ))}
      {plug?.stopped.map((box) => (
        <rect key={`${box.x} ${box.y}`} className="close-up-ink" {...box} />
      ))}
      {plug?.mark && <path className="close-up-ink" d={closed(plug.mark)} />}
      {cut.has('left') && <CutEdge shown={shown} x={shown.x} />}
      {cut.has('right') && <CutEdge shown={shown} x={shown.x + shown.width} />}
    </svg>
  );
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
  const lines = [wire.colour, ...(wire.stripe ? [`${wire.stripe} stripe`] : [])];
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

/** Where the header goes on past what is shown. */
function CutEdge({ shown, x }: { readonly shown: Rect; readonly x: number }) {
  return <path className="close-up-cut" d={`M${x} ${shown.y}v${shown.height}`} />;
}

function open(points: readonly Point[]): string {
  return points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join('');
}

function closed(points: readonly Point[]): string {
  return `${open(points)}z`;
}
