import { extname } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import { TURNS } from '../../boards/base/units';
import { PAPER_FORMATS, type PaperFormat, SCALES } from '../../boards/handover/order';
import { PAPER_IDS } from '../../boards/handover/page/paper';
import type { PinoutOptions } from '../../boards/handover/pinout/options';

/** A pinout to be printed to a file. */
export interface SheetRequest {
  readonly command: 'sheet';
  readonly file: string;
  readonly out: string;
  readonly format: PaperFormat;
  readonly options: PinoutOptions;
  readonly page: number | null;
  readonly scale: number;
  readonly json: boolean;
}

export const SHEET_OPTIONS = {
  out: { type: 'string' },
  connector: { type: 'string', multiple: true },
  paper: { type: 'string' },
  turn: { type: 'string' },
  mirror: { type: 'boolean' },
  page: { type: 'string' },
  scale: { type: 'string' },
} as const;

interface Values {
  readonly out?: string | undefined;
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
  const { connector: connectors = null } = values;
  const options = {
    paper,
    turn,
    mirrored: values.mirror ?? false,
    connectors: connectors && [...connectors],
  };
  return ok({ command: 'sheet', file, out, format, options, page, scale, json: values.json });
}

function wrong(option: keyof Values, found: string | undefined): Result<never, string> {
  return refuse(`Expected ${EXPECTED[option]} after “--${option}”, found “${found}”.`);
}
