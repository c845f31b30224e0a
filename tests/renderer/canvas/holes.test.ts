import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import { contains } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { wired } from '../../boards/library/demo-files';

const VIEWS = TURNS.flatMap((turn) => [false, true].map((mirrored) => ({ turn, mirrored })));

/** From the rear right corner; microATX specification v1.2, distances C to F and C to H. */
const C_TO_F_MM = Math.hypot(6.2 * 25.4, 0.9 * 25.4);
const C_TO_H_MM = 6.1 * 25.4;

describe('the mounting holes on the drawing', () => {
  it.each(VIEWS)('lie on the board and keep their distances, turned by $turn, mirrored $mirrored', (view) => {
    const { holes, outline } = sceneOf(wired, { view, measure: measureByTable });
    expect(holes.map(({ label }) => label).join('')).toBe('BCFHJLMRS');
    for (const { centre } of holes) expect(contains(outline, centre)).toBe(true);
    const at = (label: string) => holes.find((hole) => hole.label === label)?.centre ?? { x: 0, y: 0 };
    const distance = (from: string, to: string) => Math.hypot(at(from).x - at(to).x, at(from).y - at(to).y);
    expect(distance('C', 'F')).toBeCloseTo(C_TO_F_MM, 6);
    expect(distance('C', 'H')).toBeCloseTo(C_TO_H_MM, 6);
  });
});
