import { dirname } from 'node:path';
import { ok, refuse } from '../../boards/base/result';
import type { Host } from './host';
import type { HostCalls } from './host-calls';

type RecoveryCalls = Pick<HostCalls, 'keepRecovery' | 'dropRecovery' | 'listRecovery' | 'takeRecovery'>;

/** Copies of unsaved work: kept while editing, offered after a crash. */
export function recoveryCalls({ handles, recovery }: Host): RecoveryCalls {
  return {
    keepRecovery: async ({ session, page, handle, stamp, name, text, changes }) => {
      const path = handle === null ? null : handles.pathOf(handle);
      const note = { path, stamp, name, changes, savedMs: Date.now() };
      const kept = await recovery.keep(session, page, note, text);
      return kept.ok ? kept : refuse({ ...kept.problem, name });
    },
    dropRecovery: async ({ id, page }) => {
      await recovery.drop(id, page);
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
    takeRecovery: async ({ id, page }) => {
      const copy = await recovery.take(id, page);
      if (copy === null) return refuse({ code: 'not-found', name: 'recovery copy' });
      if (copy === 'elsewhere') return refuse({ code: 'open-elsewhere', name: 'recovery copy' });
      const { path, stamp, name } = copy.header;
      return ok({ text: copy.text, name, stamp, handle: path === null ? null : handles.give(path) });
    },
  };
}
