import { join } from 'node:path';
import { pageDoor } from '../../../electron/browser/page-door';
import { hostCalls } from '../../../electron/host/calls';
import type { Door } from '../../../electron/host/door';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { type Host, openHost } from '../../../electron/host/host';
import type { HostCalls } from '../../../electron/host/host-calls';
import { kitFile } from '../paper/kit';
import { scratchFolder } from '../scratch';

export interface Machine {
  readonly host: Host;
  readonly calls: HostCalls;
  /** The person's own folder. */
  readonly home: string;
  /** Settings, recent files and recovery copies. */
  readonly data: string;
}

export interface MachineOptions {
  readonly fs?: FileSystem;
  readonly toOpen?: readonly string[];
  readonly door?: Partial<Door>;
  /** Another machine's folders, to start again on them. */
  readonly like?: Machine;
}

/** A machine of its own for one test, with no dialogs. */
export function makeMachine({ fs = DISK, toOpen = [], door = {}, like }: MachineOptions = {}): Machine {
  const home = like?.home ?? scratchFolder();
  const data = like?.data ?? join(scratchFolder(), 'data');
  const host = openHost({
    fs,
    toOpen,
    readPaperFile: kitFile,
    version: '0.0.1',
    surroundings: { platform: 'linux', home, env: { LEADWRIGHT_DATA: data } },
    door: { ...pageDoor(() => undefined), ...door },
  });
  return { host, calls: hostCalls(host), home, data };
}
