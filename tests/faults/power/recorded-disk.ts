import { dirname } from 'node:path';
import { DISK, type FileSystem, type OpenFile } from '../../../electron/host/file-system';

/** What was done to the disk, in order. A file is known by a number, whatever it is called. */
export type Deed =
  | { readonly kind: 'create'; readonly path: string; readonly file: number }
  | { readonly kind: 'write'; readonly file: number; readonly bytes: Uint8Array }
  | { readonly kind: 'sync'; readonly file: number }
  | { readonly kind: 'rename'; readonly from: string; readonly to: string }
  | { readonly kind: 'remove'; readonly path: string }
  | { readonly kind: 'make folder'; readonly path: string }
  | { readonly kind: 'sync folder'; readonly path: string };

/** The real disk, with a record of everything that changes it. */
export function recordedDisk(): { readonly fs: FileSystem; readonly deeds: readonly Deed[] } {
  const deeds: Deed[] = [];
  let files = 0;
  const watched = (open: OpenFile, file: number): OpenFile => ({
    ...open,
    write: async (bytes) => {
      await open.write(bytes);
      deeds.push({ kind: 'write', file, bytes: Uint8Array.from(bytes) });
    },
    sync: async () => void deeds.push({ kind: 'sync', file }),
  });
  const fs: FileSystem = {
    ...DISK,
    createNew: async (path, mode) => {
      const open = await DISK.createNew(path, mode);
      const file = ++files;
      deeds.push({ kind: 'create', path, file });
      return watched(open, file);
    },
    openFolder: async (path) => ({
      sync: async () => void deeds.push({ kind: 'sync folder', path }),
      close: async () => undefined,
    }),
    rename: async (from, to) => {
      await DISK.rename(from, to);
      deeds.push({ kind: 'rename', from, to });
    },
    remove: async (path) => {
      await DISK.remove(path);
      deeds.push({ kind: 'remove', path });
    },
    makeFolder: async (path) => {
      await DISK.makeFolder(path);
      deeds.push({ kind: 'make folder', path });
    },
  };
  return { fs, deeds };
}

/** The folders whose list of names a deed changes; one for each that has to be flushed for it to be sure. */
export function foldersOf(deed: Deed): readonly string[] {
  switch (deed.kind) {
    case 'create':
    case 'remove':
      return [dirname(deed.path)];
    case 'rename':
      return [dirname(deed.from), dirname(deed.to)];
    default:
      return [];
  }
}
