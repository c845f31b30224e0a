import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../boards/base/random';
import { beliefFrom, observed } from '../../../boards/inference/belief';
import { chancesOf } from '../../../boards/inference/log-space';

/** bayesjs 0.6.5, a Bayesian-network library from npm: its answer by junction tree is the reference here. */
interface Reference {
  readonly inferences: Readonly<
    Record<
      'junctionTree' | 'enumeration',
      {
        infer(
          network: Readonly<Record<string, unknown>>,
          nodes: Readonly<Record<string, string>>,
          given: Readonly<Record<string, string>>,
        ): number;
      }
    >
  >;
}
const reference: Reference = createRequire(import.meta.url)('bayesjs');

/** A hidden cause with several states and a few readings that depend on it alone. */
function randomNetwork(random: () => number) {
  const share = (many: number) => {
    const parts = Array.from({ length: many }, () => 0.02 + random());
    const sum = parts.reduce((a, b) => a + b, 0);
    return parts.map((part) => part / sum);
  };
  const states = 2 + Math.floor(random() * 4);
  const prior = share(states);
  const readings = Array.from({ length: 1 + Math.floor(random() * 4) }, () => {
    const answers = 2 + Math.floor(random() * 3);
    return { table: prior.map(() => share(answers)), seen: Math.floor(random() * answers) };
  });
  return { prior, readings };
}

const named = (shares: readonly number[]) => Object.fromEntries(shares.map((share, at) => [`s${at}`, share]));

/** A row of the library's table; its field "then" is set by name, since an object with one looks like a promise. */
function givenCause(cause: number, shares: Readonly<Record<string, number>>) {
  return Object.fromEntries([
    ['when', { cause: `s${cause}` }],
    ['then', shares],
  ]);
}

describe('a belief after several readings', () => {
  it('is that of a Bayesian-network library, on 200 random networks', () => {
    const random = seededRandom(20_260_403);
    for (let run = 0; run < 200; run++) {
      const { prior, readings } = randomNetwork(random);
      const ours = chancesOf(
        readings.reduce(
          (belief, { table, seen }) =>
            observed(
              belief,
              table.map((row) => row[seen] ?? 0),
            ),
          beliefFrom(prior),
        ),
      );
      const network = Object.fromEntries([
        ['cause', { id: 'cause', states: Object.keys(named(prior)), parents: [], cpt: named(prior) }],
        ...readings.map(({ table }, at) => [
          `r${at}`,
          {
            id: `r${at}`,
            states: Object.keys(named(table[0] ?? [])),
            parents: ['cause'],
            cpt: table.map((row, cause) => givenCause(cause, named(row))),
          },
        ]),
      ]);
      const given = Object.fromEntries(readings.map(({ seen }, at) => [`r${at}`, `s${seen}`]));
      // And by plain products, with nothing of ours.
      const plain = prior.map((p, cause) =>
        readings.reduce((w, { table, seen }) => w * (table[cause]?.[seen] ?? 0), p),
      );
      const sum = plain.reduce((a, b) => a + b, 0);
      prior.forEach((_, cause) => {
        const theirs = reference.inferences.junctionTree.infer(network, { cause: `s${cause}` }, given);
        expect(ours[cause]).toBeCloseTo(theirs, 9);
        expect(ours[cause]).toBeCloseTo((plain[cause] ?? 0) / sum, 12);
      });
    }
  });
});
