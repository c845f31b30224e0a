import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ensureReady } from './ensure.mjs';
import { fingerprint } from './fingerprint.mjs';
import { inRoot } from './place.mjs';
import { TARGETS } from './targets.mjs';

/** @typedef {keyof typeof TARGETS} TargetName */

/**
 * Builds what is asked for, in that order, and leaves alone what was built from the same sources before.
 * @param {readonly TargetName[]} names
 * @returns {Promise<TargetName[]>} those that had to be built
 */
export async function build(names) {
  /** @type {TargetName[]} */
  const done = [];
  for (const name of names) {
    const { sources, made, config, make } = TARGETS[name];
    const marker = inRoot('dist', `.${name}.built`);
    const wanted = fingerprint(sources);
    if (existsSync(inRoot(made)) && readIfThere(marker) === wanted) continue;
    make?.();
    if (config !== undefined) {
      // Only now: loading the bundler takes longer than finding out that it is not needed.
      const vite = await import('vite');
      await vite.build(await config());
    }
    mkdirSync(inRoot('dist'), { recursive: true });
    writeFileSync(marker, wanted);
    done.push(name);
  }
  return done;
}

/** @param {string} path */
function readIfThere(path) {
  return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureReady();
  const names = /** @type {TargetName[]} */ (Object.keys(TARGETS));
  const asked = names.filter((name) => process.argv.length < 3 || process.argv.includes(name));
  const done = await build(asked);
  console.log(done.length === 0 ? 'Nothing has changed since the last build.' : `Built: ${done.join(', ')}.`);
}
