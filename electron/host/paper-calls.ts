import { basename, dirname } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { Document } from '../../boards/document/document';
import { parseDocument } from '../../boards/document/parse';
import { cableCsv } from '../../boards/handover/cables/cable-list';
import { fromToCsv } from '../../boards/handover/from-to-csv';
import type { PaperProblem } from '../../boards/handover/paper-problem';
import type { FileKind } from '../../boards/host';
import type { PaperOrder } from '../paper/make-paper';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { endingOf } from './new-name';
import { saveBytes } from './save-file';

/** Printed pages: to be looked at, and to be written to a file; lists for other programs. */
export function paperCalls(
  host: Host,
): Pick<HostCalls, 'drawPaper' | 'savePaper' | 'saveList' | 'stopPaper'> {
  const { fs, handles, saving } = host;
  const documentOf = lastDocument();
  let stops = 0;
  const stopper = () => {
    const before = stops;
    return () => stops !== before;
  };
  const make = async (order: PaperOrder) => {
    const isStopped = stopper();
    const kit = await host.paperKit();
    const { makePaper } = await import('../paper/make-paper');
    return makePaper(kit, order, host.today(), isStopped);
  };
  /** The file behind a handle. The page is told where papers go, and is still not taken at its word. */
  const targetOf = (handle: string, kind: FileKind) => {
    const path = handles.pathOf(handle);
    if (path === null) return refuse({ code: 'stale-handle' as const, name: 'this file' });
    const name = basename(path);
    if (!name.toLowerCase().endsWith(endingOf(kind)))
      return refuse({ code: 'bad-name' as const, name, expected: `a name that ends in ${endingOf(kind)}` });
    return ok({ path, name });
  };
  return {
    drawPaper: async ({ document: text, print, page }) => {
      const document = documentOf(text);
      if (!document.ok) return document;
      const order = { document: document.value, print, format: 'svg', page, scale: 1 } as const;
      const made = await make(order);
      if (!made.ok) return made;
      return ok({ svg: Buffer.from(made.value.bytes).toString('utf8'), pages: made.value.allPages });
    },
    savePaper: async ({ handle, document: text, print, format, page, scale }) => {
      const target = targetOf(handle, format);
      if (!target.ok) return target;
      const { path, name } = target.value;
      const document = documentOf(text);
      if (!document.ok) return document;
      const made = await make({ document: document.value, print, format, page, scale });
      if (!made.ok) return made;
      const { bytes, pages } = made.value;
      const saved = await saving.take(path, () => saveBytes(fs, { path, bytes, expected: null }));
      return saved.ok ? ok({ name, folder: dirname(path), pages }) : saved;
    },
    saveList: async ({ handle, build: text, list }) => {
      const target = targetOf(handle, 'csv');
      if (!target.ok) return target;
      const { path, name } = target.value;
      const document = documentOf(text);
      if (!document.ok) return document;
      if (document.value.format !== 'leadwright/build')
        return refuse({ code: 'not-a-board', path: '', expected: 'a build' });
      const write = list === 'cables' ? cableCsv : fromToCsv;
      const bytes = Buffer.from(write(document.value), 'utf8');
      const saved = await saving.take(path, () => saveBytes(fs, { path, bytes, expected: null }));
      return saved.ok ? ok({ name, folder: dirname(path) }) : saved;
    },
    stopPaper: async () => {
      stops += 1;
      return undefined;
    },
  };
}

/**
 * Reads documents, and keeps the last: the pages of one are asked for one by one, and what is kept by it stays
 * known.
 */
function lastDocument(): (text: string) => Result<Document, PaperProblem> {
  let last: { readonly text: string; readonly read: Result<Document, PaperProblem> } | null = null;
  return (text) => {
    if (last?.text !== text) last = { text, read: documentIn(text) };
    return last.read;
  };
}

function documentIn(text: string): Result<Document, PaperProblem> {
  const parsed = parseDocument(text);
  if (parsed.ok) return parsed;
  const field = parsed.problem.code === 'invalid' ? parsed.problem.fields[0] : undefined;
  return refuse({
    code: 'not-a-board',
    path: field?.path ?? '',
    expected: field?.expected ?? 'a board sheet or a build',
  });
}
