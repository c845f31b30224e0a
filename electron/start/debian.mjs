import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const FETCH_LIMIT_MS = 300_000;

/**
 * Installs a package of Debian and its kin, for root only: a machine of a test service, or a container.
 * @param {string} name
 * @param {string} purpose
 * @returns {boolean} whether it was tried
 */
export function installFromDebian(name, purpose) {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  console.log(`Installing ${name} ${purpose} …`);
  for (const args of [
    ['update', '-q'],
    ['install', '-y', '-q', '--no-install-recommends', name],
  ])
    spawnSync('/usr/bin/apt-get', args, {
      stdio: ['ignore', 'ignore', 'inherit'],
      timeout: FETCH_LIMIT_MS,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  return true;
}
