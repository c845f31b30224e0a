import type { z } from 'zod';
import type { Result } from '../base/result';
import type { Build } from '../document/build';
import type { COMMANDS } from './commands';
import type { Refusal } from './refusal';

/** One way to change a build: what it needs, how it is called in the undo list, what it does. */
export interface CommandDefinition<Name extends string, Args extends z.ZodType> {
  readonly name: Name;
  readonly args: Args;
  /** "Seat POWER SW": as it stands behind Undo. */
  readonly label: (build: Build, args: z.output<Args>) => string;
  /** A new build, or why not. Never changes the old one; returns the same object when nothing changes. */
  readonly apply: (build: Build, args: z.output<Args>) => Result<Build, Refusal>;
}

type Table = typeof COMMANDS;
export type CommandName = Table[number]['name'];
type ArgsOf<Name extends CommandName> = z.output<Extract<Table[number], { name: Name }>['args']>;

/** A change to a build, as data. */
export type Command = {
  [Name in CommandName]: { readonly name: Name; readonly args: ArgsOf<Name> };
}[CommandName];
