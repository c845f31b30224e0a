import type { Pin } from '../../document/connector';
import type { PinShape } from '../../drawing/block';
import { centreOf, type Rect } from '../../drawing/geometry';
import type { Measure } from '../../drawing/measure';
import type { Drawn } from '../page/page';
import { halfCapital, textAt } from '../page/type';
import { pen } from './drawing-scale';
import { disputedSign, doubtSign } from './signs';
import { isDisputed, isDoubtful } from './sureness';

/** A pin as a square with its number; where none stands, a dashed square with a stroke. */
export function drawPin(
  { box, missing, numberMm, pin: label }: PinShape,
  pin: Pin,
  measure: Measure,
): readonly Drawn[] {
  if (missing) return missingPin(box, label, numberMm * 0.85, measure);
  const centre = centreOf(box);
  const number = textAt(
    label,
    { x: centre.x, y: centre.y + halfCapital(numberMm) },
    { face: 'mono', sizeMm: numberMm, ink: 'ink' },
    measure,
    'middle',
  );
  return [
    { kind: 'rect', box, paint: { fill: 'paper', stroke: { ink: 'ink', widthMm: pen(0.35) } } },
    number,
    ...(isDoubtful(pin)
      ? doubtSign({ x: box.x + box.width, y: box.y }, Math.min(pen(1.5), box.width * 0.27), measure)
      : []),
    ...(isDisputed(pin)
      ? disputedSign({ x: box.x + box.width, y: box.y + box.height }, Math.min(pen(2.2), box.width * 0.4))
      : []),
  ];
}

/** Its number stands in the corner that the stroke leaves free. */
function missingPin(box: Rect, label: string, sizeMm: number, measure: Measure): readonly Drawn[] {
  const { x, y, width, height } = box;
  const small = Math.min(sizeMm, width * 0.42);
  return [
    {
      kind: 'rect',
      box,
      paint: { fill: 'faint', stroke: { ink: 'soft', widthMm: pen(0.3), dashMm: width / 7 } },
    },
    {
      kind: 'line',
      from: { x, y: y + height },
      to: { x: x + width, y },
      stroke: { ink: 'soft', widthMm: pen(0.3) },
    },
    textAt(
      label,
      { x: x + width * 0.07, y: y + width * 0.07 + 2 * halfCapital(small) },
      { face: 'mono', sizeMm: small, ink: 'soft' },
      measure,
    ),
  ];
}
