import { appendFileSync, mkdirSync } from 'node:fs';
import { inRoot } from '../../../electron/start/place.mjs';
import { growthOf, type Sample, workFor } from '../../soak/robot';
import type { TrustRow } from '../row';

const MINUTES = 120;
const MOST_GROWTH = 0.1;
const SEED = 20_261_126;

/** `npm run soak -- R13 --minutes=5` */
const minutes = Number(process.env.LEADWRIGHT_SOAK_MINUTES ?? MINUTES);

const HELD: readonly (readonly [string, (sample: Sample) => number])[] = [
  ['the heap', ({ heapBytes }) => heapBytes],
  ['the nodes of the page', ({ nodes }) => nodes],
  ['the listeners', ({ listeners }) => listeners],
];

/** Written as they are taken, for whoever wants to look while the robot works. */
const SAMPLES = inRoot('out', 'trust', 'R13.samples.txt');

function words({ minute, heapBytes, nodes, listeners, slowestMs }: Sample): string {
  const heap = `${(heapBytes / 1e6).toFixed(1)} MB`;
  return `minute ${minute.toFixed(1)}: ${heap}, ${nodes} nodes, ${listeners} listeners, slowest round ${(slowestMs / 1000).toFixed(1)} s`;
}

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R13',
    promise: `After hours of work the window holds no more than ${100 * MOST_GROWTH} % above what it held early on, and nothing has gone wrong`,
    target: { count: MINUTES, what: 'minutes of a robot at work' },
    long: true,
    run: async () => {
      mkdirSync(inRoot('out', 'trust'), { recursive: true });
      const { rounds, samples, complaints } = await workFor(minutes, SEED, (sample) =>
        appendFileSync(SAMPLES, `${words(sample)}\n`),
      );
      process.stdout.write(`${samples.map(words).join('\n')}\n${rounds} rounds of work\n`);
      const grown = HELD.flatMap(([what, of]) => {
        const growth = growthOf(samples, of);
        return growth > MOST_GROWTH ? [`${what} grew by ${(100 * growth).toFixed(0)} %`] : [];
      });
      return {
        tried: Math.floor(samples.at(-1)?.minute ?? 0),
        failures: [...grown, ...complaints.slice(0, 20)],
      };
    },
  },
];
