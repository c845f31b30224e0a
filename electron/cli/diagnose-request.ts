import { ok, type Result, refuse } from '../../boards/base/result';

/** What was noticed and tried on a machine that does not start. */
export interface DiagnoseRequest {
  readonly command: 'diagnose';
  /** Null where a typical build stands in. */
  readonly file: string | null;
  readonly observe: readonly string[];
  readonly not: readonly string[];
  /** Each as TRIAL=RESULT. */
  readonly tried: readonly string[];
  /** Each as CAUSE=FACTOR. */
  readonly prior: readonly string[];
  readonly json: boolean;
}

export const DIAGNOSE_OPTIONS = {
  observe: { type: 'string', multiple: true },
  not: { type: 'string', multiple: true },
  tried: { type: 'string', multiple: true },
  prior: { type: 'string', multiple: true },
} as const;

type OptionName = keyof typeof DIAGNOSE_OPTIONS;

type Values = { readonly [Name in OptionName]?: readonly string[] | undefined };

const NAMES = Object.keys(DIAGNOSE_OPTIONS) as OptionName[];

const EXPECTED: Readonly<Record<OptionName, string>> = {
  observe: 'an observation, as “nothing-on-press”,',
  not: 'an observation, as “standby-light”,',
  tried: 'a trial with its result, as “bare-pins=same”,',
  prior: 'a cause with how many times as often as usual it is met, as “coin-cell=3”,',
};

/** An option of `diagnose` that was given to another command. */
export function strayDiagnoseOption(values: Values): string | undefined {
  return NAMES.find((name) => values[name] !== undefined);
}

/** What was expected after an option of `diagnose` that was given no value. */
export function bareDiagnoseOption(args: readonly string[]): string | undefined {
  const bare = NAMES.find((name) =>
    args.some((arg, at) => arg === `--${name}` && (args[at + 1] ?? '-').startsWith('-')),
  );
  return bare && `Expected ${EXPECTED[bare]} after “--${bare}”.`;
}

/** One option may be followed by several values: each is given the option for itself. */
export function withEachItsOption(args: readonly string[]): readonly string[] {
  if (args[0] !== 'diagnose') return args;
  let option: string | undefined;
  return args.flatMap((arg, at) => {
    if (arg.startsWith('-')) {
      option = NAMES.some((name) => arg === `--${name}`) ? arg : undefined;
      return [arg];
    }
    return option === undefined || args[at - 1] === option ? [arg] : [option, arg];
  });
}

export function diagnoseRequest(
  files: readonly string[],
  { observe = [], not = [], tried = [], prior = [], json }: Values & { readonly json: boolean },
): Result<DiagnoseRequest, string> {
  const [file = null, ...more] = files;
  if (more.length > 0) return refuse(`Expected at most one file after “diagnose”, found ${files.length}.`);
  return ok({ command: 'diagnose', file, observe, not, tried, prior, json });
}
