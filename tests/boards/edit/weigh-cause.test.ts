import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const machine = bench([posts('panel', grid(2, 5))], []);
const weigh = (cause: string, factor: number | null): Command => ({
  name: 'weigh-cause',
  args: { cause, factor },
});

describe('how often a cause of trouble is met at this bench', () => {
  it('is kept once for each cause, and is as usual again without a factor', () => {
    const twice = done(machine, weigh('coin-cell', 3), weigh('memory', 0.5), weigh('coin-cell', 4));
    expect(twice.priors).toEqual([
      { cause: 'memory', factor: 0.5 },
      { cause: 'coin-cell', factor: 4 },
    ]);
    expect(done(twice, weigh('memory', 0.5))).toBe(twice);
    expect(done(twice, weigh('memory', null), weigh('coin-cell', null))).toEqual(machine);
    expect(done(machine, weigh('memory', null))).toBe(machine);
  });

  it('refuses a cause that there is not, and a factor that would be a yes or a no', () => {
    expect(toldNo(machine, weigh('coin-cel', 2))).toBe(
      'There is no cause “coin-cel”. Name one that a suspect can have. Perhaps “coin-cell” is meant.',
    );
    for (const factor of [0, -1, 0.009, 101])
      expect(toldNo(machine, weigh('memory', factor))).toMatch(/^“factor” cannot be kept/);
  });

  it('opens with a cause that this version does not know, and not with a factor of 0', () => {
    const old = { ...machine, priors: [{ cause: 'elephants', factor: 2 }] };
    expect(parseDocument(JSON.stringify(old))).toMatchObject({ ok: true });
    const wrong = { ...machine, priors: [{ cause: 'memory', factor: 0 }] };
    expect(parseDocument(JSON.stringify(wrong))).toMatchObject({
      ok: false,
      problem: { code: 'invalid', fields: [{ path: 'priors[0].factor' }] },
    });
  });

  it('is called by what it says', () => {
    expect(labelOf(machine, weigh('coin-cell', 3))).toBe('Count as met more often: the coin cell');
    expect(labelOf(machine, weigh('coin-cell', 0.1))).toBe('Count as met much less often: the coin cell');
    expect(labelOf(machine, weigh('coin-cell', null))).toBe('Count as met as usual: the coin cell');
  });
});
