import { join } from 'node:path';
import type { FileSystem } from './file-system';
import { readTextFile } from './read-file';
import { saveFile } from './save-file';
import { sha256 } from './stamp';
import { makeTurns } from './turns';

/** What a file held at some time. */
interface Version {
  readonly id: string;
  readonly savedMs: number;
  readonly bytes: number;
}

/** What files held before: copies in a folder of our own, so that what happens to a file does not happen to them. */
export interface Versions {
  /** Keeps what a file holds now and, where nobody has kept it yet, what it held before. Never stops a save. */
  readonly keep: (path: string, now: Held, before: Held | null) => Promise<void>;
  /** When all that was to be kept so far has been. */
  readonly settled: () => Promise<void>;
  /** The versions of a file, newest first; those that are just being kept among them. */
  readonly list: (path: string) => Promise<readonly Version[]>;
  /** The text of a version, or null where it is not there or not whole. */
  readonly read: (path: string, id: string) => Promise<string | null>;
}

export interface Held {
  readonly text: string;
  readonly savedMs: number;
}

export interface VersionLimits {
  readonly perFile: number;
  /** Of all files together. */
  readonly bytes: number;
  /** Of two versions nearer than that, the later takes the place of the earlier one. */
  readonly apartMs: number;
}

/** After so great a share of the limit all files are counted again: another window may have written too. */
const COUNTED_SHARE = 1 / 16;

const VERSION_LIMITS: VersionLimits = {
  perFile: 50,
  bytes: 256 * 1024 * 1024,
  apartMs: 5 * 60 * 1000,
};

/** Time, length and the beginning of the content's hash; everything that has to be known without reading. */
const VERSION_ID = /^(\d{1,15})-(\d{1,12})-([0-9a-f]{16})$/;
const END = '.version';

export function fileVersions(
  fs: FileSystem,
  folder: string,
  limits: VersionLimits = VERSION_LIMITS,
): Versions {
  const folderOf = (path: string) => join(folder, sha256(path).slice(0, 32));
  /** What may be written before all files are counted again; they are many, and a save is not to wait for them. */
  let roomBytes = 0;
  /** One piece of work at a time: nobody waits for a version to be kept but whoever asks for versions. */
  const turns = makeTurns();
  const inTurn = <T>(work: () => Promise<T>) => turns.take(folder, work);

  async function write(path: string, { text, savedMs }: Held): Promise<void> {
    const bytes = Buffer.byteLength(text, 'utf8');
    roomBytes -= bytes;
    const id = `${Math.max(0, Math.round(savedMs))}-${bytes}-${sha256(text).slice(0, 16)}`;
    const save = { path: join(folderOf(path), id + END), text, expected: null, mode: 0o600 };
    await saveFile(fs, save);
  }

  /** Removes versions of one file: those in between two that are near, and more than there may be. */
  async function thin(path: string): Promise<void> {
    const versions = await listIn(fs, folderOf(path));
    const [newest, middle, oldest] = versions;
    const isBetween =
      newest !== undefined &&
      middle !== undefined &&
      oldest !== undefined &&
      newest.savedMs - oldest.savedMs < limits.apartMs;
    const tooMany = versions.slice(limits.perFile);
    for (const { id } of isBetween ? [middle, ...tooMany] : tooMany)
      await fs.remove(join(folderOf(path), id + END)).catch(() => undefined);
  }

  /** Removes the oldest versions of all files, until they have room; the newest of each file last of all. */
  async function makeRoom(): Promise<void> {
    const all: (Version & { readonly path: string; readonly isNewest: boolean })[] = [];
    for (const { name, kind } of await fs.list(folder)) {
      if (kind !== 'folder') continue;
      const versions = await listIn(fs, join(folder, name));
      for (const [at, version] of versions.entries())
        all.push({ ...version, path: join(folder, name, version.id + END), isNewest: at === 0 });
    }
    let bytes = all.reduce((sum, version) => sum + version.bytes, 0);
    const gone = (one: (typeof all)[number]) => (one.isNewest ? 1 : 0);
    all.sort((first, second) => gone(first) - gone(second) || first.savedMs - second.savedMs);
    for (const version of all) {
      if (bytes <= limits.bytes) break;
      await fs.remove(version.path).catch(() => undefined);
      bytes -= version.bytes;
    }
    roomBytes = Math.min(limits.bytes - bytes, limits.bytes * COUNTED_SHARE);
  }

  async function keep(path: string, now: Held, before: Held | null): Promise<void> {
    try {
      await fs.makeFolder(folderOf(path));
      const known = new Set((await listIn(fs, folderOf(path))).map(({ id }) => id.split('-')[2]));
      if (before !== null && !known.has(sha256(before.text).slice(0, 16))) await write(path, before);
      await write(path, now);
      await thin(path);
      if (roomBytes < 0) await makeRoom();
    } catch {
      // The file itself is saved; a disk that has no room for its versions keeps fewer of them.
    }
  }

  return {
    keep: (path, now, before) => inTurn(() => keep(path, now, before)),
    settled: () => inTurn(async () => undefined),
    list: (path) => inTurn(() => listIn(fs, folderOf(path))).catch(() => []),
    read: async (path, id) => {
      const hash = VERSION_ID.exec(id)?.[3];
      if (hash === undefined) return null;
      const read = await readTextFile(fs, join(folderOf(path), id + END));
      return read.ok && sha256(read.value.text).startsWith(hash) ? read.value.text : null;
    },
  };
}

async function listIn(fs: FileSystem, folder: string): Promise<readonly Version[]> {
  return (await fs.list(folder))
    .flatMap(({ name }) => {
      const id = name.endsWith(END) ? name.slice(0, -END.length) : '';
      const [, savedMs, bytes] = VERSION_ID.exec(id) ?? [];
      return savedMs === undefined ? [] : [{ id, savedMs: Number(savedMs), bytes: Number(bytes) }];
    })
    .sort((first, second) => second.savedMs - first.savedMs);
}
