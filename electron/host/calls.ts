import { basename } from 'node:path';
import { documentCalls } from './document-calls';
import { isThere } from './file-system';
import { folderCalls } from './folder-calls';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { libraryCalls } from './library-calls';
import { withEnding } from './new-name';
import { paperCalls } from './paper-calls';
import { recoveryCalls } from './recovery-calls';
import { watchedCalls } from './under-way';
import { versionCalls } from './version-calls';

/** The handlers of a machine: what its doors share, and what they do differently. */
export function hostCalls(host: Host): HostCalls {
  const { door, handles, settings } = host;
  const calls: HostCalls = {
    about: async ({ page }) => {
      // The first call of every page, also of one that was loaded again; the shell has one at a time.
      if (door.kind === 'electron') host.recovery.endPages();
      host.recovery.beginPage(page);
      return {
        version: host.version,
        platform: host.platform,
        door: door.kind,
        dialogs: door.dialogs,
        toOpen: host.arrivals.take().map(handles.give),
      };
    },
    chooseOpen: async () => {
      const path = await door.chooseOpen();
      return path === null ? null : handles.give(path);
    },
    chooseSave: async ({ suggested, kind }) => {
      const chosen = await door.chooseSave(suggested);
      if (chosen === null) return null;
      const path = withEnding(chosen, kind);
      // The system's dialog has asked whether to replace a file of the chosen name, and knows no other.
      const exists = path !== chosen && (await isThere(host.fs, path));
      return { handle: handles.give(path), name: basename(path), exists };
    },
    readSettings: async () => {
      const chosen = await settings.read();
      door.showTheme(chosen.theme);
      return chosen;
    },
    writeSettings: async (chosen) => {
      door.showTheme(chosen.theme);
      await settings.change(() => chosen);
      return undefined;
    },
    writeReport: async (trouble) => host.reports.write({ part: 'window', ...trouble }),
    showState: async (state) => {
      door.showState(state);
      return undefined;
    },
    ...folderCalls(host),
    ...documentCalls(host),
    ...paperCalls(host),
    ...libraryCalls(host),
    ...recoveryCalls(host),
    ...versionCalls(host),
  };
  return watchedCalls(calls, host.underWay);
}
