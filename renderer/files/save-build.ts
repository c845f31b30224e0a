import type { Build } from '../../boards/document/build';
import type { Document } from '../../boards/document/document';
import { serialize } from '../../boards/document/serialize';
import type { Saved, SaveProblem } from '../../boards/host';
import { askQuestion } from '../store/ask';
import type { SavePlace } from '../store/dialog';
import { saveProblemWords } from '../words/host-words';
import type { Workbench } from '../workbench';
import { chooseFilePlace } from './choose-place';
import { suggestedName } from './file-name';

/** Saves to the file the build came from, or asks where. True once it is on disk. */
export async function saveBuild(workbench: Workbench): Promise<boolean> {
  const { open } = workbench.editor.getState();
  if (open === null) return false;
  const { file, history } = open;
  if (file.handle === null || file.readOnly) return saveBuildAs(workbench);
  const result = await write(workbench, history.present, file.handle, file.stamp);
  return result.ok ? saved(workbench, history.present, result.value) : refused(workbench, result.problem);
}

/** Asks where, then saves there. */
export async function saveBuildAs(workbench: Workbench): Promise<boolean> {
  const { open } = workbench.editor.getState();
  if (open === null) return false;
  const build = open.history.present;
  const place = await choosePlace(workbench, build);
  if (place === null) return false;
  const result = await write(workbench, build, place.handle, null);
  return result.ok ? saved(workbench, build, result.value) : refused(workbench, result.problem);
}

/** A board or a case sheet as a file of its own. */
export async function saveSheetAs(workbench: Workbench, sheet: Document): Promise<void> {
  const place = await choosePlace(workbench, sheet);
  if (place === null) return;
  const result = await write(workbench, sheet, place.handle, null);
  if (result.ok) workbench.session.getState().tell(`Saved ${result.value.name} in ${result.value.folder}.`);
  else await refused(workbench, result.problem);
}

function write(workbench: Workbench, document: Document, handle: string, expected: string | null) {
  return workbench.host.save({ handle, text: serialize(document), expected });
}

function choosePlace(workbench: Workbench, document: Document): Promise<SavePlace | null> {
  return chooseFilePlace(workbench, suggestedName(document), kindOf(document));
}

function kindOf(document: Document): 'build' | 'board' | 'case' {
  switch (document.format) {
    case 'leadwright/build':
      return 'build';
    case 'leadwright/board':
      return 'board';
    case 'leadwright/case':
      return 'case';
  }
}

function saved(workbench: Workbench, build: Build, { handle, name, folder, stamp, durable }: Saved): boolean {
  workbench.editor.getState().markSaved(build, { handle, name, folder, stamp, readOnly: false });
  void workbench.recovery.drop();
  workbench.session
    .getState()
    .tell(durable ? `Saved ${name}.` : `Saved ${name}. The disk has not said yet that it has everything.`);
  return true;
}

async function refused(workbench: Workbench, problem: SaveProblem): Promise<boolean> {
  void workbench.recovery.keepNow();
  const words = saveProblemWords(problem);
  if (problem.code !== 'changed-outside') {
    workbench.session.getState().openDialog({ kind: 'message', message: words });
    return false;
  }
  const choice = await askQuestion(workbench.session, {
    title: words.title,
    lines: [...words.lines, words.advice],
    choices: [
      { id: 'save-as', label: 'Save under another name' },
      { id: 'replace', label: 'Replace it' },
    ],
  });
  if (choice === 'save-as') return saveBuildAs(workbench);
  return choice === 'replace' && replaceOnDisk(workbench);
}

async function replaceOnDisk(workbench: Workbench): Promise<boolean> {
  const { open } = workbench.editor.getState();
  if (open === null || open.file.handle === null) return false;
  const build = open.history.present;
  const result = await write(workbench, build, open.file.handle, null);
  return result.ok ? saved(workbench, build, result.value) : refused(workbench, result.problem);
}
