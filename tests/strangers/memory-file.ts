import type { FileSystem, OpenFile } from '../../electron/host/file-system';

export interface MemoryFile extends FileSystem {
  /** What was asked for besides reading: names of operations. */
  readonly asked: readonly string[];
  /** Every path that was named to it, once. */
  readonly paths: ReadonlySet<string>;
}

/** A disk that holds one file under every name. It is read as any file is; whatever would write is noted. */
export function memoryFile(bytes: Uint8Array): MemoryFile {
  const asked: string[] = [];
  const paths = new Set<string>();
  /** Notes the path of what only looks. */
  const at =
    <T>(look: (path: string) => T) =>
    async (path: string): Promise<T> => {
      paths.add(path);
      return look(path);
    };
  const facts = {
    size: BigInt(bytes.length),
    mtimeNs: 1n,
    mtimeMs: 1,
    ino: 1n,
    mode: 0o644,
    kind: 'file',
  } as const;
  const never = (name: string) => async (): Promise<never> => {
    asked.push(name);
    throw Object.assign(new Error('EROFS'), { code: 'EROFS' });
  };
  const open = (): OpenFile => {
    let at = 0;
    return {
      facts: async () => facts,
      read: async (into) => {
        const piece = bytes.subarray(at, at + into.length);
        into.set(piece);
        at += piece.length;
        return piece.length;
      },
      write: never('write'),
      chmod: never('chmod'),
      sync: never('sync'),
      close: async () => undefined,
    };
  };
  return {
    asked,
    paths,
    openToRead: at(open),
    createNew: never('create'),
    openFolder: never('open folder'),
    facts: at(() => facts),
    factsOfLink: at(() => facts),
    mayWrite: never('may write'),
    realpath: at((path) => path),
    rename: never('rename'),
    remove: never('remove'),
    makeFolder: never('make folder'),
    list: never('list'),
    room: never('room'),
  };
}
