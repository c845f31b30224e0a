import { spawnSync } from 'node:child_process';
import { inRoot, ROOT } from '../../electron/start/place.mjs';

/**
 * Runs the end-to-end tests in a network of their own, which holds this machine and nothing else: whatever
 * needs more fails. Linux only, and where `unshare` may make such a network.
 *
 * node tests/e2e/alone.mjs [what vitest takes]
 */
const UNSHARE = ['-rn', 'sh', '-c'];
/** A new network has its loopback switched off. */
const UP = 'ip link set lo up';

const probe = spawnSync('unshare', [...UNSHARE, UP], { encoding: 'utf8' });
if (probe.status !== 0) {
  const why = probe.error?.message ?? probe.stderr.trim();
  console.log(`End-to-end tests without a network: not run, ${why}.`);
  process.exit(3);
}
const vitest = inRoot('node_modules', 'vitest', 'vitest.mjs');
const run = spawnSync(
  'unshare',
  [
    ...UNSHARE,
    `${UP} && exec "$@"`,
    'sh',
    process.execPath,
    vitest,
    'run',
    '--project',
    'e2e',
    ...process.argv.slice(2),
  ],
  { cwd: ROOT, stdio: 'inherit' },
);
process.exitCode = run.status ?? 1;
