import { type Deed, foldersOf } from './recorded-disk';

/** What lies on the disk after a power cut: contents by path; text is compared, so bytes as they are. */
export type DiskState = ReadonlyMap<string, Uint8Array>;

interface Content {
  /** What a flush has made sure of. */
  readonly sure: Uint8Array;
  /** What was written since; null where nothing was. */
  readonly unsure: Uint8Array | null;
}

/** More names than that in the air at once would be more states than can be tried; no recipe of ours has them. */
const MOST_IN_THE_AIR = 8;

/**
 * Every state in which a power cut after these deeds may leave the disk: names that were not flushed are there or
 * not, each by itself, and content that was not flushed is the former, cut off, full of zeros, or there. More
 * than any one file system does, and so what holds here holds on all of them. Folders are taken for made: the
 * program flushes the ones above (electron/host/file-system.ts).
 *
 * The idea is that of LevelDB's fault injection test and of ALICE (OSDI 2014): keep a record, then replay it into
 * every legal state.
 *
 * @param before what lay there, safely, when the first deed was done
 */
export function* cutStates(before: DiskState, deeds: readonly Deed[]): Generator<DiskState> {
  const contents = new Map<number, Content>();
  const names = new Map<string, number>();
  for (const [path, bytes] of before) {
    names.set(path, -names.size - 1);
    contents.set(-names.size, { sure: bytes, unsure: null });
  }
  let inTheAir: Deed[] = [];
  for (const deed of deeds) {
    if (deed.kind === 'create') contents.set(deed.file, { sure: new Uint8Array(), unsure: null });
    if (deed.kind === 'write') {
      const { sure, unsure } = contents.get(deed.file) ?? { sure: new Uint8Array(), unsure: null };
      contents.set(deed.file, { sure, unsure: joined(unsure ?? sure, deed.bytes) });
    }
    if (deed.kind === 'sync') {
      const { sure, unsure } = contents.get(deed.file) ?? { sure: new Uint8Array(), unsure: null };
      contents.set(deed.file, { sure: unsure ?? sure, unsure: null });
    }
    if (deed.kind === 'sync folder') {
      for (const one of inTheAir.filter((each) => foldersOf(each).includes(deed.path))) carryOut(names, one);
      inTheAir = inTheAir.filter((each) => !foldersOf(each).includes(deed.path));
    } else if (foldersOf(deed).length > 0) inTheAir.push(deed);
  }
  if (inTheAir.length > MOST_IN_THE_AIR) throw new Error(`${inTheAir.length} names are not flushed`);
  for (let chosen = 0; chosen < 2 ** inTheAir.length; chosen++) {
    const now = new Map(names);
    for (const [at, deed] of inTheAir.entries()) if (chosen & (1 << at)) carryOut(now, deed, inTheAir);
    yield* withContents(now, contents);
  }
}

/** A name that is moved brings its file along, also where the name it had before never came to the disk. */
function carryOut(names: Map<string, number>, deed: Deed, inTheAir: readonly Deed[] = []): void {
  if (deed.kind === 'create') names.set(deed.path, deed.file);
  if (deed.kind === 'remove') names.delete(deed.path);
  if (deed.kind !== 'rename') return;
  const made = inTheAir.find((each) => each.kind === 'create' && each.path === deed.from);
  const file = names.get(deed.from) ?? (made?.kind === 'create' ? made.file : undefined);
  if (file === undefined) return;
  names.delete(deed.from);
  names.set(deed.to, file);
}

function* withContents(
  names: ReadonlyMap<string, number>,
  contents: ReadonlyMap<number, Content>,
): Generator<DiskState> {
  const isUnsure = [...names.values()].some((file) => contents.get(file)?.unsure);
  const fates: readonly ((content: Content) => Uint8Array)[] = [
    ({ sure }) => sure,
    ({ sure, unsure }) => unsure ?? sure,
    ({ sure, unsure }) => (unsure ? unsure.subarray(0, unsure.length / 2) : sure),
    ({ sure, unsure }) => (unsure ? new Uint8Array(unsure.length) : sure),
  ];
  for (const fate of isUnsure ? fates : fates.slice(0, 1)) {
    const state = new Map<string, Uint8Array>();
    for (const [path, file] of names) {
      const content = contents.get(file);
      if (content) state.set(path, fate(content));
    }
    yield state;
  }
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  return Uint8Array.from([...first, ...second]);
}
