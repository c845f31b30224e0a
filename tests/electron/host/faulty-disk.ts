import { DISK, type FileSystem, type OpenFile } from '../../../electron/host/file-system';

/** How an operation goes wrong: with a failure the system names, or by writing half and saying nothing. */
export type Fault =
  | 'ENOSPC'
  | 'EDQUOT'
  | 'EIO'
  | 'EACCES'
  | 'EPERM'
  | 'EROFS'
  | 'EMFILE'
  | 'ENOENT'
  | 'EINVAL'
  | 'short';

export const FAULTS: readonly Fault[] = [
  'ENOSPC',
  'EDQUOT',
  'EIO',
  'EACCES',
  'EPERM',
  'EROFS',
  'EMFILE',
  'ENOENT',
  'EINVAL',
  'short',
];

export interface FaultyDisk extends FileSystem {
  /** Names of the operations so far, the failed ones included. */
  readonly log: string[];
  readonly failed: string[];
}

export interface Trouble {
  /** Which operation, counted from 0; more than there are, for none. */
  readonly at: number;
  readonly fault: Fault;
  /** Once, or from there on for ever, except that files can still be removed. */
  readonly lasting: boolean;
}

/** The real disk, on which the operation of that number goes wrong. */
export function faultyDisk({ at, fault, lasting }: Trouble): FaultyDisk {
  const log: string[] = [];
  const failed: string[] = [];

  async function step<T>(name: string, work: () => Promise<T>): Promise<T> {
    const number = log.push(name) - 1;
    const hit = lasting ? number >= at && name !== 'remove' : number === at;
    if (!hit || fault === 'short') return work();
    failed.push(name);
    throw Object.assign(new Error(fault), { code: fault });
  }

  function watched(file: OpenFile): OpenFile {
    return {
      facts: () => step('facts of open', file.facts),
      read: (into) => step('read', () => file.read(into)),
      write: (bytes) =>
        step('write', () => file.write(isShort() ? bytes.subarray(0, bytes.length / 2) : bytes)),
      chmod: (mode) => step('chmod', () => file.chmod(mode)),
      // What a power cut would do is not tried here, so nothing is gained by waiting for the platter.
      sync: () => step('sync', async () => undefined),
      // A file is closed even where closing says that something went wrong.
      close: async () => {
        await file.close();
        await step('close', async () => undefined);
      },
    };
  }

  function isShort(): boolean {
    const number = log.length - 1;
    const short = fault === 'short' && (lasting ? number >= at : number === at);
    if (short) failed.push('write');
    return short;
  }

  return {
    log,
    failed,
    openToRead: (path) => step('open to read', async () => watched(await DISK.openToRead(path))),
    createNew: (path, mode) => step('create', async () => watched(await DISK.createNew(path, mode))),
    openFolder: (path) => step('open folder', async () => watched(await DISK.openToRead(path))),
    facts: (path) => step('facts', () => DISK.facts(path)),
    factsOfLink: (path) => step('facts of link', () => DISK.factsOfLink(path)),
    mayWrite: (path) => step('may write', () => DISK.mayWrite(path)),
    realpath: (path) => step('realpath', () => DISK.realpath(path)),
    rename: (from, to) => step('rename', () => DISK.rename(from, to)),
    remove: (path) => step('remove', () => DISK.remove(path)),
    makeFolder: (path) => step('make folder', () => DISK.makeFolder(path)),
    list: (path) => step('list', () => DISK.list(path)),
    room: (folder) => step('room', () => DISK.room(folder)),
  };
}
