import type { ListKind } from '../../boards/handover/order';
import { problemWords } from '../dialogs/print-pinout/save-paper';
import type { Workbench } from '../workbench';
import { chooseFilePlace } from './choose-place';
import { idFrom } from './file-name';

/** Asks where a list of the open build is to go, and has it written there as values. */
export async function saveList(workbench: Workbench, list: ListKind): Promise<void> {
  const build = workbench.editor.getState().open?.history.present;
  if (build === undefined) return;
  const place = await chooseFilePlace(workbench, `${idFrom(build.name, 'build')}-${list}.csv`, 'csv');
  if (place === null) return;
  const saved = await workbench.host.saveList({ handle: place.handle, build: JSON.stringify(build), list });
  const { tell, openDialog } = workbench.session.getState();
  if (saved.ok) tell(`Saved ${saved.value.name} in ${saved.value.folder}.`);
  else openDialog({ kind: 'message', message: problemWords(saved.problem, place.name) });
}
