import { basename, dirname, join } from 'node:path';
import { ok, refuse } from '../../boards/base/result';
import { orNullIfMissing } from './errno';
import { crumbsOf, listFolder } from './folders';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { nameProblem } from './new-name';
import { saveProblemOf } from './save-problem';

/** Looking round in folders, for the window that has to show them itself. */
export function folderCalls(host: Host): Pick<HostCalls, 'browse' | 'placeNew'> {
  const { fs, handles } = host;
  return {
    browse: async ({ folder }) => {
      const path = folder === null ? await startingFolder(host) : handles.pathOf(folder);
      if (path === null) return refuse({ code: 'stale-handle', name: 'this folder' });
      const listing = await listFolder(fs, path);
      if (!listing.ok) return listing;
      return ok({
        handle: handles.give(path),
        crumbs: crumbsOf(path).map((above) => ({
          handle: handles.give(above),
          name: basename(above) || above,
        })),
        entries: listing.value.entries.map(({ path: entry, name, kind, modifiedMs }) => ({
          handle: handles.give(entry),
          name,
          kind,
          modifiedMs,
        })),
        cut: listing.value.cut,
      });
    },
    placeNew: async ({ folder, name, kind }) => {
      const into = handles.pathOf(folder);
      if (into === null) return refuse({ code: 'stale-handle', name });
      const expected = nameProblem(name, kind);
      if (expected !== null) return refuse({ code: 'bad-name', name, expected });
      const path = join(into, name);
      try {
        const exists = (await orNullIfMissing(fs.factsOfLink(path))) !== null;
        return ok({ handle: handles.give(path), name, exists });
      } catch (thrown) {
        return refuse(saveProblemOf(thrown, name));
      }
    },
  };
}

/** Where the last file lies that is still there, or else the person's own folder. */
async function startingFolder({ recent, home }: Host): Promise<string> {
  const last = (await recent.list()).find(({ missing }) => !missing);
  return last === undefined ? home : dirname(last.path);
}
