import { constants } from 'node:fs';
import { lstat, mkdir, open, readdir, realpath, rename, stat, statfs, unlink } from 'node:fs/promises';
import { dirname } from 'node:path';

/** What is known of a file without reading it. */
export interface FileFacts {
  readonly size: bigint;
  readonly mtimeNs: bigint;
  readonly mtimeMs: number;
  readonly ino: bigint;
  readonly mode: number;
  readonly kind: 'file' | 'folder' | 'link' | 'special';
}

export interface OpenFile {
  readonly facts: () => Promise<FileFacts>;
  /** Reads on from where the last read ended; 0 at the end. */
  readonly read: (into: Uint8Array) => Promise<number>;
  readonly write: (bytes: Uint8Array) => Promise<void>;
  readonly chmod: (mode: number) => Promise<void>;
  readonly sync: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface FolderEntry {
  readonly name: string;
  readonly kind: FileFacts['kind'];
}

/** What is free on a disk for this account, and in pieces of what size it is given out. */
interface DiskRoom {
  readonly freeBytes: number;
  readonly blockBytes: number;
}

/**
 * The few file operations the host uses. A port, so that a test can make each of them fail in turn.
 * Failures are thrown as Node throws them, with a `code`.
 */
export interface FileSystem {
  readonly openToRead: (path: string) => Promise<OpenFile>;
  /** Fails where the file already exists. */
  readonly createNew: (path: string, mode: number) => Promise<OpenFile>;
  readonly openFolder: (path: string) => Promise<Pick<OpenFile, 'sync' | 'close'>>;
  readonly facts: (path: string) => Promise<FileFacts>;
  readonly factsOfLink: (path: string) => Promise<FileFacts>;
  readonly mayWrite: (path: string) => Promise<void>;
  readonly realpath: (path: string) => Promise<string>;
  readonly rename: (from: string, to: string) => Promise<void>;
  readonly remove: (path: string) => Promise<void>;
  readonly makeFolder: (path: string) => Promise<void>;
  readonly list: (path: string) => Promise<readonly FolderEntry[]>;
  /** Of the disk that a folder lies on. */
  readonly room: (folder: string) => Promise<DiskRoom>;
}

interface Kinds {
  isFile(): boolean;
  isDirectory(): boolean;
  isSymbolicLink(): boolean;
}

function kindOf(entry: Kinds): FileFacts['kind'] {
  if (entry.isFile()) return 'file';
  if (entry.isDirectory()) return 'folder';
  return entry.isSymbolicLink() ? 'link' : 'special';
}

function factsFrom(found: Awaited<ReturnType<typeof bigStat>>): FileFacts {
  const { size, mtimeNs, ino } = found;
  return {
    size,
    mtimeNs,
    ino,
    mtimeMs: Number(found.mtimeMs),
    mode: Number(found.mode & 0o7777n),
    kind: kindOf(found),
  };
}

const bigStat = (path: string) => stat(path, { bigint: true });

async function opened(path: string, flags: number, mode?: number): Promise<OpenFile> {
  const handle = await open(path, flags, mode);
  return {
    facts: async () => factsFrom(await handle.stat({ bigint: true })),
    read: async (into) => (await handle.read(into, 0, into.length, null)).bytesRead,
    write: (bytes) => handle.writeFile(bytes),
    chmod: (mode) => handle.chmod(mode),
    sync: () => handle.sync(),
    close: () => handle.close(),
  };
}

// Without O_NONBLOCK, opening a pipe nobody writes to would wait for ever and take one of Node's four file threads.
const READ = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);
const WRITE = constants.O_WRONLY | (constants.O_NONBLOCK ?? 0);
const CREATE = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL;

/** Whether there is a file that can be looked at; for any failure, there is none. */
export async function isThere(fs: FileSystem, path: string): Promise<boolean> {
  try {
    return (await fs.facts(path)).kind === 'file';
  } catch {
    return false;
  }
}

/** Makes sure of folders just made, each in the one above it, from the lowest to `top`; as far as it can be done. */
async function flushAbove(path: string, top: string): Promise<void> {
  for (let above = dirname(path); above.length >= top.length; above = dirname(above)) {
    const folder = await open(above, constants.O_RDONLY).catch(() => null);
    await folder?.sync().catch(() => undefined);
    await folder?.close();
    if (above === dirname(above)) return;
  }
}

/** The real disk. */
export const DISK: FileSystem = {
  openToRead: (path) => opened(path, READ),
  createNew: (path, mode) => opened(path, CREATE, mode),
  openFolder: (path) => opened(path, constants.O_RDONLY),
  facts: async (path) => factsFrom(await bigStat(path)),
  factsOfLink: async (path) => factsFrom(await lstat(path, { bigint: true })),
  // Opened and left as it is: what the system then allows is surer than what it says it would.
  mayWrite: async (path) => (await open(path, WRITE)).close(),
  realpath,
  rename,
  remove: unlink,
  makeFolder: async (path) => {
    const first = await mkdir(path, { recursive: true, mode: 0o700 });
    if (first !== undefined && process.platform !== 'win32') await flushAbove(path, dirname(first));
  },
  list: async (path) =>
    (await readdir(path, { withFileTypes: true })).map((entry) => ({
      name: entry.name,
      kind: kindOf(entry),
    })),
  room: async (folder) => {
    const { bavail, bsize } = await statfs(folder);
    return { freeBytes: bavail * bsize, blockBytes: bsize };
  },
};
