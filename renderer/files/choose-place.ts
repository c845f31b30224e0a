import type { FileKind } from '../../boards/host';
import { askQuestion, askSave } from '../store/ask';
import type { SavePlace } from '../store/dialog';
import type { Workbench } from '../workbench';

/**
 * Asks where a new file is to go, by the system's dialog or by the window's own, and again before a file is replaced
 * that the dialog has not asked about; null: nowhere.
 */
export async function chooseFilePlace(
  workbench: Workbench,
  suggested: string,
  kind: FileKind,
): Promise<SavePlace | null> {
  const page = workbench.about.dialogs === 'page';
  const place = await (page
    ? askSave(workbench.session, suggested, kind)
    : workbench.host.chooseSave({ suggested, kind }));
  if (place === null || !place.exists) return place;
  const choice = await askQuestion(workbench.session, {
    title: `Replace “${place.name}”?`,
    lines: ['There is a file of that name in the folder. Its content would be lost.'],
    choices: [{ id: 'replace', label: 'Replace' }],
  });
  return choice === 'replace' ? place : null;
}
