import { basename, dirname, join } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { ReadProblem } from '../../boards/host';
import type { FileSystem, FolderEntry } from './file-system';
import { isDocumentName } from './new-name';
import { readProblemOf } from './read-file';

interface ListedEntry {
  readonly path: string;
  readonly name: string;
  readonly kind: 'folder' | 'file';
  readonly modifiedMs: number;
}

export interface Listing {
  readonly entries: readonly ListedEntry[];
  readonly cut: boolean;
}

const ENTRY_LIMIT = 5_000;
const ORDER = new Intl.Collator('en', { numeric: true });

/**
 * What the page's own file dialog shows of a folder: folders first, then the files that may be documents
 * of ours. Hidden entries, pipes and devices are left out; a link counts as what it leads to.
 */
export async function listFolder(fs: FileSystem, path: string): Promise<Result<Listing, ReadProblem>> {
  try {
    const candidates = (await fs.list(path)).filter(isCandidate);
    const looked = await Promise.all(candidates.slice(0, ENTRY_LIMIT).map((entry) => look(fs, path, entry)));
    const entries = looked.filter((entry) => entry !== null).sort(foldersFirst);
    return ok({ entries, cut: candidates.length > ENTRY_LIMIT });
  } catch (thrown) {
    return refuse(readProblemOf(thrown, basename(path)));
  }
}

/** The folder and every folder above it, outermost first. */
export function crumbsOf(path: string): readonly string[] {
  const above = dirname(path);
  return above === path ? [path] : [...crumbsOf(above), path];
}

function isCandidate({ name, kind }: FolderEntry): boolean {
  if (name.startsWith('.') || kind === 'special') return false;
  return kind !== 'file' || isDocumentName(name);
}

async function look(fs: FileSystem, folder: string, { name }: FolderEntry): Promise<ListedEntry | null> {
  const path = join(folder, name);
  try {
    const { kind, mtimeMs } = await fs.facts(path);
    if (kind === 'folder' || (kind === 'file' && isDocumentName(name))) {
      return { path, name, kind, modifiedMs: mtimeMs };
    }
    return null;
  } catch {
    // A link that leads nowhere, or an entry that went away while we looked.
    return null;
  }
}

function foldersFirst(first: ListedEntry, second: ListedEntry): number {
  if (first.kind !== second.kind) return first.kind === 'folder' ? -1 : 1;
  return ORDER.compare(first.name, second.name);
}
