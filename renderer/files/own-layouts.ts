import type { HostApi, ReadProblem } from '../../boards/host';
import type { KnownLayout } from '../../boards/pinout/looks-like/known-layout';
import { readDocument } from './reading/read-document';

/** The connectors of a person's own board sheets, as far as they could be read. */
interface OwnLayouts {
  readonly layouts: readonly KnownLayout[];
  readonly sheets: number;
  /** Files of the library that hold no sheet, or cannot be read. */
  readonly unread: number;
}

export type OwnReading =
  | { readonly ok: true; readonly value: OwnLayouts }
  | { readonly ok: false; readonly problem: ReadProblem };

/** Few enough that stopping is felt at once, many enough that asking costs little. */
const STEP = 20;

/**
 * Reads every board sheet of the person's library in full.
 *
 * @param onStep told how many of how many files have been looked into, before every few
 * @param isStopped asked before every few; what was not read by then is left out
 */
export async function readOwnLayouts(
  host: Pick<HostApi, 'listLibrary' | 'readSheetHeads' | 'open'>,
  onStep: (done: number, of: number) => void,
  isStopped: () => boolean,
): Promise<OwnReading> {
  const listed = await host.listLibrary();
  if (!listed.ok) return listed;
  const { files } = listed.value;
  const layouts: KnownLayout[] = [];
  let sheets = 0;
  let unread = 0;
  for (let at = 0; at < files.length && !isStopped(); at += STEP) {
    onStep(at, files.length);
    const handles = files.slice(at, at + STEP).map(({ handle }) => handle);
    for (const head of await host.readSheetHeads({ handles })) {
      if (head.outcome === 'sheet' && head.kind === 'case') continue;
      const own = head.outcome === 'sheet' ? await layoutsIn(host, head.handle) : null;
      if (own === null) unread += 1;
      else {
        sheets += 1;
        layouts.push(...own);
      }
    }
  }
  return { ok: true, value: { layouts, sheets, unread } };
}

/** The connectors of a board sheet; null when its file is none any more. */
async function layoutsIn(
  host: Pick<HostApi, 'open'>,
  handle: string,
): Promise<readonly KnownLayout[] | null> {
  const read = await host.open({ handle });
  const parsed = read.ok ? await readDocument(read.value.text) : null;
  if (!parsed?.ok || parsed.value.format !== 'leadwright/board') return null;
  const { name, connectors } = parsed.value;
  return connectors.map((connector) => ({ from: name, connector }));
}
