import { join } from 'node:path';
import { z } from 'zod';
import { type FileSystem, isThere } from './file-system';
import { keptFile } from './kept-file';

const RECENT_LIMIT = 10;
const RecentZ = z.array(z.string().min(1).max(32_768)).max(RECENT_LIMIT);

interface RecentFile {
  readonly path: string;
  readonly missing: boolean;
}

/** The files last opened or saved, newest first. One that is gone stays in the list and is marked. */
export interface RecentFiles {
  readonly list: () => Promise<readonly RecentFile[]>;
  readonly note: (path: string) => Promise<void>;
  readonly forget: (path: string) => Promise<void>;
  readonly forgetAll: () => Promise<void>;
}

export function recentFiles(fs: FileSystem, folder: string): RecentFiles {
  const kept = keptFile<string[]>(fs, join(folder, 'recent.json'), RecentZ, []);
  const without = (path: string) => (paths: string[]) => paths.filter((other) => other !== path);
  return {
    list: async () =>
      Promise.all((await kept.read()).map(async (path) => ({ path, missing: !(await isThere(fs, path)) }))),
    note: (path) => kept.change((paths) => [path, ...without(path)(paths)].slice(0, RECENT_LIMIT)),
    forget: (path) => kept.change(without(path)),
    forgetAll: () => kept.change(() => []),
  };
}
