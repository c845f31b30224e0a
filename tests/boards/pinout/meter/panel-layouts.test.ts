import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../boards/base/random';
import { ACROSS_SHARE, ALONE, BLOCKS } from '../../../../boards/pinout/meter/panel-blocks';
import { PanelLayouts } from '../../../../boards/pinout/meter/panel-layouts';
import { postsOf } from '../../../../boards/pinout/meter/posts';
import { grid, posts } from '../../fixtures/bench';

function header(rows: number, cols: number, missing: readonly number[] = []) {
  const pins = Array.from({ length: rows * cols }, (_, at) =>
    missing.includes(at + 1) ? null : ('unknown' as const),
  );
  const connector = posts('panel', grid(rows, cols), { pins });
  return {
    rows,
    cols,
    posts: postsOf(connector),
    panels: new PanelLayouts(connector.grid, postsOf(connector)),
  };
}

/** Every panel there is, the slow and obvious way: any post left over gets any block that can lie on it anyhow. */
function everyPanel({ rows, cols, posts: standing }: ReturnType<typeof header>): ReadonlyMap<string, number> {
  const at = new Map(standing.map(({ cell: [row, col] }, index) => [`${row},${col}`, index]));
  const found = new Map<string, number>();
  const fill = (signals: readonly (string | undefined)[], jobs: readonly number[], odds: number): void => {
    const post = signals.indexOf(undefined);
    if (post < 0) {
      if (jobs.length > 0) found.set(signals.join(), (found.get(signals.join()) ?? 0) + odds);
      return;
    }
    for (const [signal, alone] of ALONE) fill(signals.with(post, signal), jobs, odds * alone);
    const [row = 0, col = 0] = standing[post]?.cell ?? [];
    for (const block of BLOCKS.filter(({ job }) => !jobs.includes(job)))
      for (const [down, right] of rows > 1 && block.signals.length === 2
        ? [
            [0, 1],
            [1, 0],
          ]
        : [[0, 1]])
        for (let lead = 0; lead < block.signals.length; lead++) {
          const cells = block.signals.map((_, n) => [
            row + (n - lead) * (down ?? 0),
            col + (n - lead) * (right ?? 0),
          ]);
          if (cells.some(([r = -1, c = -1]) => r < 0 || c < 0 || r >= rows || c >= cols)) continue;
          const hit = cells.map((cell) => at.get(cell.join()));
          if (
            hit.some((one, n) =>
              one === undefined ? block.signals[n] !== 'gap' : signals[one] !== undefined,
            )
          )
            continue;
          const next = [...signals];
          hit.forEach((one, n) => {
            if (one !== undefined)
              next[one] = block.signals[n] === 'gap' ? 'no-connection' : block.signals[n];
          });
          const lies = rows > 1 && block.signals.length === 2 ? (down ? ACROSS_SHARE : 1 - ACROSS_SHARE) : 1;
          fill(next, [...jobs, block.job], odds * block.odds * lies);
        }
  };
  fill(
    standing.map(() => undefined),
    [],
    1,
  );
  return found;
}

describe.each([
  [1, 2, []],
  [1, 4, []],
  [1, 4, [2]],
  [2, 2, []],
  [2, 3, [6]],
])('panels on %i × %i posts without %j', (rows, cols, missing) => {
  const one = header(rows, cols, missing);
  const every = everyPanel(one);

  it('are each of them, with their odds, and add up without being listed', () => {
    const usual = new Map<string, number>();
    for (const { signals, odds } of one.panels.usual(1e6))
      usual.set(signals.join(), (usual.get(signals.join()) ?? 0) + odds);
    expect([...usual.keys()].sort()).toEqual([...every.keys()].sort());
    for (const [key, odds] of every) expect(usual.get(key)).toBeCloseTo(odds, 9);
    const all = [...every.values()].reduce((a, b) => a + b, 0);
    expect(one.panels.weighed(() => 1).total / all).toBeCloseTo(1, 9);
  });

  it('are drawn as often as they are probable, after readings too', () => {
    const worth = (post: number, signal: string) => 1 / (1 + ((post * 7 + signal.length) % 5));
    const weighed = one.panels.weighed(worth);
    const weights = new Map(
      [...every].map(([key, odds]) => [
        key,
        key.split(',').reduce((w, signal, post) => w * worth(post, signal), odds),
      ]),
    );
    const all = [...weights.values()].reduce((a, b) => a + b, 0);
    expect(weighed.total / all).toBeCloseTo(1, 9);
    const random = seededRandom(20_260_502);
    const draws = 4_000;
    const times = new Map<string, number>();
    for (let i = 0; i < draws; i++) {
      const key = one.panels.drawn(weighed, random)?.signals.join() ?? '';
      times.set(key, (times.get(key) ?? 0) + 1);
    }
    expect([...times.keys()].filter((key) => !every.has(key))).toEqual([]);
    for (const [key, weight] of weights) {
      const share = weight / all;
      // Five standard deviations of a count, and a few for the rare ones.
      const off = 5 * Math.sqrt((share * (1 - share)) / draws) + 3 / draws;
      expect(Math.abs((times.get(key) ?? 0) / draws - share)).toBeLessThan(off);
    }
  });
});
