import { killPages } from '../../soak/killed-pages';
import type { TrustRow } from '../row';
import { runTests } from '../run-tests';
import { seedOfToday } from '../seed-of-today';

const CRASHES = 50;

/** `npm run soak -- R14 --seed=1029850`: a page that failed, alone. */
const one = process.env.LEADWRIGHT_SOAK_SEED;

export const ROWS: readonly TrustRow[] = [
  {
    id: 'R14',
    promise:
      'A page that is edited without end and whose process is killed at any moment is offered again with every edit older than five seconds; a failure of the window leaves a report with nothing private in it',
    target: { count: CRASHES, what: 'killed pages' },
    long: true,
    run: async () => {
      const first = seedOfToday() * CRASHES;
      const seeds =
        one === undefined ? Array.from({ length: CRASHES }, (_, at) => first + at) : [Number(one)];
      const killed = await killPages(seeds, (words) => void process.stdout.write(`${words}\n`));
      const reports = await runTests('e2e', ['tests/e2e/broken-down.test.ts']);
      return { tried: killed.tried, failures: [...killed.failures, ...reports.failures] };
    },
  },
];
