import { basename, dirname, join } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { SaveProblem, ScarceRoom } from '../../boards/host';
import { orNullIfMissing } from './errno';
import type { FileFacts, FileSystem } from './file-system';
import { flushFolder } from './flush-folder';
import { readTextFile } from './read-file';
import { saveProblemOf } from './save-problem';
import { looksUntouched, sameContent, sha256, stampOf } from './stamp';
import { clearOldTemporaries, temporaryIn } from './temporary';

export interface SaveBytes {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** What the file has to be for the save to go on; null to replace whatever is there. */
  readonly expected: string | null;
  /** Refuse rather than replace whatever has come to lie there. */
  readonly onlyNew?: true;
  /** The rights of a file that is not there yet, before the system's mask. */
  readonly mode?: number;
}

export type Save = Omit<SaveBytes, 'bytes'> & { readonly text: string };

export interface Written {
  readonly stamp: string;
  /** False when the folder could not be flushed: saved, not yet surely on disk. */
  readonly durable: boolean;
}

/**
 * Replaces a file whole or not at all: a new file beside it is written, flushed and measured, and only
 * then takes the name. Whatever fails before that, the former file is as it was and nothing is left over.
 * A link is followed, and the rights of the former file are kept.
 */
export function saveFile(fs: FileSystem, { text, ...save }: Save): Promise<Result<Written, SaveProblem>> {
  return saveBytes(fs, { ...save, bytes: Buffer.from(text, 'utf8') });
}

/** As above, for what is not text. */
export async function saveBytes(fs: FileSystem, save: SaveBytes): Promise<Result<Written, SaveProblem>> {
  const tried = await trySave(fs, save);
  if (tried.ok || tried.problem.code !== 'no-space') return tried;
  // Asked only now that the part which was written is gone again, and its room free.
  return refuse({ ...tried.problem, room: await scarceRoom(fs, save.path, save.bytes.length) });
}

async function trySave(fs: FileSystem, save: SaveBytes): Promise<Result<Written, SaveProblem>> {
  const name = basename(save.path);
  try {
    const target = await targetOf(fs, save.path);
    if (target === null) return refuse({ code: 'special', name });
    const former = await orNullIfMissing(fs.facts(target));
    if (former !== null && former.kind !== 'file') return refuse({ code: 'special', name });
    // A rename would replace a write-protected file all the same, against what its owner asked for.
    if (former !== null) await fs.mayWrite(target);
    return await replace(fs, target, former, save);
  } catch (thrown) {
    return refuse(saveProblemOf(thrown, name));
  }
}

/** Where the file really lies; null for a link that leads nowhere. */
async function targetOf(fs: FileSystem, path: string): Promise<string | null> {
  const real = await orNullIfMissing(fs.realpath(path));
  if (real !== null) return real;
  if ((await orNullIfMissing(fs.factsOfLink(path))) !== null) return null;
  return join(await fs.realpath(dirname(path)), basename(path));
}

async function replace(
  fs: FileSystem,
  target: string,
  former: FileFacts | null,
  save: SaveBytes,
): Promise<Result<Written, SaveProblem>> {
  const folder = dirname(target);
  // First, since on a full disk they may be what there is no room for.
  await clearOldTemporaries(fs, folder, Date.now());
  const temporary = temporaryIn(folder);
  const { bytes } = save;
  let renamed = false;
  try {
    const facts = await writeNew(fs, temporary, bytes, former?.mode ?? null, save.mode ?? 0o666);
    if (facts.size !== BigInt(bytes.length))
      return refuse({ code: 'no-space', name: basename(save.path), room: null });
    if (await changedOutside(fs, target, save)) {
      return refuse({ code: 'changed-outside', name: basename(save.path) });
    }
    await fs.rename(temporary, target);
    renamed = true;
    return ok({ stamp: stampOf(facts, sha256(bytes)), durable: await flushFolder(fs, folder) });
  } finally {
    if (!renamed) await fs.remove(temporary).catch(() => undefined);
  }
}

/**
 * What a file of so many bytes takes at a place, and what is free there. Null where the disk does not say, or has
 * room enough by now: then it is full of something else, or somebody has just made room.
 */
async function scarceRoom(fs: FileSystem, path: string, bytes: number): Promise<ScarceRoom> {
  try {
    const target = await targetOf(fs, path);
    if (target === null) return null;
    const { freeBytes, blockBytes } = await fs.room(dirname(target));
    // Whole pieces, and one more, since the folder may have to grow by one to hold the name.
    const neededBytes = (Math.ceil(bytes / blockBytes) + 1) * blockBytes;
    return neededBytes > freeBytes ? { neededBytes, freeBytes } : null;
  } catch {
    return null;
  }
}

async function writeNew(
  fs: FileSystem,
  path: string,
  bytes: Uint8Array,
  formerMode: number | null,
  newMode: number,
): Promise<FileFacts> {
  const file = await fs.createNew(path, formerMode === null ? newMode : 0o600);
  try {
    await file.write(bytes);
    if (formerMode !== null && (await file.facts()).mode !== formerMode) await file.chmod(formerMode);
    await file.sync();
    return await file.facts();
  } finally {
    await file.close();
  }
}

async function changedOutside(
  fs: FileSystem,
  target: string,
  { expected, onlyNew }: SaveBytes,
): Promise<boolean> {
  if (onlyNew === true) return (await orNullIfMissing(fs.factsOfLink(target))) !== null;
  if (expected === null) return false;
  const facts = await orNullIfMissing(fs.facts(target));
  if (facts === null) return true;
  if (looksUntouched(expected, facts)) return false;
  const now = await readTextFile(fs, target);
  return !now.ok || !sameContent(expected, now.value.stamp);
}
