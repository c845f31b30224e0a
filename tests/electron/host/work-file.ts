import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DISK } from '../../../electron/host/file-system';
import { readTextFile } from '../../../electron/host/read-file';
import { scratchFolder } from '../scratch';

/** The stamp of a file as the host reads it now. */
export async function stampOf(path: string): Promise<string> {
  const read = await readTextFile(DISK, path);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value.stamp;
}

/** A file of somebody's work in a folder of its own. */
export function inScratch(text = 'former'): string {
  const path = join(scratchFolder(), 'work.build.json');
  writeFileSync(path, text);
  return path;
}
