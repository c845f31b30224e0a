import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pageDoor } from '../../../electron/browser/page-door';
import { hostCalls } from '../../../electron/host/calls';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { type Host, openHost } from '../../../electron/host/host';
import type { HostCalls } from '../../../electron/host/host-calls';

/** The folders of one machine: what the person has, and the program's own. */
export interface Place {
  readonly home: string;
  readonly data: string;
}

export function makePlace(below: string): Place {
  const top = mkdtempSync(join(below, 'place-'));
  const place = { home: join(top, 'home'), data: join(top, 'data') };
  mkdirSync(place.home);
  return place;
}

export function clearPlace({ home }: Place): void {
  rmSync(join(home, '..'), { recursive: true, force: true });
}

/** The program as it is started anew in some folders; without `fs`, on the sound disk. */
export function startAt({ home, data }: Place, fs: FileSystem = DISK): { host: Host; calls: HostCalls } {
  const host = openHost({
    fs,
    toOpen: [],
    readPaperFile: () => Promise.reject(new Error('Nothing is printed here')),
    version: '0.0.1',
    surroundings: { platform: 'linux', home, env: { LEADWRIGHT_DATA: data } },
    door: pageDoor(() => undefined),
  });
  return { host, calls: hostCalls(host) };
}
