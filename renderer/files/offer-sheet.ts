import { doCommand } from '../do-command';
import { askQuestion } from '../store/ask';
import type { Workbench } from '../workbench';
import { EMPTY_BOARD, EMPTY_CASE, newBuild, startBuild } from './new-build';
import type { Sheet } from './sheet';

/** Offers to use a board or case sheet in the open build or in a new one. */
export async function offerSheet(workbench: Workbench, sheet: Sheet): Promise<void> {
  const open = workbench.editor.getState().open;
  if (open === null) {
    await startWith(workbench, sheet);
    return;
  }
  const board = sheet.format === 'leadwright/board';
  const choice = await askQuestion(workbench.session, {
    title: `“${sheet.name}” is a ${board ? 'board' : 'case'} sheet`,
    lines: [
      board
        ? 'In this build it would take the place of the present board; plugs that no longer fit go back to the shelf.'
        : 'In this build it would take the place of the present case and its leads.',
    ],
    choices: [
      { id: 'here', label: 'Use it in this build' },
      { id: 'new', label: 'Start a new build with it' },
    ],
  });
  if (choice === 'new') await startWith(workbench, sheet);
  if (choice !== 'here') return;
  putInBuild(workbench, sheet);
}

/** Puts a sheet into the open build, in place of the one that is there. */
export function putInBuild(workbench: Workbench, sheet: Sheet): boolean {
  return doCommand(
    workbench,
    sheet.format === 'leadwright/board'
      ? { name: 'replace-board', args: { board: sheet } }
      : { name: 'replace-case', args: { case: sheet } },
  );
}

/** Starts a new build with a sheet. */
export async function startWith(workbench: Workbench, sheet: Sheet): Promise<void> {
  const build =
    sheet.format === 'leadwright/board'
      ? newBuild('New build', sheet, EMPTY_CASE)
      : newBuild('New build', EMPTY_BOARD, sheet);
  await startBuild(workbench, build);
}
