import { join } from 'node:path';
import { GROUPS } from './groups.mjs';

/** Settings of Stryker for one group, whose name stands in the environment. */
const name = process.env.LEADWRIGHT_MUTATION ?? '';

export default {
  mutate: GROUPS[name]?.modules ?? [],
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  vitest: { configFile: join('tests', 'trust', 'mutation', 'vitest.config.mjs'), related: true },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // On a busy machine tests take long; what never ends may be waited for.
  timeoutMS: 60_000,
  reporters: ['json'],
  jsonReporter: { fileName: join('out', 'trust', `mutants-${name}.json`) },
  tempDirName: join('out', 'mutation'),
  ignorePatterns: ['dist', 'out', 'release'],
  // It would read ours with an interface of the compiler that is no longer there, only to move paths in it.
  tsconfigFile: 'none',
};
