import { describe, expect, it } from 'vitest';
import type { Mm } from '../../../boards/base/units';
import type { Opening } from '../../../boards/document/tray';
import { fillOf, overfillOf } from '../../../boards/routing/fill/fill';
import { openingUseWords } from '../../../renderer/words/cable-words';

const HOLE: Opening = { id: 'hole', xMm: 0, yMm: 0, widthMm: 20, heightMm: 20, edge: 'grommet' };

function saidOf(...diametersMm: readonly Mm[]): string {
  const over = overfillOf(HOLE, diametersMm);
  const names = diametersMm.map((diameter) => `${diameter} mm`);
  const use = { opening: HOLE, runs: names, fill: fillOf(HOLE, diametersMm), ...(over && { over }) };
  return openingUseWords(use, names).replaceAll('\u00a0', ' ');
}

describe('what lies in an opening of 20 by 20 mm', () => {
  it('is told with the share that so many may fill', () => {
    expect(saidOf()).toBe('empty');
    expect(saidOf(9)).toBe('16 % of the 53 % that 1 cable may fill: 9 mm');
    expect(saidOf(8, 8, 5)).toBe('30 % of the 40 % that 3 cables may fill: 8 mm, 8 mm and 5 mm');
  });

  it('is told as too much by the rule that it breaks, and never as no more than that allows', () => {
    // Areas by hand, of 400 mm²: 63.62 for 9 mm, 3.14 for 2 mm, 50.27 for 8 mm, 314.16 for 20 mm.
    expect(saidOf(9, 9, 2)).toBe(
      'too much, 32 % by the two thickest alone of the 31 % that 2 cables may fill: 9 mm, 9 mm and 2 mm',
    );
    expect(saidOf(8.9, 8.9)).toBe('too much, 32 % of the 31 % that 2 cables may fill: 8.9 mm and 8.9 mm');
    expect(saidOf(8, 8, 8, 4)).toBe(
      'too much, 41 % of the 40 % that 4 cables may fill: 8 mm, 8 mm, 8 mm and 4 mm',
    );
    expect(saidOf(20)).toBe('too much, 79 % of the 53 % that 1 cable may fill: 20 mm');
  });
});
