import type { Mm } from '../../../boards/base/units';
import type { TraySide } from '../../../boards/document/tray';
import type { Point, Rect } from '../../../boards/drawing/geometry';

/** From which side a tray of some width is looked at. The sheet has everything as it is seen from the front. */
export interface Look {
  readonly side: TraySide;
  readonly widthMm: Mm;
}

/** A rectangle of the sheet, by its top left corner seen from the front. */
export interface Area {
  readonly xMm: Mm;
  readonly yMm: Mm;
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/**
 * A point of the sheet as it is looked at, and back: from behind left is right. The tray covers the same
 * rectangle from both sides, so that the view stays where it is.
 */
export function fromSide({ side, widthMm }: Look, { x, y }: Point): Point {
  // Adding nought turns minus nought into nought.
  return { x: side === 'front' ? x : widthMm - x + 0, y };
}

/** A rectangle of the sheet as the sheet has it. */
export function rectOf({ xMm, yMm, widthMm, heightMm }: Area): Rect {
  return { x: xMm, y: yMm, width: widthMm, height: heightMm };
}

/** A rectangle of the sheet as it is looked at. */
export function rectFromSide(look: Look, area: Area): Rect {
  const { x, y, width, height } = rectOf(area);
  return { ...fromSide(look, { x: look.side === 'front' ? x : x + width, y }), width, height };
}
