import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { Document } from '../../boards/document/document';
import { BENCH_PARTS } from '../../boards/handover/bench-sheet/options';
import { PAPER_FORMATS, type Print } from '../../boards/handover/order';
import { paperProblemWords } from '../../boards/handover/paper-problem-words';
import { dayFrom } from '../host/day';
import { DISK } from '../host/file-system';
import { saveBytes } from '../host/save-file';
import { openNamed } from './check';
import { RefusedZ } from './check-report';
import { saveProblemSentences } from './save-words';
import type { SheetRequest } from './sheet-request';
import { unbroken } from './unbroken';

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

/** Prints what a file holds to another file: the bench sheet of a build, the pinout of a board. */
export async function sheet(request: SheetRequest): Promise<SheetReport> {
  return { format: 'leadwright/sheet-report', version: 1, file: await outcomeOf(request) };
}

async function outcomeOf(request: SheetRequest): Promise<Outcome> {
  const { file, out, format, page, scale } = request;
  const opened = await openNamed(file);
  if (!opened.ok) return opened.problem;
  const document = opened.value;
  const print = printFrom(document, request);
  if (!print.ok) return refused(file, ...print.problem);
  const folder = join(import.meta.dirname, 'paper');
  // Only now: the other commands need not wait for what printing takes.
  const [{ openKit }, { makePaper }] = await Promise.all([
    import('../paper/kit'),
    import('../paper/make-paper'),
  ]);
  const kit = await openKit((name) => readFile(join(folder, name)));
  const made = await makePaper(
    kit,
    { document, print: print.value, format, page, scale },
    dayFrom(new Date(), process.env),
  );
  if (!made.ok) {
    const { line, advice } = paperProblemWords(made.problem);
    return refused(file, made.problem.code, line, advice);
  }
  const { bytes, pages, allPages, pixels } = made.value;
  const saved = await unbroken(() => saveBytes(DISK, { path: out, bytes, expected: null }));
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

type Reason = readonly [code: string, line: string, advice: string];

/** What only a build has, as it begins a sentence. */
const NOT_OF_A_BOARD: Partial<Readonly<Record<SheetRequest['wanted']['kind'], string>>> = {
  header: 'A header with its plugs',
  'trouble-sheet': 'A trouble sheet',
  labels: 'A sheet of cable labels',
};

/** What is printed of a document, or why what was asked for is not to be had of it. */
function printFrom(
  document: Document,
  { wanted, paper, lying, connectors }: SheetRequest,
): Result<Print, Reason> {
  const build = document.format === 'leadwright/build' ? document : null;
  if (document.format === 'leadwright/case') {
    const line = 'It is a case sheet; a board sheet or a build was expected.';
    return refuse(['not-a-board', line, 'Name the board sheet, or a build with the board in it.']);
  }
  if (wanted.kind === 'pinout' || (wanted.kind === 'usual' && !build)) {
    const lies = lying ?? build?.view ?? { turn: 0, mirrored: false };
    return ok({ kind: 'pinout', options: { paper, ...lies, connectors: connectors && [...connectors] } });
  }
  if (!build) {
    const what = NOT_OF_A_BOARD[wanted.kind] ?? 'A bench sheet';
    const line = `${what} is of a build, and this is a board sheet.`;
    return refuse(['not-a-build', line, 'Name the build, or leave the option out to print the pinout.']);
  }
  if (wanted.kind === 'trouble-sheet') return ok({ kind: 'trouble-sheet', options: { paper } });
  const lies = lying ?? build.view;
  if (wanted.kind === 'header')
    return ok({ kind: 'header', options: { ...lies, connector: wanted.connector } });
  if (connectors !== null) {
    const line = '“--connector” chooses connectors of the pinout, and of a build the bench sheet is printed.';
    return refuse(['options', line, 'Add “--pinout”, or leave “--connector” out.']);
  }
  if (wanted.kind === 'labels') return ok({ kind: 'labels', options: { paper, ...wanted.label } });
  const parts = wanted.kind === 'bench-sheet' ? wanted.parts : BENCH_PARTS;
  return ok({ kind: 'bench-sheet', options: { paper, ...lies, parts: [...parts] } });
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
