import { basename, dirname } from 'node:path';
import { megabytes } from '../../boards/base/megabytes';
import { ok, type Result, refuse } from '../../boards/base/result';
import { LIMITS } from '../../boards/document/limits';
import type { OpenProblem } from '../../boards/document/problem/problem';
import { serializeData } from '../../boards/document/serialize';
import type { SaveProblem } from '../../boards/host';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { readTextFile } from './read-file';
import { saveFile } from './save-file';
import type { Held } from './versions';

type DocumentCalls = Pick<HostCalls, 'open' | 'save' | 'listRecent' | 'noteRecent' | 'forgetRecent'>;

/** Opening, saving, and the list of files last worked on. */
export function documentCalls(host: Host): DocumentCalls {
  const { fs, handles, recent, saving } = host;
  return {
    open: async ({ handle }) => {
      const path = handles.pathOf(handle);
      if (path === null) return refuse({ code: 'stale-handle', name: 'this file' });
      // Not before a save that was asked for earlier: what is opened would be old at once.
      const found = await saving.take(path, () => readTextFile(fs, path));
      if (!found.ok) return found;
      const readOnly = !(await mayWrite(host, path));
      return ok({ handle, name: basename(path), folder: dirname(path), ...found.value, readOnly });
    },
    save: async ({ handle, document, expected }) => {
      const path = handles.pathOf(handle);
      if (path === null) return refuse({ code: 'stale-handle', name: 'this file' });
      const checked = textToSave(document, basename(path));
      if (!checked.ok) return checked;
      const text = checked.value;
      const saved = await saving.take(path, async () => {
        // Of the save before: however fast one follows the other, only one of them is ever behind.
        await host.versions.settled();
        const before = await heldAt(host, path);
        const written = await saveFile(fs, { path, text, expected });
        // Not waited for: the file is saved, and its versions are asked for only when these are there.
        if (written.ok) void host.versions.keep(path, { text, savedMs: Date.now() }, before);
        return written;
      });
      if (!saved.ok) return saved;
      await recent.note(path);
      return ok({ handle, name: basename(path), folder: dirname(path), ...saved.value });
    },
    listRecent: async () =>
      (await recent.list()).map(({ path, missing }) => ({
        handle: handles.give(path),
        name: basename(path),
        folder: dirname(path),
        missing,
      })),
    noteRecent: async ({ handle }) => {
      const path = handles.pathOf(handle);
      if (path !== null) await recent.note(path);
      return undefined;
    },
    forgetRecent: async ({ handle }) => {
      const path = handle === null ? null : handles.pathOf(handle);
      if (handle === null) await recent.forgetAll();
      else if (path !== null) await recent.forget(path);
      return undefined;
    },
  };
}

/** What the file holds before it is written, where it can be read. */
async function heldAt({ fs }: Host, path: string): Promise<Held | null> {
  try {
    const read = await readTextFile(fs, path);
    return read.ok ? { text: read.value.text, savedMs: (await fs.facts(path)).mtimeMs } : null;
  } catch {
    return null;
  }
}

async function mayWrite({ fs }: Host, path: string): Promise<boolean> {
  try {
    await fs.mayWrite(path);
    return true;
  } catch {
    return false;
  }
}

/** What is written of the data that a page sent. What could not be opened again must not replace what can. */
export function textToSave(document: unknown, name: string): Result<string, SaveProblem> {
  const text = serializeData(document);
  if (!text.ok) return refuse({ code: 'invalid', name, ...placeOf(text.problem) });
  if (Buffer.byteLength(text.value, 'utf8') <= LIMITS.fileBytes) return text;
  return refuse({ code: 'invalid', name, path: '', expected: `at most ${megabytes(LIMITS.fileBytes)}` });
}

function placeOf(problem: OpenProblem): { readonly path: string; readonly expected: string } {
  const field = problem.code === 'invalid' ? problem.fields[0] : undefined;
  if (field !== undefined) return { path: field.path, expected: field.expected };
  return { path: '', expected: 'a build, a board sheet or a case sheet that can be opened again' };
}
