import { ok, type Result, refuse } from '../base/result';
import type { Format } from './formats';
import { isRecord } from './is-record';
import type { OpenProblem } from './problem/problem';
import { shownValue } from './problem/shown-value';

/** One step from a version to the next, on data that no schema of today describes. */
export interface Migration {
  readonly slug: string;
  readonly migrate: (old: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

export type Chains = Readonly<Record<Format['format'], readonly Migration[]>>;

/** Sheets that lie inside a build carry versions of their own. */
const NESTED = { board: 'leadwright/board', case: 'leadwright/case' } as const;

/**
 * The same document in the versions of today, the sheets inside it too. Refuses what is newer than
 * today's versions, by number, and a version that is no version. Everything else is left to the schema.
 */
export function upgrade(
  raw: unknown,
  format: Format['format'],
  chains: Chains,
): Result<unknown, OpenProblem> {
  const own = climb(raw, format, chains, '');
  if (!own.ok || format !== 'leadwright/build' || !isRecord(own.value)) return own;
  const build = { ...own.value };
  for (const [key, nested] of Object.entries(NESTED)) {
    const sheet = Object.hasOwn(build, key) ? build[key] : undefined;
    if (!isRecord(sheet) || sheet.format !== nested) continue;
    const current = climb(sheet, nested, chains, `${key}.`);
    if (!current.ok) return current;
    build[key] = current.value;
  }
  return ok(build);
}

function climb(
  raw: unknown,
  format: Format['format'],
  chains: Chains,
  path: string,
): Result<unknown, OpenProblem> {
  if (!isRecord(raw)) return ok(raw);
  const chain = chains[format];
  const known = chain.length + 1;
  const { version } = raw;
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    const expected = known === 1 ? 'the number 1' : `a whole number from 1 to ${known}`;
    const field = { path: `${path}version`, expected, found: shownValue(version) };
    return refuse({ code: 'invalid', fields: [field], more: 0 });
  }
  if (version > known) return refuse({ code: 'newer', format, version, known });
  const steps = chain.slice(version - 1);
  return ok(
    steps.reduce((old, { migrate }, step) => ({ ...migrate(old), version: version + step + 1 }), raw),
  );
}
