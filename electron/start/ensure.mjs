import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { inRoot, ROOT } from './place.mjs';

const OLDEST_NODE = [20, 19];

/**
 * Makes a fresh clone ready to run: the right Node, and the packages of the lock file. Does nothing when
 * they are there.
 * @param {{ quiet?: boolean }} [options]
 */
export function ensureReady({ quiet = false } = {}) {
  if (!isAtLeast(OLDEST_NODE)) {
    stop(`Leadwright needs Node ${OLDEST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
  }
  if (!isInstalled()) install(quiet);
}

/** npm writes down what it has installed, at the very end: there is no note of an installation cut short. */
function isInstalled() {
  const note = inRoot('node_modules', '.package-lock.json');
  if (!existsSync(note)) return false;
  const there = packagesOf(note);
  return Object.entries(packagesOf(inRoot('package-lock.json'))).every(
    ([path, { version, optional }]) => path === '' || optional || there[path]?.version === version,
  );
}

/**
 * @param {string} lockFile
 * @returns {Record<string, { version?: string, optional?: boolean }>}
 */
function packagesOf(lockFile) {
  return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
}

/**
 * @param {number[]} version
 * @returns {boolean} whether this Node is that version or a later one
 */
export function isAtLeast(version) {
  const ours = process.versions.node.split('.').map(Number);
  for (const [at, wanted] of version.entries()) {
    const part = ours[at] ?? 0;
    if (part !== wanted) return part > wanted;
  }
  return true;
}

/**
 * Nothing we depend on needs its install script to run, so none is run.
 * @param {boolean} quiet
 */
function install(quiet) {
  if (!quiet) console.log('Installing the packages of package-lock.json, once …');
  const npm = process.env.npm_execpath;
  const args = ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];
  // Through Node itself where npm started us: no shell, and the same npm.
  const [command, given] = npm?.endsWith('js') ? [process.execPath, [npm, ...args]] : ['npm', args];
  const run = spawnSync(command, given, {
    cwd: ROOT,
    stdio: ['ignore', quiet ? 'ignore' : 'inherit', 'inherit'],
    shell: command === 'npm' && process.platform === 'win32',
  });
  if (run.status !== 0)
    stop('The packages could not be installed. npm has said why above; try again online.');
}

/**
 * @param {string} message
 * @returns {never}
 */
function stop(message) {
  console.error(message);
  process.exit(1);
}
