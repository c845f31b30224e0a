import type { Build } from '../../boards/document/build';
import type { Document } from '../../boards/document/document';
import { LIMITS } from '../../boards/document/limits';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { askOpen } from '../store/ask';
import type { Message } from '../store/dialog';
import type { BuildFile } from '../store/editor';
import { besideWork, firstOnlyWords, readProblemWords } from '../words/host-words';
import type { Workbench } from '../workbench';
import { mayLeave } from './leave-build';
import { offerSheet } from './offer-sheet';
import { readDocument } from './reading/read-document';
import { savesMade } from './save-build';

/** A document as it was read, and where it lies. */
export interface ReadDocument {
  readonly document: Document;
  readonly file: BuildFile;
}

/** Asks for a file, in the system's dialog or in our own. */
export function chooseFile(workbench: Workbench): Promise<string | null> {
  return workbench.about.dialogs === 'page' ? askOpen(workbench.session) : workbench.host.chooseOpen();
}

/** Reads a file that the person has chosen; shows what is wrong with it otherwise. */
export async function readHandle(workbench: Workbench, handle: string): Promise<ReadDocument | null> {
  const result = await workbench.host.open({ handle });
  if (!result.ok) {
    show(workbench, readProblemWords(result.problem));
    return null;
  }
  const { text, name, folder, stamp, readOnly } = result.value;
  const read = await parsed(workbench, text, { handle: result.value.handle, name, folder, stamp, readOnly });
  // Only now: what was refused is nothing that anybody has worked on. Nobody waits for a list.
  if (read !== null) void workbench.host.noteRecent({ handle }).catch(() => undefined);
  return read;
}

async function parsed(workbench: Workbench, text: string, file: BuildFile): Promise<ReadDocument | null> {
  const result = await readDocument(text);
  if (result.ok) return { document: result.value, file };
  show(workbench, besideWork(openProblemWords(result.problem, file.name)));
  return null;
}

function show(workbench: Workbench, message: Message): void {
  workbench.session.getState().openDialog({ kind: 'message', message });
}

/** File, Open. */
export async function openChosen(workbench: Workbench): Promise<void> {
  const handle = await chooseFile(workbench);
  if (handle !== null) await openHandle(workbench, handle);
}

/** Opens a file by its handle: recent files, the command line, a second start. */
export async function openHandle(workbench: Workbench, handle: string): Promise<void> {
  const before = savesMade(workbench);
  await use(workbench, await readHandle(workbench, handle), before);
}

/** Opens a file that was dropped on the window. The machine does not know its place, so saving will ask. */
export async function openDropped(workbench: Workbench, dropped: File): Promise<void> {
  if (dropped.size > LIMITS.fileBytes) {
    const problem = { code: 'too-large', bytes: dropped.size, limitBytes: LIMITS.fileBytes } as const;
    show(workbench, besideWork(openProblemWords(problem, dropped.name)));
    return;
  }
  const file = { handle: null, name: dropped.name, folder: null, stamp: null, readOnly: false };
  const text = await dropped.text().catch(() => null);
  if (text === null) {
    show(workbench, readProblemWords({ code: 'folder', name: dropped.name }));
    return;
  }
  await use(workbench, await parsed(workbench, text, file), savesMade(workbench));
}

/** Opens the first of the files that came at once, and tells that the others were left. */
export async function openFirst<F>(
  workbench: Workbench,
  files: readonly F[],
  open: (workbench: Workbench, file: F) => Promise<void>,
): Promise<void> {
  const [first] = files;
  if (first === undefined) return;
  await open(workbench, first);
  if (files.length > 1) workbench.session.getState().tell(firstOnlyWords(files.length));
}

/** @param before how many saves were made before anything was read */
async function use(workbench: Workbench, read: ReadDocument | null, before: number): Promise<void> {
  if (read === null) return;
  const { document, file } = read;
  if (document.format === 'leadwright/build') await openBuild(workbench, document, file, before);
  else await offerSheet(workbench, document);
}

/** Puts a build that was read on the bench, when what lies there may go. */
async function openBuild(workbench: Workbench, build: Build, file: BuildFile, before: number): Promise<void> {
  if (!(await mayLeave(workbench))) return;
  // Something was saved since it was read, maybe to this very file: what was read of it is old then.
  if (file.handle !== null && savesMade(workbench) !== before) return openHandle(workbench, file.handle);
  workbench.recovery.begin();
  workbench.session.getState().beginAnew();
  workbench.session.getState().goTo('wire');
  workbench.editor.getState().load(build, file, build);
  workbench.session.getState().announce(`Opened ${build.name}.`);
}
