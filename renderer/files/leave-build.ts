import { askQuestion } from '../store/ask';
import { isUnsaved } from '../store/editor';
import type { Workbench } from '../workbench';
import { isSaving, saveBuild, savesEnded } from './save-build';

/**
 * Asks what to do with unsaved work before it goes, and once more where something was changed while it was being
 * saved. What is still being saved is waited for: it may be what has been undone since. False: the person stays with it.
 */
export async function mayLeave(workbench: Workbench): Promise<boolean> {
  do {
    await savesEnded(workbench);
    if (!(await askedToLeave(workbench))) return false;
  } while (isSaving(workbench));
  return true;
}

async function askedToLeave(workbench: Workbench): Promise<boolean> {
  const { open } = workbench.editor.getState();
  if (open === null || !isUnsaved(open)) return true;
  const choice = await askQuestion(workbench.session, {
    title: `Save the changes to “${open.history.present.name}”?`,
    lines: ['Without saving, the changes since the last save are lost.'],
    choices: [
      { id: 'save', label: 'Save' },
      { id: 'discard', label: 'Don’t save' },
    ],
  });
  if (choice === 'save') return (await saveBuild(workbench)) && mayLeave(workbench);
  return choice === 'discard';
}

/** Back to the start screen, when nothing is lost by it. */
export async function closeBuild(workbench: Workbench): Promise<void> {
  if (!(await mayLeave(workbench))) return;
  const dropped = workbench.recovery.drop();
  workbench.session.getState().beginAnew();
  workbench.editor.getState().close();
  await dropped;
}
