import type { FileSystem } from './file-system';

/** Makes sure of the names in a folder: without it a power cut may undo a rename. False where it cannot be done. */
export async function flushFolder(fs: FileSystem, folder: string): Promise<boolean> {
  // Windows has no way to flush a folder; its disks write names down in a journal.
  if (process.platform === 'win32') return true;
  try {
    const open = await fs.openFolder(folder);
    try {
      await open.sync();
    } finally {
      await open.close();
    }
    return true;
  } catch {
    return false;
  }
}
