import type { Command } from '../boards/edit/command';
import { refusalWords } from '../boards/edit/refusal-words';
import type { Workbench } from './workbench';

/** Carries a command out; a refusal is told in the strip and to screen readers. */
export function doCommand(workbench: Pick<Workbench, 'editor' | 'session'>, command: Command): boolean {
  const build = workbench.editor.getState().open?.history.present;
  if (build === undefined) return false;
  const result = workbench.editor.getState().run(command);
  if (!result.ok) workbench.session.getState().tell(refusalWords(result.problem, build));
  return result.ok;
}
