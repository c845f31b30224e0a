import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { fileURLToPath } from 'node:url';
import { DISK } from '../../electron/host/file-system';

/** These have a second path. */
const TWO_PATHS = new Set(['rename', 'link', 'symlink', 'copyFile', 'cp']);

type Functions = Record<string, unknown>;

/**
 * Does some work and tells every path that was asked of the disk meanwhile, by whatever function of Node and from
 * whatever code of this thread, whether or not there was anything.
 */
export async function pathsAskedBy(work: () => Promise<unknown> | unknown): Promise<readonly string[]> {
  const asked = new Set<string>();
  // The host's own port holds some functions as they were when it was made.
  const undo = [fs, fs.promises, DISK].map((functions) => watch(functions as unknown as Functions, asked));
  syncBuiltinESMExports();
  try {
    await work();
  } finally {
    for (const each of undo) each();
    syncBuiltinESMExports();
  }
  return [...asked].sort();
}

function watch(functions: Functions, asked: Set<string>): () => void {
  const before: Functions = {};
  for (const [name, plain] of Object.entries(functions)) {
    if (typeof plain !== 'function' || !/^[a-z]/.test(name)) continue;
    before[name] = plain;
    const two = TWO_PATHS.has(name.replace(/Sync$/, ''));
    const watched = (...args: readonly unknown[]): unknown => {
      for (const arg of args.slice(0, two ? 2 : 1)) {
        const path = pathIn(arg);
        if (path !== null) asked.add(path);
      }
      return Reflect.apply(plain, functions, args);
    };
    functions[name] = Object.assign(watched, plain);
  }
  return () => void Object.assign(functions, before);
}

/** The path that is meant; null for the number of an open file. */
function pathIn(arg: unknown): string | null {
  if (arg instanceof URL) return fileURLToPath(arg);
  if (arg instanceof Uint8Array) return Buffer.from(arg).toString();
  return typeof arg === 'string' ? arg : null;
}
