import { dirname } from 'node:path';
import type { z } from 'zod';
import type { FileSystem } from './file-system';
import { readTextFile } from './read-file';
import { saveFile } from './save-file';
import { makeTurns } from './turns';

/** A small file of our own: what was kept last, or the fallback. */
export interface KeptFile<T> {
  readonly read: () => Promise<T>;
  readonly change: (change: (before: T) => T) => Promise<void>;
}

const LIMIT_BYTES = 1024 * 1024;

/**
 * Keeps one value in a file by its schema. A file that does not hold such a value is set aside under
 * another name, never deleted, and the fallback stands; a disk that takes nothing is not worth stopping for.
 */
export function keptFile<T>(fs: FileSystem, path: string, schema: z.ZodType<T>, fallback: T): KeptFile<T> {
  const turns = makeTurns();

  async function readNow(): Promise<T> {
    const found = await readTextFile(fs, path, LIMIT_BYTES);
    if (!found.ok && found.problem.code === 'not-found') return fallback;
    const value = found.ok ? schema.safeParse(fromJson(found.value.text)) : null;
    if (value?.success) return value.data;
    await fs.rename(path, `${path}.broken`).catch(() => undefined);
    return fallback;
  }

  return {
    read: () => turns.take(path, readNow),
    change: (change) =>
      turns.take(path, async () => {
        const text = `${JSON.stringify(change(await readNow()), null, 2)}\n`;
        await fs.makeFolder(dirname(path)).catch(() => undefined);
        await saveFile(fs, { path, text, expected: null, mode: 0o600 });
      }),
  };
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
