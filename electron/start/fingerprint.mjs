import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inRoot } from './place.mjs';

/**
 * One hash over the names and contents of everything in these files and folders.
 * @param {readonly string[]} sources paths below the top of the clone
 */
export function fingerprint(sources) {
  const hash = createHash('sha256');
  for (const source of sources) {
    for (const file of filesIn(source))
      hash
        .update(`${file}\0`)
        .update(readFileSync(inRoot(file)))
        .update('\0');
  }
  return hash.digest('hex');
}

/**
 * @param {string} path
 * @returns {string[]}
 */
function filesIn(path) {
  const entries = foldersEntries(path);
  if (entries === null) return [path];
  return entries.flatMap((entry) => filesIn(join(path, entry)));
}

/** @param {string} path */
function foldersEntries(path) {
  try {
    return readdirSync(inRoot(path)).sort();
  } catch (thrown) {
    if (thrown instanceof Error && 'code' in thrown && thrown.code === 'ENOTDIR') return null;
    throw thrown;
  }
}
