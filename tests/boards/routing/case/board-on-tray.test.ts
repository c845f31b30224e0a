import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES } from '../../../../boards/document/connector';
import { onBoard, onTray } from '../../../../boards/routing/case/board-on-tray';

const side = fc.constantFrom(...SIDES);
const mm = fc.integer({ min: -500, max: 500 });

describe('a board laid on a tray', () => {
  it('has its rear right corner where the tray says, whichever way both are drawn', () => {
    // Published board sizes share this corner (microATX specification v1.2, figure 3).
    const outline = { widthMm: 244, depthMm: 200 } as const;
    const corners = {
      top: { xMm: 244, yMm: 0 },
      right: { xMm: 244, yMm: 200 },
      bottom: { xMm: 0, yMm: 200 },
      left: { xMm: 0, yMm: 0 },
    };
    for (const rear of SIDES)
      for (const onCase of SIDES)
        expect(onTray(corners[rear], { xMm: 30, yMm: 40, rear: onCase }, { ...outline, rear })).toEqual({
          xMm: 30,
          yMm: 40,
        });
  });

  it('keeps distances, and is found again from the tray', () => {
    fc.assert(
      fc.property(
        fc.tuple(mm, mm, mm, mm, side, side),
        fc.tuple(mm, mm),
        ([x, y, cornerX, cornerY, rear, onCase], [otherX, otherY]) => {
          const outline = { widthMm: 305, depthMm: 244, rear };
          const place = { xMm: cornerX, yMm: cornerY, rear: onCase };
          const [one, other] = [
            { xMm: x, yMm: y },
            { xMm: otherX, yMm: otherY },
          ].map((point) => ({ point, laid: onTray(point, place, outline) }));
          if (!one || !other) throw new Error('Two points');
          const back = onBoard(one.laid, place, outline);
          expect(Math.hypot(back.xMm - x, back.yMm - y)).toBe(0);
          expect(Math.hypot(one.laid.xMm - other.laid.xMm, one.laid.yMm - other.laid.yMm)).toBeCloseTo(
            Math.hypot(x - otherX, y - otherY),
            9,
          );
        },
      ),
    );
  });
});
