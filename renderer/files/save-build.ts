import type { Document } from '../../boards/document/document';
import type { Saved, SaveProblem } from '../../boards/host';
import { NoAnswer } from '../host/no-answer';
import { askQuestion } from '../store/ask';
import type { SavePlace } from '../store/dialog';
import type { OpenBuild } from '../store/editor';
import { noAnswerWords, saveProblemWords, unsavedWords } from '../words/host-words';
import type { Workbench } from '../workbench';
import { chooseFilePlace } from './choose-place';
import { suggestedName } from './file-name';

/** Saves to the file the build came from, or asks where. True once it is on disk. */
export function saveBuild(workbench: Workbench): Promise<boolean> {
  return inTurn(workbench, async (open) => {
    const { file } = open;
    if (file.handle === null || file.readOnly) return saveAs(workbench, open);
    return saveTo(workbench, open, file.handle, file.stamp);
  });
}

/** Asks where, then saves there. */
export function saveBuildAs(workbench: Workbench): Promise<boolean> {
  return inTurn(workbench, (open) => saveAs(workbench, open));
}

const running = new WeakMap<Workbench['editor'], Promise<boolean>>();

/**
 * One save after the other: each has to know what the one before it wrote. What was open when it was asked
 * for is saved, or nothing.
 */
async function inTurn({ editor }: Workbench, work: (open: OpenBuild) => Promise<boolean>): Promise<boolean> {
  const asked = editor.getState().open?.opening;
  const before = running.get(editor);
  const mine = (async () => {
    await before?.catch(() => undefined);
    const { open } = editor.getState();
    return open !== null && open.opening === asked && work(open);
  })().finally(() => {
    if (running.get(editor) === mine) running.delete(editor);
  });
  running.set(editor, mine);
  return mine;
}

const made = new WeakMap<Workbench['editor'], number>();

/** How many saves of builds this window has made: what was read at another count may be old. */
export function savesMade({ editor }: Workbench): number {
  return made.get(editor) ?? 0;
}

export function isSaving({ editor }: Workbench): boolean {
  return running.has(editor);
}

/** Until no save is under way, whatever each comes to. */
export async function savesEnded({ editor }: Workbench): Promise<void> {
  for (let last = running.get(editor); last !== undefined; last = running.get(editor))
    await last.catch(() => undefined);
}

async function saveAs(workbench: Workbench, open: OpenBuild): Promise<boolean> {
  const place = await choosePlace(workbench, open.history.present);
  if (place === null) return false;
  return saveTo(workbench, open, place.handle, null);
}

async function saveTo(
  workbench: Workbench,
  open: OpenBuild,
  handle: string,
  expected: string | null,
): Promise<boolean> {
  workbench.recovery.putOff();
  const result = await write(workbench, open.history.present, handle, expected).catch(ifNoAnswer);
  if (result === null) return unanswered(workbench, open);
  return result.ok ? saved(workbench, open, result.value) : refused(workbench, open, handle, result.problem);
}

/** A board or a case sheet as a file of its own. */
export async function saveSheetAs(workbench: Workbench, sheet: Document): Promise<void> {
  const place = await choosePlace(workbench, sheet);
  if (place === null) return;
  const result = await write(workbench, sheet, place.handle, null);
  const { tell, openDialog } = workbench.session.getState();
  if (result.ok) tell(`Saved ${result.value.name} in ${result.value.folder}.`);
  else openDialog({ kind: 'message', message: saveProblemWords(result.problem) });
}

function write(workbench: Workbench, document: Document, handle: string, expected: string | null) {
  return workbench.host.save({ handle, document, expected });
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

function saved(workbench: Workbench, { opening, history }: OpenBuild, written: Saved): boolean {
  const { durable, ...file } = written;
  made.set(workbench.editor, savesMade(workbench) + 1);
  // Its recovery copy goes by itself, unless there were edits while it was being written.
  workbench.editor.getState().markSaved(opening, history.present, { ...file, readOnly: false });
  const { name } = written;
  workbench.session
    .getState()
    .tell(durable ? `Saved ${name}.` : `Saved ${name}. The disk has not said yet that it has everything.`);
  return true;
}

/** Anything else is a bug. */
function ifNoAnswer(thrown: unknown): null {
  if (thrown instanceof NoAnswer) return null;
  throw thrown;
}

function unanswered({ session }: Workbench, { file }: OpenBuild): boolean {
  session.getState().openDialog({ kind: 'message', message: noAnswerWords(file.name) });
  return false;
}

async function refused(
  workbench: Workbench,
  open: OpenBuild,
  handle: string,
  problem: SaveProblem,
): Promise<boolean> {
  const words = saveProblemWords(problem, unsavedWords(await workbench.recovery.keepNow()));
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
  if (choice === 'save-as') return saveAs(workbench, open);
  return choice === 'replace' && saveTo(workbench, open, handle, null);
}
