import type { Build } from '../../../boards/document/build';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { applyCommand } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { refusalWords } from '../../../boards/edit/refusal-words';

/** The build after these commands, each of which has to be carried out and to leave a build that opens again. */
export function done(build: Build, ...commands: readonly Command[]): Build {
  return commands.reduce((before, command) => {
    const result = applyCommand(before, command);
    if (!result.ok) throw new Error(refusalWords(result.problem, before));
    const opened = parseDocument(serialize(result.value));
    if (!opened.ok) throw new Error(`Does not open again: ${JSON.stringify(opened.problem)}`);
    return result.value;
  }, build);
}

/** What a person is told about a command that is not carried out; throws when it is. */
export function toldNo(build: Build, command: Command): string {
  const result = applyCommand(build, command);
  if (result.ok) throw new Error(`Carried out: ${command.name}`);
  return refusalWords(result.problem, build);
}
