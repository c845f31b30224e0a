import { basename, join } from 'node:path';
import { z } from 'zod';
import { ok, type Result, refuse } from '../../boards/base/result';
import { parseDocument } from '../../boards/document/parse';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { sheetHead } from '../../boards/document/sheet-head';
import type { ReadProblem, SheetHead } from '../../boards/host';
import type { FileFacts, FileSystem } from './file-system';
import { keptFile } from './kept-file';
import { isDocumentName } from './new-name';
import { readProblemOf, readTextFile } from './read-file';

/** The person's own sheets: a folder of files, and what is known of them without keeping them all open. */
export interface SheetLibrary {
  /** The folder it is now, and whether it is the usual one. */
  readonly folder: () => Promise<{ readonly path: string; readonly usual: boolean }>;
  /** Another folder from now on; null for the usual one. */
  readonly use: (path: string | null) => Promise<void>;
  /** Makes the usual folder where it is not there; one that the person chose is not ours to make. */
  readonly prepare: (folder: string) => Promise<void>;
  readonly list: (folder: string) => Promise<Result<LibraryListing, ReadProblem>>;
  readonly head: (path: string) => Promise<HeadOf>;
}

interface LibraryListing {
  readonly files: readonly LibraryFile[];
  readonly cut: boolean;
}

interface LibraryFile {
  readonly path: string;
  readonly name: string;
  readonly modifiedMs: number;
  readonly bytes: number;
}

/** A head of the contract before the file has its handle. */
type HeadOf = SheetHead extends infer Head ? (Head extends SheetHead ? Omit<Head, 'handle'> : never) : never;

const FILE_LIMIT = 5_000;
const ChosenZ = z.strictObject({ folder: z.string().min(1).max(32_768).nullable() });

/** @param data the folder for our own files; the usual library is a folder in it */
export function sheetLibrary(fs: FileSystem, data: string): SheetLibrary {
  const usual = join(data, 'sheets');
  const chosen = keptFile(fs, join(data, 'library.json'), ChosenZ, { folder: null });
  const heads = new Map<string, { readonly outside: string; readonly head: HeadOf }>();

  async function folder() {
    const { folder: path } = await chosen.read();
    return path === null ? { path: usual, usual: true } : { path, usual: false };
  }

  async function prepare(path: string) {
    if (path === usual) await fs.makeFolder(usual);
  }

  return {
    folder,
    prepare,
    use: (path) => chosen.change(() => ({ folder: path })),
    list: async (path) => {
      try {
        await prepare(path);
        return ok(await listed(fs, path));
      } catch (thrown) {
        return refuse(readProblemOf(thrown, basename(path)));
      }
    },
    head: async (path) => {
      const outside = await outsideOf(fs, path);
      const known = heads.get(path);
      if (known !== undefined && outside !== null && known.outside === outside) return known.head;
      const head = await readHead(fs, path);
      if (outside !== null) heads.set(path, { outside, head });
      return head;
    },
  };
}

/** Everything that is named like a document of ours. What cannot be read is listed too: a head says why. */
async function listed(fs: FileSystem, folder: string): Promise<LibraryListing> {
  const named = (await fs.list(folder)).filter(
    ({ name, kind }) => kind !== 'folder' && !name.startsWith('.') && isDocumentName(name),
  );
  const files = named.slice(0, FILE_LIMIT).map(async ({ name }): Promise<LibraryFile> => {
    const path = join(folder, name);
    const facts = await fs.facts(path).catch(() => null);
    return { path, name, modifiedMs: facts?.mtimeMs ?? 0, bytes: Number(facts?.size ?? 0) };
  });
  return { files: await Promise.all(files), cut: named.length > FILE_LIMIT };
}

/** Size, time and place of a file; one that is as it was need not be read again. */
async function outsideOf(fs: FileSystem, path: string): Promise<string | null> {
  const facts: FileFacts | null = await fs.facts(path).catch(() => null);
  return facts === null ? null : `${facts.size}-${facts.mtimeNs}-${facts.ino}`;
}

async function readHead(fs: FileSystem, path: string): Promise<HeadOf> {
  const read = await readTextFile(fs, path);
  if (!read.ok) return { outcome: 'unreadable', problem: read.problem };
  const parsed = parseDocument(read.value.text);
  if (!parsed.ok) {
    const { lines, advice } = openProblemWords(parsed.problem, basename(path));
    return { outcome: 'unsound', lines: [...lines], advice };
  }
  if (parsed.value.format === 'leadwright/build') return { outcome: 'build', title: parsed.value.name };
  return { outcome: 'sheet', ...sheetHead(parsed.value) };
}
