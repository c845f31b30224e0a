import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { FileSystem } from './file-system';

const OURS = /^\.leadwright-[0-9a-f]{18}\.tmp$/;
/** No save takes as long: what is older belongs to a program that was killed in the middle of one. */
const OLD_MS = 60 * 60 * 1000;

/** A name for a file that is being written. Not made from the document's: that may be as long as the disk allows. */
export function temporaryIn(folder: string): string {
  return join(folder, `.leadwright-${randomBytes(9).toString('hex')}.tmp`);
}

/**
 * Removes what killed programs left of their saves in a folder. Only plain files of exactly our own name, and
 * only old ones: another window may be saving there right now. What cannot be removed is left for next time.
 */
export async function clearOldTemporaries(fs: FileSystem, folder: string, nowMs: number): Promise<void> {
  try {
    for (const { name } of (await fs.list(folder)).filter((entry) => OURS.test(entry.name))) {
      const path = join(folder, name);
      const { kind, mtimeMs } = await fs.factsOfLink(path);
      if (kind === 'file' && nowMs - mtimeMs > OLD_MS) await fs.remove(path);
    }
  } catch {
    // A folder that may be written to and not listed, or a file that another window has just removed.
  }
}
