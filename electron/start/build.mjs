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
      await bundle(await config());
    }
    mkdirSync(inRoot('dist'), { recursive: true });
    writeFileSync(marker, wanted);
    done.push(name);
  }
  return done;
}

/**
 * For those who use the program, also where a test runner asks for it: it would have libraries built for trying out,
 * which are slower and do things of their own.
 * @param {import('vite').InlineConfig} config
 */
async function bundle(config) {
  // Only now: loading the bundler takes longer than finding out that it is not needed.
  const vite = await import('vite');
  const before = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  try {
    await vite.build(config);
  } finally {
    if (before === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = before;
  }
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
