import { mayBeMisread } from '../../../../boards/inference/belief';
import { USUAL_DOUBT } from '../../../../boards/pinout/meter/evidence';
import { headerOf } from '../../../../boards/pinout/meter/header';
import { chancesIn, startHeld } from '../../../../boards/pinout/meter/held';
import { IDENTIFIED } from '../../../../boards/pinout/meter/identify';
import { kindIndex, pinKinds } from '../../../../boards/pinout/meter/pin-kinds';
import { SINGLES, singleAnswers } from '../../../../boards/pinout/meter/single-answers';
import type { Unknown } from './simulated-runs';

/**
 * What no choice of readings can go below: the expected number of readings at single pins until one layout
 * has 95 %, for somebody who knows the truth and chooses only to prove it. Two readings deep every choice and
 * every answer is tried; from the third on it is assumed to be proved. By the program's own model.
 */
export function fewestReadings({ connector, truth }: Unknown): number {
  const header = headerOf(connector);
  const { layouts, none, stray } = chancesIn(startHeld(header));
  const size = pinKinds().length;
  const many = layouts.length;
  const top = layouts.reduce((a, b) => Math.max(a, b), 0);
  if (top >= IDENTIFIED) return 0;
  const rows = SINGLES.map((single) => {
    const { rows: all, inGeneral } = singleAnswers(single);
    return all.map((row) => row.map((chance, at) => mayBeMisread(chance, inGeneral[at] ?? 0, USUAL_DOUBT)));
  });
  const questions = header.posts.flatMap(({ label }, post) =>
    rows.map((table) => ({
      post,
      table,
      truth: table[kindIndex(truth.get(label) ?? 'unknown')] ?? new Float64Array(),
    })),
  );
  type Question = (typeof questions)[number];

  /** The chance, given the truth, that an answer to the question lets one layout stand out. */
  const settles = (weights: Float64Array, astray: number, { post, table, truth: real }: Question): number => {
    const sums = new Float64Array(size);
    const most = new Float64Array(size);
    for (let i = 0; i < many; i++) {
      const kind = header.kinds[post * many + i] ?? 0;
      const weight = weights[i] ?? 0;
      sums[kind] = (sums[kind] ?? 0) + weight;
      if (weight > (most[kind] ?? 0)) most[kind] = weight;
    }
    for (let kind = 0; kind < size; kind++)
      sums[kind] = (sums[kind] ?? 0) + astray * (stray[post * size + kind] ?? 0);
    const inPlay = [...sums.keys()].filter((kind) => (sums[kind] ?? 0) > 1e-12);
    let chance = 0;
    for (let band = 0; band < real.length; band++) {
      if ((real[band] ?? 0) < 1e-9) continue;
      let all = 0;
      let best = 0;
      for (const kind of inPlay) {
        const share = table[kind]?.[band] ?? 0;
        all += (sums[kind] ?? 0) * share;
        best = Math.max(best, (most[kind] ?? 0) * share);
      }
      if (best >= IDENTIFIED * all) chance += real[band] ?? 0;
    }
    return chance;
  };

  const afterOne = Math.max(...questions.map((question) => settles(layouts, none, question)));
  const afterTwo = Math.max(
    ...questions.map(({ post, table, truth: real }) => {
      let chance = 0;
      for (let band = 0; band < real.length; band++) {
        if ((real[band] ?? 0) < 1e-4) continue;
        const weights = layouts.map(
          (weight, i) => weight * (table[header.kinds[post * many + i] ?? 0]?.[band] ?? 0),
        );
        let astray = 0;
        for (let kind = 0; kind < size; kind++)
          astray += none * (stray[post * size + kind] ?? 0) * (table[kind]?.[band] ?? 0);
        const all = weights.reduce((a, b) => a + b, astray);
        const done = weights.reduce((a, b) => Math.max(a, b), 0) >= IDENTIFIED * all;
        chance +=
          (real[band] ?? 0) *
          (done ? 1 : Math.max(...questions.map((next) => settles(weights, astray, next))));
      }
      return chance;
    }),
  );
  return 1 + (1 - afterOne) + Math.max(0, 1 - afterTwo);
}
