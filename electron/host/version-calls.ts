import { basename } from 'node:path';
import { ok, refuse } from '../../boards/base/result';
import type { Host } from './host';
import type { HostCalls } from './host-calls';

/** What a file held before. */
export function versionCalls({ handles, versions }: Host): Pick<HostCalls, 'listVersions' | 'readVersion'> {
  return {
    listVersions: async ({ handle }) => {
      const path = handles.pathOf(handle);
      return path === null ? [] : [...(await versions.list(path))];
    },
    readVersion: async ({ handle, id }) => {
      const path = handles.pathOf(handle);
      if (path === null) return refuse({ code: 'stale-handle', name: 'this file' });
      const text = await versions.read(path, id);
      return text === null ? refuse({ code: 'not-found', name: basename(path) }) : ok({ text });
    },
  };
}
