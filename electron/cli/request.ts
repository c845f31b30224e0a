import { parseArgs } from 'node:util';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { DocumentKind } from '../../boards/document/document';
import type { ListKind } from '../../boards/handover/order';
import {
  bareDiagnoseOption,
  DIAGNOSE_OPTIONS,
  type DiagnoseRequest,
  diagnoseRequest,
  strayDiagnoseOption,
  withEachItsOption,
} from './diagnose-request';
import {
  bareSheetOption,
  SHEET_OPTIONS,
  type SheetRequest,
  sheetRequest,
  strayOption,
} from './sheet-request';

/** What a command line asks for. */
export type Request =
  | { readonly command: 'check'; readonly files: readonly string[]; readonly json: boolean }
  | { readonly command: 'explain'; readonly files: readonly string[]; readonly wanted: string }
  | {
      readonly command: 'plan';
      readonly file: string;
      readonly keep: readonly string[];
      readonly json: boolean;
    }
  | { readonly command: 'list'; readonly file: string; readonly list: ListKind; readonly csv: boolean }
  | {
      readonly command: 'identify';
      readonly file: string;
      /** Ids; none where every connector with readings is meant. */
      readonly connectors: readonly string[];
      readonly json: boolean;
    }
  | { readonly command: 'schema'; readonly kind: DocumentKind }
  | SheetRequest
  | DiagnoseRequest
  | { readonly command: 'help' }
  | { readonly command: 'version' };

const KINDS = ['build', 'board', 'case'] as const satisfies readonly DocumentKind[];

/** The request, or in a sentence what was expected instead. */
export function requestFrom(args: readonly string[]): Result<Request, string> {
  const parsed = readArguments(args);
  if (!parsed.ok) return parsed;
  const { values, positionals } = parsed.value;
  const [command, ...rest] = positionals;
  if (values.help || command === 'help' || args.length === 0) return ok({ command: 'help' });
  if (values.version) return ok({ command: 'version' });
  if (command !== 'plan' && values.keep !== undefined) return refuse('“--keep” goes with “plan” and a file.');
  if (command !== 'list' && values.csv) return refuse('“--csv” goes with “list” and a file.');
  if (command !== 'list' && values.cables) return refuse('“--cables” goes with “list” and a file.');
  const misplaced = command === 'diagnose' ? undefined : strayDiagnoseOption(values);
  if (misplaced !== undefined) return refuse(`“--${misplaced}” goes with “diagnose”.`);
  if (command === 'sheet') return sheetRequest(rest, values);
  if (command === 'identify') return identifyRequest(rest, values);
  const stray = strayOption(values);
  if (stray !== undefined) return refuse(`“--${stray}” goes with “sheet” and a file.`);
  if (command === 'check') return checkRequest(rest, values);
  if (command === 'plan') return planRequest(rest, values);
  if (command === 'list') return listRequest(rest, values);
  if (values.explain !== undefined) return refuse('“--explain” goes with “check” and a file.');
  if (command === 'diagnose') return diagnoseRequest(rest, values);
  if (command === 'schema') return schemaRequest(rest);
  return refuse(
    `Expected the command “check”, “diagnose”, “identify”, “list”, “plan”, “schema” or “sheet”, found “${command}”.`,
  );
}

interface CheckOptions {
  readonly json: boolean;
  readonly explain?: string | undefined;
}

type IdentifyOptions = Parameters<typeof strayOption>[0] & CheckOptions;

function checkRequest(files: readonly string[], { json, explain }: CheckOptions): Result<Request, string> {
  if (files.length === 0) return refuse('Expected at least one file after “check”.');
  if (explain !== undefined && json) return refuse('“--explain” is in words: it does not go with “--json”.');
  if (explain !== undefined) return ok({ command: 'explain', files, wanted: explain });
  return ok({ command: 'check', files, json });
}

function planRequest(
  files: readonly string[],
  { json, keep }: { readonly json: boolean; readonly keep?: readonly string[] | undefined },
): Result<Request, string> {
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return refuse('Expected one file after “plan”.');
  return ok({ command: 'plan', file, keep: keep ?? [], json });
}

function listRequest(
  files: readonly string[],
  { csv, cables, json }: { readonly csv: boolean; readonly cables: boolean; readonly json: boolean },
): Result<Request, string> {
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return refuse('Expected one file after “list”.');
  if (json) return refuse('“list” has no “--json”: “--csv” is its form for programs.');
  return ok({ command: 'list', file, list: cables ? 'cables' : 'from-to', csv });
}

function identifyRequest(
  files: readonly string[],
  { json, explain, connector = [], ...others }: IdentifyOptions,
): Result<Request, string> {
  const stray = strayOption(others);
  if (stray !== undefined) return refuse(`“--${stray}” goes with “sheet” and a file.`);
  if (explain !== undefined) return refuse('“--explain” goes with “check” and a file.');
  const [file, ...more] = files;
  if (file === undefined || more.length > 0) return refuse('Expected one file after “identify”.');
  return ok({ command: 'identify', file, connectors: connector, json });
}

function schemaRequest(rest: readonly string[]): Result<Request, string> {
  const [named] = rest;
  const kind = KINDS.find((each) => each === named);
  if (kind !== undefined && rest.length === 1) return ok({ command: 'schema', kind });
  const found = rest.length === 0 ? 'nothing' : `“${rest.join(' ')}”`;
  return refuse(`Expected “build”, “board” or “case” after “schema”, found ${found}.`);
}

const OPTIONS = {
  json: { type: 'boolean', default: false },
  explain: { type: 'string' },
  ...SHEET_OPTIONS,
  ...DIAGNOSE_OPTIONS,
  keep: { type: 'string', multiple: true },
  csv: { type: 'boolean', default: false },
  cables: { type: 'boolean', default: false },
  help: { type: 'boolean', short: 'h', default: false },
  version: { type: 'boolean', default: false },
} as const;

function readArguments(args: readonly string[]) {
  try {
    return ok(
      parseArgs({
        args: [...withEachItsOption(args)],
        options: OPTIONS,
        allowPositionals: true,
        strict: true,
      }),
    );
  } catch {
    // parseArgs tells of an unknown option, and of a missing or an unwanted value, by throwing.
    const option = args.find((arg) => arg.startsWith('-') && !isKnown(arg));
    if (option !== undefined) return refuse(`There is no option “${option}”.`);
    const bare = bareDiagnoseOption(args) ?? bareSheetOption(args);
    if (bare !== undefined) return refuse(bare);
    if (args.at(-1) === '--keep') return refuse('Expected a lead after “--keep”, as “power-switch”.');
    return refuse('Expected a finding after “--explain”, as “reversed” or “reversed:power-led”.');
  }
}

function isKnown(option: string): boolean {
  const [name = ''] = option.slice(2).split('=');
  return option === '-h' || (option.startsWith('--') && Object.hasOwn(OPTIONS, name));
}
