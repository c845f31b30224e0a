import { dirname } from 'node:path';
import type { z } from 'zod';
import type { ReadProblem } from '../../boards/host';
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
/** What lies in the file itself, and not in a disk that fails for the moment. */
const IN_THE_FILE: readonly ReadProblem['code'][] = ['not-text', 'too-large'];

/**
 * Keeps one value in a file by its schema. A file that does not hold such a value is set aside under
 * another name, never deleted, and the fallback stands. One that cannot be read just now is left as it is, and
 * nothing is written over it; a disk that takes nothing is not worth stopping for.
 */
export function keptFile<T>(fs: FileSystem, path: string, schema: z.ZodType<T>, fallback: T): KeptFile<T> {
  const turns = makeTurns();

  /** null where the file cannot be read. */
  async function readNow(): Promise<T | null> {
    const found = await readTextFile(fs, path, LIMIT_BYTES);
    if (!found.ok && found.problem.code === 'not-found') return fallback;
    if (!found.ok && !IN_THE_FILE.includes(found.problem.code)) return null;
    const value = found.ok ? schema.safeParse(fromJson(found.value.text)) : null;
    if (value?.success) return value.data;
    await fs.rename(path, `${path}.broken`).catch(() => undefined);
    return fallback;
  }

  return {
    read: () => turns.take(path, async () => (await readNow()) ?? fallback),
    change: (change) =>
      turns.take(path, async () => {
        const before = await readNow();
        if (before === null) return;
        const text = textOf(change(before));
        // So that saving the same file again writes that file alone.
        if (text === textOf(before)) return;
        await fs.makeFolder(dirname(path)).catch(() => undefined);
        await saveFile(fs, { path, text, expected: null, mode: 0o600 });
      }),
  };
}

function textOf(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
