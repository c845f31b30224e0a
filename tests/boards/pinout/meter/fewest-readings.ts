import { mayBeMisread } from '../../../../boards/inference/belief';
import { USUAL_DOUBT } from '../../../../boards/pinout/meter/evidence';
import { headerOf } from '../../../../boards/pinout/meter/header';
import { chancesIn, startHeld } from '../../../../boards/pinout/meter/held';
import { IDENTIFIED } from '../../../../boards/pinout/meter/next-reading';
import { kindIndex, pinKinds } from '../../../../boards/pinout/meter/pin-kinds';
import { SINGLES, singleAnswers } from '../../../../boards/pinout/meter/single-answers';
import type { Unknown } from './simulated-runs';

/**
 * What no choice of readings at single pins can go below, for several headers of one shape that are equally
 * often met: the expected number of readings until one layout has 95 %. Two readings deep every choice and
 * every answer is tried, as if nothing but these headers ever came; from the third on all is taken as settled.
 * By the program's own model.
 */
export function fewestReadings(unknowns: readonly Unknown[]): number {
  const [first] = unknowns;
  if (first === undefined) return 0;
  const header = headerOf(first.connector);
  const { layouts, none, stray } = chancesIn(startHeld(header));
  const size = pinKinds().length;
  const many = layouts.length;
  if (layouts.some((chance) => chance >= IDENTIFIED)) return 0;
  const tables = SINGLES.map((single) => {
    const { rows, inGeneral } = singleAnswers(single);
    return rows.map((row) => row.map((chance, at) => mayBeMisread(chance, inGeneral[at] ?? 0, USUAL_DOUBT)));
  });
  const questions = header.posts.flatMap(({ label }, post) =>
    tables.map((table) => ({
      post,
      table,
      /** The answers, for each header that it may truly be. */
      real: unknowns.map(
        ({ truth }) => table[kindIndex(truth.get(label) ?? 'unknown')] ?? new Float64Array(),
      ),
    })),
  );
  type Question = (typeof questions)[number];
  const alike = unknowns.map(() => 1 / unknowns.length);

  /** The chance that an answer to the question lets one layout stand out, truths weighed as given. */
  const settles = (
    weights: Float64Array,
    astray: number,
    truths: readonly number[],
    { post, table, real }: Question,
  ): number => {
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
    for (let band = 0; band < (real[0]?.length ?? 0); band++) {
      const here = truths.reduce((sum, share, at) => sum + share * (real[at]?.[band] ?? 0), 0);
      if (here < 1e-9) continue;
      let all = 0;
      let best = 0;
      for (const kind of inPlay) {
        const share = table[kind]?.[band] ?? 0;
        all += (sums[kind] ?? 0) * share;
        best = Math.max(best, (most[kind] ?? 0) * share);
      }
      if (best >= IDENTIFIED * all) chance += here;
    }
    return chance;
  };

  const afterOne = Math.max(...questions.map((question) => settles(layouts, none, alike, question)));
  const afterTwo = Math.max(
    ...questions.map(({ post, table, real }) => {
      let chance = 0;
      for (let band = 0; band < (real[0]?.length ?? 0); band++) {
        const truths = alike.map((share, at) => share * (real[at]?.[band] ?? 0));
        const here = truths.reduce((a, b) => a + b, 0);
        // Answers as rare as this count as settled, which only lowers the bound.
        if (here < 1e-4) {
          chance += here;
          continue;
        }
        const weights = layouts.map(
          (weight, i) => weight * (table[header.kinds[post * many + i] ?? 0]?.[band] ?? 0),
        );
        let astray = 0;
        for (let kind = 0; kind < size; kind++)
          astray += none * (stray[post * size + kind] ?? 0) * (table[kind]?.[band] ?? 0);
        const all = weights.reduce((a, b) => a + b, astray);
        const done = weights.some((weight) => weight >= IDENTIFIED * all);
        chance += done ? here : Math.max(...questions.map((next) => settles(weights, astray, truths, next)));
      }
      return chance;
    }),
  );
  return 1 + (1 - afterOne) + Math.max(0, 1 - afterTwo);
}
