import type { z } from 'zod';
import type { COMMANDS } from './commands';

type Table = typeof COMMANDS;
export type CommandName = Table[number]['name'];
type ArgsOf<Name extends CommandName> = z.output<Extract<Table[number], { name: Name }>['args']>;

/** A change to a build, as data. */
export type Command = {
  [Name in CommandName]: { readonly name: Name; readonly args: ArgsOf<Name> };
}[CommandName];
