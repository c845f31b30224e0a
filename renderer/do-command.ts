import { labelOf } from '../boards/edit/apply';
import type { Command } from '../boards/edit/command';
import { refusalWords } from '../boards/edit/refusal-words';
import type { Workbench } from './workbench';

/** Carries a command out; what was done, or why not, stands in the strip and is said. */
export function doCommand(workbench: Pick<Workbench, 'editor' | 'session'>, command: Command): boolean {
  const build = workbench.editor.getState().open?.history.present;
  if (build === undefined) return false;
  const result = workbench.editor.getState().run(command);
  const words = result.ok ? `Done: ${labelOf(build, command)}.` : refusalWords(result.problem, build);
  workbench.session.getState().tell(words);
  return result.ok;
}
