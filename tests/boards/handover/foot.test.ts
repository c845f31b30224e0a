import { describe, expect, it } from 'vitest';
import { footOf } from '../../../boards/handover/page/foot';
import { MARGIN_MM, PAPERS } from '../../../boards/handover/page/paper';
import { lyingWords } from '../../../boards/handover/pinout/lying-words';
import { ANY_LETTERS, DAY } from './papers';

const WHAT = lyingWords({ turn: 180, mirrored: true });

function textsOf(name: string) {
  const foot = footOf(PAPERS.a4, { name, what: WHAT }, DAY, ANY_LETTERS.measure);
  return foot.draw(3, 12).flatMap((drawn) => (drawn.kind === 'text' ? [drawn] : []));
}

describe('the foot of a page', () => {
  it('says how the board lies, when it was printed, and what it belongs to', () => {
    expect(textsOf('Bench 4').map(({ text }) => text)).toContain(
      `Mirrored, then turned by half · printed ${DAY} · Bench 4`,
    );
  });

  it('shortens a name that is too long with a sign, and never how the board lies', () => {
    for (const name of ['Name of a machine '.repeat(7), 'n'.repeat(115)]) {
      const line = textsOf(name).find(({ text }) => text.includes('printed'));
      expect(line?.text).toMatch(/^Mirrored, then turned by half · printed .*…$/);
      const end = textsOf(name).find(({ anchor }) => anchor === 'end');
      const right = PAPERS.a4.widthMm - MARGIN_MM - (end?.widthMm ?? 0);
      expect(MARGIN_MM + (line?.widthMm ?? Number.POSITIVE_INFINITY)).toBeLessThan(right);
    }
  });
});
