import type { HostApi, Library, ReadProblem, SheetFile, SheetHead } from '../../boards/host';

/** A file of the library; its head is null until somebody has looked into it. */
export interface ListedSheet extends SheetFile {
  readonly head: SheetHead | null;
}

/** The library as far as it has been read. */
export interface ReadLibrary extends Omit<Library, 'files'> {
  readonly sheets: readonly ListedSheet[];
}

type LibraryHost = Pick<HostApi, 'listLibrary' | 'readSheetHeads'>;

export type LibraryReading =
  | { readonly ok: true; readonly value: ReadLibrary }
  | { readonly ok: false; readonly problem: ReadProblem };

/** Few enough that stopping is felt at once, many enough that asking costs little. */
const STEP = 20;

/**
 * Reads the library: first which files there are, then head by head.
 *
 * @param onStep told what has been read so far, after every few
 * @param isStopped asked before every few; what was not read by then stays unread
 */
export async function readLibrary(
  host: LibraryHost,
  onStep: (library: ReadLibrary) => void,
  isStopped: () => boolean,
): Promise<LibraryReading> {
  const listed = await host.listLibrary();
  if (!listed.ok) return listed;
  const { files, ...where } = listed.value;
  const heads = new Map<string, SheetHead>();
  const soFar = (): ReadLibrary => ({
    ...where,
    sheets: files.map((file) => ({ ...file, head: heads.get(file.handle) ?? null })),
  });
  for (let at = 0; at < files.length && !isStopped(); at += STEP) {
    onStep(soFar());
    const handles = files.slice(at, at + STEP).map(({ handle }) => handle);
    for (const head of await host.readSheetHeads({ handles })) heads.set(head.handle, head);
  }
  return { ok: true, value: soFar() };
}

/** How many files have been looked into. */
export function countRead({ sheets }: ReadLibrary): number {
  return sheets.filter(({ head }) => head !== null).length;
}

/** The sheet of the library that has the same id and is of the same kind. */
export function twinIn(
  { sheets }: ReadLibrary,
  kind: 'board' | 'case',
  id: string,
): (ListedSheet & { readonly head: Extract<SheetHead, { outcome: 'sheet' }> }) | undefined {
  for (const sheet of sheets) {
    const { head } = sheet;
    if (head?.outcome === 'sheet' && head.kind === kind && head.id === id) return { ...sheet, head };
  }
  return undefined;
}

/** Every id that a sheet of that kind has already. */
export function idsIn({ sheets }: ReadLibrary, kind: 'board' | 'case'): ReadonlySet<string> {
  return new Set(
    sheets.flatMap(({ head }) => (head?.outcome === 'sheet' && head.kind === kind ? [head.id] : [])),
  );
}
