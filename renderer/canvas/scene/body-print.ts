import { shortened } from '../../../boards/drawing/lines-of-text';
import type { Measure } from '../../../boards/drawing/measure';
import { SIZES } from '../../../boards/drawing/sizes';
import type { FlagShape, WiredPlug } from './wiring';

/** The print on the plug's own body, below its pins: where there is no room for a flag beside it. */
export function printOnBody({ shape, block }: WiredPlug, measure: Measure): FlagShape {
  const { body } = shape;
  const pin = block.pins[0];
  const free = pin ? (Math.min(block.grid.pitchY, body.height) - pin.box.height) / 2 : 0;
  const height = Math.max(0.2, Math.min(SIZES.flagText * 1.1, free - SIZES.plugInset));
  const textMm = height / 1.1;
  const box = { x: body.x, y: body.y + body.height - height, width: body.width, height };
  return {
    plug: shape.ref,
    text: shortened(shape.name, box.width - 0.1, textMm, 'mono', measure),
    full: shape.name,
    box,
    textMm,
    sign: { x: body.x + body.width, y: body.y },
    onBody: true,
  };
}
