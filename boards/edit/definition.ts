import type { z } from 'zod';
import { freezeDeep } from '../base/freeze';
import { ok, type Result, refuse } from '../base/result';
import type { Build } from '../document/build';
import { readFields } from '../document/problem/read-fields';
import { withFollowingPoints } from './photo-points';
import type { Refusal } from './refusal';
import { same } from './same';

/** One way to change a build: what it needs, how it is called in the undo list, what it does. */
export interface CommandDefinition<Name extends string, Args extends z.ZodType> {
  readonly name: Name;
  readonly args: Args;
  /** "Seat POWER SW": as it stands behind Undo. Reads the build before the change. */
  readonly label: (build: Build, args: z.output<Args>) => string;
  /** A new build, or why not. Never changes the old one. */
  readonly apply: (build: Build, args: z.output<Args>) => Result<Build, Refusal>;
}

/** A command as the table holds it: it checks whatever it is handed. */
export interface CommandEntry<Name extends string, Args extends z.ZodType> {
  readonly name: Name;
  readonly args: Args;
  /** The undo label. Arguments that do not pass the schema are a bug here: the command was applied before. */
  readonly labelOf: (build: Build, args: unknown) => string;
  /** A new frozen build; the same object when nothing changes; or why not. */
  readonly run: (build: Build, args: unknown) => Result<Build, Refusal>;
}

/** Turns a definition into an entry of the table: schema first, then the change, then the freeze. */
export function defineCommand<const Name extends string, Args extends z.ZodType>(
  definition: CommandDefinition<Name, Args>,
): CommandEntry<Name, Args> {
  const { name, args, label, apply } = definition;
  return {
    name,
    args,
    labelOf: (build, given) => label(build, args.parse(given)),
    run: (build, given) => {
      const read = readFields(args, given);
      if (!read.ok) return refuse({ code: 'invalid', ...read.problem });
      const result = apply(build, read.value);
      if (!result.ok) return result;
      const next = withFollowingPoints(build, result.value);
      return same(build, next) ? ok(build) : ok(freezeDeep(next));
    },
  };
}
