import type { Mm } from '../../base/units';
import type { Side } from '../../document/connector';
import type { Outline } from '../../document/outline';
import type { BoardPlace } from '../../document/tray';

interface Point {
  readonly xMm: Mm;
  readonly yMm: Mm;
}

/** A place of the tray in the coordinates of the board, both measured from the corner they share. */
export function onBoard({ xMm, yMm }: Point, place: BoardPlace, outline: Outline): Point {
  const { rightMm, rearMm } = fromCorner(xMm - place.xMm, yMm - place.yMm, place.rear);
  const { widthMm, depthMm } = outline;
  switch (outline.rear ?? 'top') {
    case 'top':
      return { xMm: widthMm - rightMm, yMm: rearMm };
    case 'right':
      return { xMm: widthMm - rearMm, yMm: depthMm - rightMm };
    case 'bottom':
      return { xMm: rightMm, yMm: depthMm - rearMm };
    case 'left':
      return { xMm: rearMm, yMm: rightMm };
  }
}

/** A place of the board on the tray: `onBoard` undone. */
export function onTray({ xMm, yMm }: Point, place: BoardPlace, outline: Outline): Point {
  const { widthMm, depthMm } = outline;
  switch (outline.rear ?? 'top') {
    case 'top':
      return toCorner({ rightMm: widthMm - xMm, rearMm: yMm }, place);
    case 'right':
      return toCorner({ rightMm: depthMm - yMm, rearMm: widthMm - xMm }, place);
    case 'bottom':
      return toCorner({ rightMm: xMm, rearMm: depthMm - yMm }, place);
    case 'left':
      return toCorner({ rightMm: yMm, rearMm: xMm }, place);
  }
}

/** A rectangle of the tray by its four sides. */
export interface Box {
  readonly left: Mm;
  readonly top: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
}

/** The board as it lies on the tray. */
export function boardBox(outline: Outline, place: BoardPlace): Box {
  const corners = [
    onTray({ xMm: 0, yMm: 0 }, place, outline),
    onTray({ xMm: outline.widthMm, yMm: outline.depthMm }, place, outline),
  ];
  const [xs, ys] = [corners.map(({ xMm }) => xMm), corners.map(({ yMm }) => yMm)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

interface FromCorner {
  readonly rightMm: Mm;
  readonly rearMm: Mm;
}

/** How far from the right edge and from the rear edge a step from the corner leads. */
function fromCorner(xMm: Mm, yMm: Mm, rear: Side): FromCorner {
  switch (rear) {
    case 'top':
      return { rightMm: -xMm, rearMm: yMm };
    case 'right':
      return { rightMm: -yMm, rearMm: -xMm };
    case 'bottom':
      return { rightMm: xMm, rearMm: -yMm };
    case 'left':
      return { rightMm: yMm, rearMm: xMm };
  }
}

function toCorner({ rightMm, rearMm }: FromCorner, { xMm, yMm, rear }: BoardPlace): Point {
  switch (rear) {
    case 'top':
      return { xMm: xMm - rightMm, yMm: yMm + rearMm };
    case 'right':
      return { xMm: xMm - rearMm, yMm: yMm - rightMm };
    case 'bottom':
      return { xMm: xMm + rightMm, yMm: yMm - rearMm };
    case 'left':
      return { xMm: xMm + rearMm, yMm: yMm + rightMm };
  }
}
