import { extname } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import { TURNS } from '../../boards/base/units';
import type { Build } from '../../boards/document/build';
import { BENCH_PARTS, type BenchPart } from '../../boards/handover/bench-sheet/options';
import { LABEL_SIZES, type LabelOptions, LabelOptionsZ } from '../../boards/handover/cables/label-options';
import { PAPER_FORMATS, type PaperFormat, SCALES } from '../../boards/handover/order';
import { PAPER_IDS } from '../../boards/handover/page/paper';
import type { PinoutOptions } from '../../boards/handover/pinout/options';

/** What of a file is to be printed: the usual of a build is its bench sheet, of a board sheet its pinout. */
type Wanted =
  | { readonly kind: 'usual' }
  | { readonly kind: 'pinout' }
  | { readonly kind: 'trouble-sheet' }
  | { readonly kind: 'bench-sheet'; readonly parts: readonly BenchPart[] }
  | { readonly kind: 'header'; readonly connector: string }
  | { readonly kind: 'labels'; readonly label: Omit<LabelOptions, 'paper'> };

/** A paper to be printed to a file. */
export interface SheetRequest {
  readonly command: 'sheet';
  readonly file: string;
  readonly out: string;
  readonly format: PaperFormat;
  readonly wanted: Wanted;
  readonly paper: PinoutOptions['paper'];
  /** Null where nothing was said: a build lies as it was left. */
  readonly lying: Build['view'] | null;
  /** Ids of the connectors on a pinout; null for all of them. */
  readonly connectors: readonly string[] | null;
  readonly page: number | null;
  readonly scale: number;
  readonly json: boolean;
}

export const SHEET_OPTIONS = {
  out: { type: 'string' },
  pinout: { type: 'boolean' },
  trouble: { type: 'boolean' },
  part: { type: 'string', multiple: true },
  header: { type: 'string' },
  labels: { type: 'boolean' },
  'label-size': { type: 'string' },
  flat: { type: 'boolean' },
  connector: { type: 'string', multiple: true },
  paper: { type: 'string' },
  turn: { type: 'string' },
  mirror: { type: 'boolean' },
  page: { type: 'string' },
  scale: { type: 'string' },
} as const;

interface Values {
  readonly out?: string | undefined;
  readonly pinout?: boolean | undefined;
  readonly trouble?: boolean | undefined;
  readonly part?: readonly string[] | undefined;
  readonly header?: string | undefined;
  readonly labels?: boolean | undefined;
  readonly 'label-size'?: string | undefined;
  readonly flat?: boolean | undefined;
  readonly connector?: readonly string[] | undefined;
  readonly paper?: string | undefined;
  readonly turn?: string | undefined;
  readonly mirror?: boolean | undefined;
  readonly page?: string | undefined;
  readonly scale?: string | undefined;
}

/** An option of `sheet` that was given to another command. */
export function strayOption(values: Values): string | undefined {
  return optionNames().find((name) => values[name] !== undefined);
}

/** What was expected after an option of `sheet` that was given no value. */
export function bareSheetOption(args: readonly string[]): string | undefined {
  const name = optionNames().find(
    (each) => SHEET_OPTIONS[each].type === 'string' && args.includes(`--${each}`),
  );
  return name && `Expected ${EXPECTED[name]} after “--${name}”.`;
}

function optionNames(): readonly (keyof Values)[] {
  return Object.keys(SHEET_OPTIONS) as (keyof Values)[];
}

const EXPECTED: Readonly<Record<keyof Values, string>> = {
  out: 'a file that ends in .pdf, .svg or .png',
  pinout: 'nothing',
  trouble: 'nothing',
  part: listedParts(),
  header: 'the id of a connector',
  labels: 'nothing',
  'label-size': `width x height in millimetres, such as 80x16, from ${LABEL_SIZES.widthMm.least}x${LABEL_SIZES.heightMm.least} to ${LABEL_SIZES.widthMm.most}x${LABEL_SIZES.heightMm.most}`,
  flat: 'nothing',
  connector: 'the id of a connector',
  paper: '“a4” or “letter”',
  turn: '0, 90, 180 or 270',
  mirror: 'nothing',
  page: 'the number of a page',
  scale: `a number from ${SCALES.least} to ${SCALES.most}`,
};

