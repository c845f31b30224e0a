import { basename, dirname, join, resolve } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { ReadProblem, SaveProblem, SheetPlace } from '../../boards/host';
import { textToSave } from './document-calls';
import { orNullIfMissing } from './errno';
import { flushFolder } from './flush-folder';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { nameProblem } from './new-name';
import { readProblemOf, readTextFile } from './read-file';
import { saveFile } from './save-file';
import { saveProblemOf } from './save-problem';

type LibraryCalls = Pick<
  HostCalls,
  'chooseFolder' | 'moveLibrary' | 'listLibrary' | 'readSheetHeads' | 'keepSheet' | 'removeSheet'
>;

/** Where removed and replaced sheets go: a folder in the library's own, which lists no folders. */
const REMOVED = 'removed';

/** The library of sheets: which folder it is, what is in it, keeping and removing. */
export function libraryCalls(host: Host): LibraryCalls {
  const { door, handles, library, saving } = host;
  /** One piece of work on the folder at a time, so that a name that was free is free when it is used. */
  const inTurn = <T>(work: (folder: string) => Promise<T>): Promise<T> =>
    saving.take('the library', async () => work((await library.folder()).path));
  return {
    chooseFolder: async () => {
      const path = await door.chooseFolder();
      return path === null ? null : handles.give(path);
    },
    moveLibrary: async ({ folder }) => {
      const path = folder === null ? null : handles.pathOf(folder);
      if (folder !== null && path === null) return refuse({ code: 'stale-handle', name: 'this folder' });
      const problem = path === null ? null : await folderProblem(host, path);
      if (problem !== null) return refuse(problem);
      await library.use(path === null ? null : resolve(path));
      return ok(null);
    },
    listLibrary: async () => {
      const { path, usual } = await library.folder();
      const listing = await library.list(path);
      if (!listing.ok) return listing;
      const files = listing.value.files.map(({ path: file, ...facts }) => ({
        handle: handles.give(file),
        ...facts,
      }));
      return ok({ folder: path, usual, files, cut: listing.value.cut });
    },
    readSheetHeads: async ({ handles: asked }) => {
      const heads = [];
      // One after another: each is a whole file in memory.
      for (const handle of asked) {
        const path = handles.pathOf(handle);
        if (path === null)
          heads.push({
            outcome: 'unreadable' as const,
            handle,
            problem: { code: 'stale-handle' as const, name: 'this file' },
          });
        else heads.push({ handle, ...(await library.head(path)) });
      }
      return heads;
    },
    keepSheet: async ({ document, place }) => inTurn((folder) => keep(host, folder, document, place)),
    removeSheet: async ({ handle }) =>
      inTurn(async (folder) => {
        const path = handles.pathOf(handle);
        if (path === null || dirname(path) !== folder)
          return refuse({ code: 'stale-handle', name: 'this sheet' });
        return moveAside(host, path);
      }),
  };
}

async function folderProblem({ fs }: Host, path: string): Promise<ReadProblem | null> {
  const name = basename(path);
  try {
    const { kind } = await fs.facts(path);
    return kind === 'folder' ? null : { code: 'special', name };
  } catch (thrown) {
    return readProblemOf(thrown, name);
  }
}

type Kept = Result<{ readonly handle: string; readonly name: string }, SaveProblem>;

async function keep(host: Host, folder: string, document: unknown, place: SheetPlace): Promise<Kept> {
  return place.kind === 'new'
    ? keepNew(host, folder, document, place.name)
    : keepOver(host, folder, document, place);
}

async function keepNew(
  { fs, handles, library, saving }: Host,
  folder: string,
  document: unknown,
  wanted: string,
): Promise<Kept> {
  const text = textToSave(document, wanted);
  if (!text.ok) return text;
  const expected = nameProblem(wanted, 'board');
  if (expected !== null) return refuse({ code: 'bad-name', name: wanted, expected });
  try {
    await library.prepare(folder);
    const path = await freePath({ fs }, folder, wanted);
    const saved = await saving.take(path, () =>
      saveFile(fs, { path, text: text.value, expected: null, onlyNew: true }),
    );
    return saved.ok ? ok({ handle: handles.give(path), name: basename(path) }) : saved;
  } catch (thrown) {
    return refuse(saveProblemOf(thrown, wanted));
  }
}

async function keepOver(
  host: Host,
  folder: string,
  document: unknown,
  { handle, expected, setAside }: Extract<SheetPlace, { kind: 'over' }>,
): Promise<Kept> {
  const { fs, handles, saving } = host;
  const path = handles.pathOf(handle);
  if (path === null || dirname(path) !== folder) return refuse({ code: 'stale-handle', name: 'this sheet' });
  const name = basename(path);
  const text = textToSave(document, name);
  if (!text.ok) return text;
  // A copy, and not the file itself: whatever fails from here on, the former sheet is where it was.
  const copied = setAside ? await copyAside(host, path) : ok(null);
  if (!copied.ok) return copied;
  const saved = await saving.take(path, () =>
    saveFile(fs, { path, text: text.value, expected: copied.value ?? expected }),
  );
  return saved.ok ? ok({ handle, name }) : saved;
}

/** Lays a copy of a sheet among the removed ones; gives the stamp of what was copied. */
async function copyAside({ fs }: Host, path: string): Promise<Result<string, SaveProblem>> {
  const name = basename(path);
  const read = await readTextFile(fs, path);
  if (!read.ok) return refuse({ code: 'unwritable', name, detail: read.problem.code });
  const { text, stamp } = read.value;
  try {
    const removed = await removedFolder({ fs }, dirname(path));
    if (!removed.ok) return removed;
    const copy = await freePath({ fs }, removed.value, name);
    const saved = await saveFile(fs, { path: copy, text, expected: null, onlyNew: true });
    return saved.ok ? ok(stamp) : saved;
  } catch (thrown) {
    return refuse(saveProblemOf(thrown, name));
  }
}

async function moveAside(
  { fs }: Host,
  path: string,
): Promise<Result<{ readonly name: string; readonly folder: string }, SaveProblem>> {
  const name = basename(path);
  try {
    const removed = await removedFolder({ fs }, dirname(path));
    if (!removed.ok) return removed;
    const folder = removed.value;
    const free = await freePath({ fs }, folder, name);
    await fs.rename(path, free);
    await flushFolder(fs, folder);
    await flushFolder(fs, dirname(path));
    return ok({ name: basename(free), folder });
  } catch (thrown) {
    return refuse(saveProblemOf(thrown, name));
  }
}

/** Made where it is not there. A link in its place would lead a sheet out of the library, and is refused. */
async function removedFolder(
  { fs }: Pick<Host, 'fs'>,
  library: string,
): Promise<Result<string, SaveProblem>> {
  const path = join(library, REMOVED);
  if ((await orNullIfMissing(fs.factsOfLink(path))) === null) await fs.makeFolder(path);
  const { kind } = await fs.factsOfLink(path);
  return kind === 'folder' ? ok(path) : refuse({ code: 'special', name: REMOVED });
}

/** "panel.board.json", or "panel-2.board.json" where that is taken. */
async function freePath({ fs }: Pick<Host, 'fs'>, folder: string, wanted: string): Promise<string> {
  const end = /(?:\.(?:board|case|build))?\.json$/i.exec(wanted)?.[0] ?? '';
  const stem = wanted.slice(0, wanted.length - end.length);
  for (let number = 1; ; number++) {
    const path = join(folder, number === 1 ? wanted : `${stem}-${number}${end}`);
    if ((await orNullIfMissing(fs.factsOfLink(path))) === null) return path;
  }
}
