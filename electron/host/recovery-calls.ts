import { dirname } from 'node:path';
import { ok, refuse } from '../../boards/base/result';
import type { Host } from './host';
import type { HostCalls } from './host-calls';

type RecoveryCalls = Pick<HostCalls, 'keepRecovery' | 'dropRecovery' | 'listRecovery' | 'readRecovery'>;

/** Copies of unsaved work: kept while editing, offered after a crash. */
export function recoveryCalls({ handles, recovery }: Host): RecoveryCalls {
  return {
    keepRecovery: async ({ session, handle, stamp, name, text, changes }) => {
      const path = handle === null ? null : handles.pathOf(handle);
      const kept = await recovery.keep(session, { path, stamp, name, changes, savedMs: Date.now() }, text);
      return kept.ok ? kept : refuse({ ...kept.problem, name });
    },
    dropRecovery: async ({ id }) => {
      await recovery.drop(id);
      return undefined;
    },
    listRecovery: async () =>
      (await recovery.list()).map(({ session, copy: { header } }) => ({
        id: session,
        name: header.name,
        folder: header.path === null ? null : dirname(header.path),
        savedMs: header.savedMs,
        changes: header.changes,
      })),
    readRecovery: async ({ id }) => {
      const copy = await recovery.read(id);
      if (copy === null) return refuse({ code: 'not-found', name: 'recovery copy' });
      const { path, stamp, name } = copy.header;
      return ok({ text: copy.text, name, stamp, handle: path === null ? null : handles.give(path) });
    },
  };
}
