import { defineConfig } from 'vitest/config';
import { GROUPS } from './groups.mjs';

/** Stryker asks for threads, in which nobody can lay down the powers of root, as some tests do. */
const inProcesses = {
  name: 'in-processes',
  configureVitest(/** @type {import('vitest/node').VitestPluginContext} */ { project, vitest }) {
    project.config.pool = 'forks';
    vitest.config.pool = 'forks';
  },
};

export default defineConfig({
  plugins: [inProcesses],
  test: {
    testTimeout: 60_000,
    environment: 'node',
    isolate: false,
    include: [...(GROUPS[process.env.LEADWRIGHT_MUTATION ?? '']?.tests ?? [])],
  },
});
