import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { BoardSheet } from '../../boards/document/board-sheet';
import type { Document } from '../../boards/document/document';
import { PAPER_FORMATS } from '../../boards/handover/order';
import { paperProblemWords } from '../../boards/handover/paper-problem-words';
import { dayFrom } from '../host/day';
import { DISK } from '../host/file-system';
import { saveBytes } from '../host/save-file';
import { openNamed } from './check';
import { RefusedZ } from './check-report';
import { saveProblemSentences } from './save-words';
import type { SheetRequest } from './sheet-request';

/** What `leadwright sheet --json` prints. Within version 1 fields may be added, never removed or changed. */
export const SheetReportZ = z.strictObject({
  format: z.literal('leadwright/sheet-report'),
  version: z.literal(1),
  file: z.discriminatedUnion('outcome', [
    z.strictObject({
      outcome: z.literal('written'),
      file: z.string(),
      out: z.string(),
      kind: z.enum(PAPER_FORMATS),
      bytes: z.number(),
      /** Pages in the file, and of the whole. */
      pages: z.number(),
      allPages: z.number(),
      /** Of a PNG. */
      pixels: z.strictObject({ widthPx: z.number(), heightPx: z.number() }).optional(),
    }),
    RefusedZ,
  ]),
});

export type SheetReport = z.infer<typeof SheetReportZ>;
type Outcome = SheetReport['file'];

/** Prints the pinout of the board in a file to another file. */
export async function sheet(request: SheetRequest): Promise<SheetReport> {
  return { format: 'leadwright/sheet-report', version: 1, file: await outcomeOf(request) };
}

async function outcomeOf(request: SheetRequest): Promise<Outcome> {
  const { file, out, format, options, page, scale } = request;
  const opened = await openNamed(file);
  if (!opened.ok) return opened.problem;
  const board = boardIn(opened.value);
  if (board === null) {
    const line = 'It is a case sheet; a board sheet or a build was expected.';
    return refused(file, 'not-a-board', line, 'Name the board sheet, or a build with the board in it.');
  }
  const folder = join(import.meta.dirname, 'paper');
  // Only now: the other commands need not wait for what printing takes.
  const [{ openKit }, { makePaper }] = await Promise.all([
    import('../paper/kit'),
    import('../paper/make-paper'),
  ]);
  const kit = await openKit((name) => readFile(join(folder, name)));
  const made = await makePaper(
    kit,
    { board, options, format, page, scale },
    dayFrom(new Date(), process.env),
  );
  if (!made.ok) {
    const { line, advice } = paperProblemWords(made.problem);
    return refused(file, made.problem.code, line, advice);
  }
  const { bytes, pages, allPages, pixels } = made.value;
  const saved = await saveBytes(DISK, { path: out, bytes, expected: null });
  if (!saved.ok) {
    const [line, advice] = saveProblemSentences(saved.problem);
    return { ...refused(out, saved.problem.code, line, advice), title: `“${out}” was not written` };
  }
  const written = {
    outcome: 'written',
    file,
    out,
    kind: format,
    bytes: bytes.length,
    pages,
    allPages,
  } as const;
  return pixels ? { ...written, pixels } : written;
}

/** The board of a board sheet or a build; null for a case sheet. */
export function boardIn(document: Document): BoardSheet | null {
  switch (document.format) {
    case 'leadwright/build':
      return document.board;
    case 'leadwright/board':
      return document;
    case 'leadwright/case':
      return null;
  }
}

function refused(
  file: string,
  code: string,
  line: string,
  advice: string,
): Extract<Outcome, { outcome: 'refused' }> {
  return {
    file,
    outcome: 'refused',
    code,
    title: `“${file}” cannot be printed`,
    lines: [line],
    advice,
    fields: [],
  };
}

/** "Wrote bench.pdf: 5 pages." */
export function writtenWords({
  out,
  pages,
  allPages,
  pixels,
}: Extract<Outcome, { outcome: 'written' }>): string {
  const some =
    pages < allPages
      ? `${pages} of ${allPages}\u00a0pages`
      : `${pages}\u00a0${pages === 1 ? 'page' : 'pages'}`;
  const size = pixels ? `, ${pixels.widthPx}\u00a0by\u00a0${pixels.heightPx}\u00a0pixels` : '';
  return `Wrote ${out}: ${some}${size}.`;
}
