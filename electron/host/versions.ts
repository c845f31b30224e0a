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
  /** Of saves nearer than that, the first and the last are kept, and what the last replaced. */
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

  /** Of each file the version that its last save replaced, where the next save may take that out. */
  const spare = new Map<string, string>();

  async function write(path: string, { text, savedMs }: Held): Promise<string> {
    const bytes = Buffer.byteLength(text, 'utf8');
    roomBytes -= bytes;
    const id = `${Math.max(0, Math.round(savedMs))}-${bytes}-${hashOf(text)}`;
    const save = { path: join(folderOf(path), id + END), text, expected: null, mode: 0o600 };
    await saveFile(fs, save);
    return id;
  }

  /** Removes versions of one file: the spare one where it is between two that are near, and more than there may be. */
  async function thin(path: string, ofThisSave: readonly string[]): Promise<void> {
    const versions = await listIn(fs, folderOf(path));
    const free = versions.filter(({ id }) => !ofThisSave.includes(id));
    const between = free.filter(({ id }) => id === spare.get(path) && isBetween(versions, id));
    const left = free.filter((version) => !between.includes(version));
    const tooMany = left.slice(Math.max(0, limits.perFile - (versions.length - free.length)));
    for (const { id } of [...between, ...tooMany])
      await fs.remove(join(folderOf(path), id + END)).catch(() => undefined);
  }

  /** Whether the versions on either side of one are nearer than two that are both kept. */
  function isBetween(versions: readonly Version[], id: string): boolean {
    const at = versions.findIndex((version) => version.id === id);
    const [later, earlier] = [versions[at - 1], versions[at + 1]];
    return later !== undefined && earlier !== undefined && later.savedMs - earlier.savedMs < limits.apartMs;
  }

  /**
   * Removes versions of all files until they have room, first what was replaced longest ago, then the newest of
   * each file; last of all what the save itself wrote and replaced.
   */
  async function makeRoom(path: string, ofThisSave: readonly string[]): Promise<void> {
    const kept = ofThisSave.map((id) => join(folderOf(path), id + END));
    const all: { readonly path: string; readonly bytes: number; turn: number; sinceMs: number }[] = [];
    for (const { name, kind } of await fs.list(folder)) {
      if (kind !== 'folder') continue;
      const versions = await listIn(fs, join(folder, name));
      for (const [at, { id, bytes, savedMs }] of versions.entries()) {
        const path = join(folder, name, id + END);
        const turn = kept.includes(path) ? 2 : at === 0 ? 1 : 0;
        // The time of a file is not that of its end: what lay there for years may have been replaced just now.
        all.push({ path, bytes, turn, sinceMs: versions[at - 1]?.savedMs ?? savedMs });
      }
    }
    let bytes = all.reduce((sum, version) => sum + version.bytes, 0);
    all.sort((first, second) => first.turn - second.turn || first.sinceMs - second.sinceMs);
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
      const versions = await listIn(fs, folderOf(path));
      const idOf = (text: string) => {
        const hash = hashOf(text);
        return versions.find(({ id }) => id.endsWith(hash))?.id;
      };
      const known = before === null ? undefined : idOf(before.text);
      const isStep = idOf(now.text) === undefined || now.text === before?.text;
      const replaced =
        before === null ? [] : [known ?? (await write(path, cameBetween(before, versions[0], now)))];
      const ofThisSave = [await write(path, now), ...replaced];
      await thin(path, ofThisSave);
      // No step on the way is what another program had put there, and what was left for an earlier version.
      if (known !== undefined && known === versions[0]?.id && isStep) spare.set(path, known);
      else spare.delete(path);
      if (roomBytes < 0) await makeRoom(path, ofThisSave);
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

/** What nobody had kept came into the file after its newest version and before now, whatever its own time says. */
function cameBetween(before: Held, newest: Version | undefined, now: Held): Held {
  const since = newest === undefined ? before.savedMs : Math.max(before.savedMs, newest.savedMs + 1);
  return { text: before.text, savedMs: Math.min(since, now.savedMs - 1) };
}

const hashOf = (text: string): string => sha256(text).slice(0, 16);

async function listIn(fs: FileSystem, folder: string): Promise<readonly Version[]> {
  return (await fs.list(folder))
    .flatMap(({ name }) => {
      const id = name.endsWith(END) ? name.slice(0, -END.length) : '';
      const [, savedMs, bytes] = VERSION_ID.exec(id) ?? [];
      return savedMs === undefined ? [] : [{ id, savedMs: Number(savedMs), bytes: Number(bytes) }];
    })
    .sort((first, second) => second.savedMs - first.savedMs);
}
