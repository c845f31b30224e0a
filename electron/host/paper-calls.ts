import { basename, dirname } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { BoardSheet } from '../../boards/document/board-sheet';
import { parseDocument } from '../../boards/document/parse';
import type { PaperProblem } from '../../boards/handover/paper-problem';
import type { PaperOrder } from '../paper/make-paper';
import type { Host } from './host';
import type { HostCalls } from './host-calls';
import { endingOf } from './new-name';
import { saveBytes } from './save-file';

/** Printed pages: to be looked at, and to be written to a file. */
export function paperCalls(host: Host): Pick<HostCalls, 'drawPaper' | 'savePaper' | 'stopPaper'> {
  const { fs, handles, saving } = host;
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
  return {
    drawPaper: async ({ board: text, options, page }) => {
      const board = boardIn(text);
      if (!board.ok) return board;
      const order = { board: board.value, options, format: 'svg', page, scale: 1 } as const;
      const made = await make(order);
      if (!made.ok) return made;
      return ok({ svg: Buffer.from(made.value.bytes).toString('utf8'), pages: made.value.allPages });
    },
    savePaper: async ({ handle, board: text, options, format, page, scale }) => {
      const path = handles.pathOf(handle);
      if (path === null) return refuse({ code: 'stale-handle', name: 'this file' });
      const name = basename(path);
      // The page is told where papers go, and is still not taken at its word.
      if (!name.toLowerCase().endsWith(endingOf(format)))
        return refuse({ code: 'bad-name', name, expected: `a name that ends in ${endingOf(format)}` });
      const board = boardIn(text);
      if (!board.ok) return board;
      const order = { board: board.value, options, format, page, scale };
      const made = await make(order);
      if (!made.ok) return made;
      const { bytes, pages } = made.value;
      const saved = await saving.take(path, () => saveBytes(fs, { path, bytes, expected: null }));
      return saved.ok ? ok({ name, folder: dirname(path), pages }) : saved;
    },
    stopPaper: async () => {
      stops += 1;
      return undefined;
    },
  };
}

function boardIn(text: string): Result<BoardSheet, PaperProblem> {
  const parsed = parseDocument(text);
  if (parsed.ok && parsed.value.format === 'leadwright/board') return ok(parsed.value);
  const field = !parsed.ok && parsed.problem.code === 'invalid' ? parsed.problem.fields[0] : undefined;
  return refuse({
    code: 'not-a-board',
    path: field?.path ?? '',
    expected: field?.expected ?? 'a board sheet',
  });
}
