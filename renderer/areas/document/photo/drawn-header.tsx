import type { Connector, Pin } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import type { PinPoint } from '../../../../boards/pinout/photo/pointed';
import type { StraightView } from '../../../../boards/pinout/photo/straighten';

interface DrawnHeaderProps {
  readonly connector: Connector;
  readonly spots: readonly PinPoint[];
  readonly view: StraightView;
  readonly chosen: string;
  readonly px: number;
}

/** Half the side of a drawn pin, as a share of the pitch. */
const HALF_PIN = 0.3;

/** The header as it is drawn elsewhere, over the straight photo: its edge, and each pin with its number. */
export function DrawnHeader({ connector, spots, view, chosen, px }: DrawnHeaderProps) {
  const pitch = connector.grid.pitchMm * view.pxPerMm;
  const edge = edgeOf(connector, spots, pitch);
  return (
    <g>
      <path className="photo-halo" d={edge} strokeWidth={4 * px} />
      <path className="photo-edge" d={edge} strokeWidth={2 * px} />
      {spots.map((spot) => (
        <DrawnPin
          key={spot.pin}
          spot={spot}
          pin={pinOf(connector, spot.pin)}
          half={HALF_PIN * pitch}
          chosen={spot.pin === chosen}
          px={px}
        />
      ))}
    </g>
  );
}

interface DrawnPinProps {
  readonly spot: PinPoint;
  readonly pin: Pin;
  readonly half: number;
  readonly chosen: boolean;
  readonly px: number;
}

function DrawnPin({ spot: { pin: label, xPx, yPx }, pin, half, chosen, px }: DrawnPinProps) {
  const square = { x: xPx - half, y: yPx - half, width: 2 * half, height: 2 * half };
  const said = pin.missing === true || pin.signal !== undefined || pin.name !== undefined;
  return (
    <g
      className="photo-pin"
      data-pin={label}
      data-chosen={chosen || undefined}
      data-said={said || undefined}
      data-missing={pin.missing}
    >
      <rect className="photo-halo" {...square} strokeWidth={(chosen ? 7 : 4) * px} />
      <rect
        className="photo-pin-square"
        {...square}
        strokeWidth={(chosen ? 4 : 2) * px}
        strokeDasharray={pin.missing ? `${5 * px} ${4 * px}` : undefined}
      />
      {pin.missing && (
        <path
          className="photo-edge"
          d={`M${xPx - half} ${yPx + half}L${xPx + half} ${yPx - half}`}
          strokeWidth={2 * px}
        />
      )}
      <text
        className="photo-number"
        x={xPx}
        y={yPx}
        fontSize={Math.min(half, Math.max(13 * px, half * 0.7))}
        strokeWidth={4 * px}
      >
        {label}
      </text>
    </g>
  );
}

/** The outline half a pitch round the outermost pins, with the corner of the first pin cut. */
function edgeOf({ grid }: Connector, spots: readonly PinPoint[], pitch: number): string {
  const half = pitch / 2;
  const [left, right] = [Math.min(...spots.map(({ xPx }) => xPx)), Math.max(...spots.map(({ xPx }) => xPx))];
  const [top, bottom] = [Math.min(...spots.map(({ yPx }) => yPx)), Math.max(...spots.map(({ yPx }) => yPx))];
  const corners = [
    [left - half, top - half],
    [right + half, top - half],
    [right + half, bottom + half],
    [left - half, bottom + half],
  ] as const;
  const first = gridIndex(grid).positions[0]?.label;
  const spot = spots.find(({ pin }) => pin === first);
  const cut = pitch / 4;
  const points = corners.flatMap(([x, y]) => {
    const here = spot && Math.abs(spot.xPx - x) < pitch && Math.abs(spot.yPx - y) < pitch;
    if (!here) return [`${x} ${y}`];
    const [inX, inY] = [x < spot.xPx ? cut : -cut, y < spot.yPx ? cut : -cut];
    // Going round, a corner is met along one side and left along the other.
    const alongY = `${x} ${y + inY}`;
    const alongX = `${x + inX} ${y}`;
    return inX === inY ? [alongY, alongX] : [alongX, alongY];
  });
  return `M${points.join('L')}Z`;
}
