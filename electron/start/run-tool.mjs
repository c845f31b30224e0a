import { spawnSync } from 'node:child_process';
import { inRoot, ROOT } from './place.mjs';

const TOOLS = {
  tsc: ['typescript', 'bin', 'tsc'],
  biome: ['@biomejs', 'biome', 'bin', 'biome'],
  knip: ['knip', 'bin', 'knip.js'],
  vitest: ['vitest', 'vitest.mjs'],
};

/**
 * Runs one of the installed tools with this very Node, without a shell.
 * @param {keyof typeof TOOLS} tool
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} [env]
 * @returns {boolean} whether it found nothing wrong
 */
export function runTool(tool, args, env = {}) {
  const script = inRoot('node_modules', ...TOOLS[tool]);
  const run = spawnSync(process.execPath, [script, ...args], {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  return run.status === 0;
}
