import type { Result } from '../base/result';
import type { Build } from '../document/build';
import type { Command } from './command';
import { COMMANDS } from './commands';
import type { Refusal } from './refusal';

type Entry = (typeof COMMANDS)[number];

const byName: ReadonlyMap<string, Entry> = new Map(COMMANDS.map((entry) => [entry.name, entry]));

function entryOf(command: Command): Entry {
  const entry = byName.get(command.name);
  if (entry === undefined) throw new Error(`No command ${command.name}`);
  return entry;
}

/** The only way to change a build. Gives a new frozen build, the same one when nothing changes, or why not. */
export function applyCommand(build: Build, command: Command): Result<Build, Refusal> {
  return entryOf(command).run(build, command.args);
}

/** What the command does, in the words of the undo list: "Seat POWER SW". Takes the build before the change. */
export function labelOf(build: Build, command: Command): string {
  return entryOf(command).labelOf(build, command.args);
}