/** The request, or in a sentence what was expected instead. */
export function sheetRequest(
  files: readonly string[],
  values: Values & { readonly json: boolean; readonly explain?: string | undefined },
): Result<SheetRequest, string> {
  const [file] = files;
  if (file === undefined || files.length > 1)
    return refuse(`Expected one file after “sheet”, found ${files.length === 0 ? 'none' : files.length}.`);
  if (values.explain !== undefined) return refuse('“--explain” goes with “check” and a file.');
  const { out } = values;
  if (out === undefined) return refuse(`Expected “--out” with ${EXPECTED.out}.`);
  const format = PAPER_FORMATS.find((each) => `.${each}` === extname(out).toLowerCase());
  if (format === undefined) return wrong('out', out);
  const paper = values.paper === undefined ? 'a4' : PAPER_IDS.find((id) => id === values.paper);
  if (paper === undefined) return wrong('paper', values.paper);
  const turn = TURNS.find((each) => String(each) === (values.turn ?? '0'));
  if (turn === undefined) return wrong('turn', values.turn);
  const scale = Number(values.scale ?? SCALES.usual);
  if (!(scale >= SCALES.least && scale <= SCALES.most)) return wrong('scale', values.scale);
  if (values.scale !== undefined && format !== 'png')
    return refuse('“--scale” goes with a .png file: the others are sharp at any size.');
  const page = values.page === undefined ? null : Number(values.page);
  if (page !== null && !(Number.isSafeInteger(page) && page >= 1)) return wrong('page', values.page);
  const wanted = wantedFrom(values);
  if (!wanted.ok) return wanted;
  const said = values.turn !== undefined || values.mirror !== undefined;
  return ok({
    command: 'sheet',
    file,
    out,
    format,
    wanted: wanted.value,
    paper,
    lying: said ? { turn, mirrored: values.mirror ?? false } : null,
    connectors: values.connector ?? null,
    page,
    scale,
    json: values.json,
  });
}

/** What is to be printed, or which two options say different things. */
function wantedFrom(values: Values): Result<Wanted, string> {
  const { pinout, trouble, part, header, connector, paper, page, turn, mirror } = values;
  if (values.labels) return labelsFrom(values);
  for (const only of ['label-size', 'flat'] as const)
    if (values[only] !== undefined) return refuse(`“--${only}” goes with “--labels”.`);
  if (header !== undefined) {
    const stray = givenIn({ pinout, trouble, part, connector, paper, page });
    if (stray !== undefined)
      return refuse(`“--header” is one picture by itself: it does not go with “--${stray}”.`);
    return ok({ kind: 'header', connector: header });
  }
  if (trouble) {
    const stray = givenIn({ pinout, part, connector, turn, mirror });
    if (stray !== undefined)
      return refuse(`“--trouble” is a paper of its own: it does not go with “--${stray}”.`);
    return ok({ kind: 'trouble-sheet' });
  }
  if (part !== undefined) {
    if (pinout) return refuse('“--part” chooses parts of the bench sheet: it does not go with “--pinout”.');
    if (connector !== undefined) return refuse('“--connector” goes with “--pinout”, not with “--part”.');
    const strange = part.find((each) => !BENCH_PARTS.some((known) => known === each));
    if (strange !== undefined) return wrong('part', strange);
    return ok({ kind: 'bench-sheet', parts: BENCH_PARTS.filter((known) => part.includes(known)) });
  }
  return ok(pinout ? { kind: 'pinout' } : { kind: 'usual' });
}

/** Labels of a size, folded round the cable where nothing else is said. */
function labelsFrom(values: Values): Result<Wanted, string> {
  const { pinout, trouble, part, header, connector, turn, mirror } = values;
  const stray = givenIn({ pinout, trouble, part, header, connector, turn, mirror });
  if (stray !== undefined)
    return refuse(`“--labels” is a paper of its own: it does not go with “--${stray}”.`);
  const { usual: widthMm } = LABEL_SIZES.widthMm;
  const { usual: heightMm } = LABEL_SIZES.heightMm;
  const said = values['label-size'] ?? `${widthMm}x${heightMm}`;
  const [, width, height] = /^(\d+(?:\.\d+)?)[x×](\d+(?:\.\d+)?)$/u.exec(said) ?? [];
  const label = {
    widthMm: Number(width),
    heightMm: Number(height),
    style: values.flat ? ('flat' as const) : ('flag' as const),
  };
  if (!LabelOptionsZ.safeParse({ paper: 'a4', ...label }).success) return wrong('label-size', said);
  return ok({ kind: 'labels', label });
}

/** The first of some options that was given. */
function givenIn(options: Values): string | undefined {
  return Object.entries(options).find(([, value]) => value !== undefined)?.[0];
}

function listedParts(): string {
  const [last, ...rest] = BENCH_PARTS.map((part) => `“${part}”`).toReversed();
  return `${rest.toReversed().join(', ')} or ${last}`;
}

function wrong(option: keyof Values, found: string | undefined): Result<never, string> {
  return refuse(`Expected ${EXPECTED[option]} after “--${option}”, found “${found}”.`);
}
