import { CHANNELS } from '../../../boards/host';
import type { HostCalls } from '../../../electron/host/host-calls';

export const SESSION = 'session-of-the-page';
export const PAGE = 'page-of-the-window';

/** Has a copy kept of work that was never saved, as the window does it. */
export async function keep(calls: HostCalls, text: string, changes: number) {
  const work = {
    session: SESSION,
    page: PAGE,
    handle: null,
    stamp: null,
    name: 'Bench three',
    text,
    changes,
  };
  return CHANNELS.keepRecovery.output.parse(await calls.keepRecovery(work));
}

/** The text that a page gets which takes that work up again; null where there is none. */
export async function takenUp(calls: HostCalls, page = 'page-after-restart'): Promise<string | null> {
  const read = await calls.takeRecovery({ id: SESSION, page });
  return read.ok ? read.value.text : null;
}
