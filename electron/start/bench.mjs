import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { build } from './build.mjs';
import { ensureReady } from './ensure.mjs';
import { ensureBrowser } from './ensure-browser.mjs';
import { inRoot, ROOT } from './place.mjs';

ensureReady();
await build(['page', 'door', 'cli']);

const folder = inRoot('tests', 'bench');
const benches = existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.mjs')) : [];
if (benches.length === 0) {
  console.error('There is nothing to measure in tests/bench.');
  process.exitCode = 1;
}
// One after the other: they measure time, and would be in each other's way.
const env = { ...process.env, LEADWRIGHT_BROWSER: ensureBrowser() ?? '' };
for (const bench of benches.sort()) {
  const run = spawnSync(process.execPath, [inRoot('tests', 'bench', bench)], {
    cwd: ROOT,
    stdio: 'inherit',
    env,
  });
  if (run.status !== 0) process.exitCode = 1;
}
