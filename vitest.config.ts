import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'core',
          // Property tests have no clock of their own; a busy machine must not fail them.
          testTimeout: 60_000,
          environment: 'node',
          isolate: false,
          include: [
            'tests/{boards,renderer,electron,reference,strangers,trust}/**/*.test.ts',
            'tests/architecture.test.ts',
          ],
        },
      },
      {
        test: {
          // Apart from the core: it starts programs of its own, compiles, and takes its time.
          name: 'faults',
          testTimeout: 120_000,
          environment: 'node',
          include: ['tests/faults/**/*.test.ts'],
        },
      },
      {
        test: {
          // Not part of `npm test`: every promise in its full size, one row after the other.
          name: 'trust',
          environment: 'node',
          fileParallelism: false,
          include: ['tests/trust/run-rows.ts'],
        },
      },
      {
        test: {
          name: 'e2e',
          environment: 'node',
          fileParallelism: false,
          globalSetup: 'tests/e2e/build-first.ts',
          testTimeout: 60_000,
          hookTimeout: 60_000,
          // A busy machine draws late; what is waited for has to come, not to come at once.
          expect: { poll: { timeout: 15_000 } },
          include: ['tests/e2e/**/*.test.ts'],
        },
      },
    ],
  },
});
