import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top of the clone, wherever the command was typed. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** @param {string[]} parts */
export function inRoot(...parts) {
  return join(ROOT, ...parts);
}

/**
 * A file named by the person, seen from the folder in which they typed the command: npm itself runs
 * scripts from the top of the clone.
 * @param {string} path
 */
export function fromWhereTyped(path) {
  return resolve(process.env.INIT_CWD ?? process.cwd(), path);
}
