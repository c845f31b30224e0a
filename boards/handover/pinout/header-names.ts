import type { Block } from '../../drawing/block';
import type { Measure } from '../../drawing/measure';
import type { NameShape } from '../../drawing/names';
import { SIZES } from '../../drawing/sizes';
import type { Drawn } from '../page/page';
import { halfCapital, textAt } from '../page/type';
import { pen } from './drawing-scale';

/** The names of some pins, outside the shell, each with a line that leads to its pin. */
export function drawNames(block: Block, pins: ReadonlySet<string>, measure: Measure): readonly Drawn[] {
  const leaders = block.names.flatMap((name, index): readonly Drawn[] => {
    const leader = block.leaders[index];
    if (!leader || !pins.has(name.pin)) return [];
    return [{ kind: 'line', from: leader[0], to: leader[1], stroke: { ink: 'line', widthMm: pen(0.2) } }];
  });
  const names = block.names.filter(({ pin }) => pins.has(pin));
  return [...leaders, ...names.flatMap((name) => drawName(name, measure))];
}

const ANCHORS = { start: 'start', center: 'middle', end: 'end' } as const;

/** Lines of text in the box that was found for them. */
export function drawName(
  { box, lines, sizeMm, upright, align }: NameShape,
  measure: Measure,
): readonly Drawn[] {
  const type = { face: 'text', sizeMm, ink: 'ink' } as const;
  const drop = halfCapital(sizeMm);
  return lines.map((line, index): Drawn => {
    const middle = (index + 0.5) * sizeMm * SIZES.lineHeight;
    if (upright) {
      const y = align === 'start' ? box.y + box.height : box.y;
      return {
        ...textAt(line, { x: box.x + middle + drop, y }, type, measure, ANCHORS[align]),
        upright: true,
      };
    }
    const x = align === 'start' ? box.x : align === 'end' ? box.x + box.width : box.x + box.width / 2;
    return textAt(line, { x, y: box.y + middle + drop }, type, measure, ANCHORS[align]);
  });
}
