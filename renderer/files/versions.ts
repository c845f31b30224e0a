import type { Build } from '../../boards/document/build';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { serialize } from '../../boards/document/serialize';
import type { Version } from '../../boards/host';
import { besideWork, readProblemWords } from '../words/host-words';
import { counted } from '../words/list-words';
import { whenWords } from '../words/time-words';
import type { Workbench } from '../workbench';
import { mayLeave } from './leave-build';
import { readBuild } from './reading/read-document';

/** What the file of the open build held before, newest first. */
export async function versionsOfOpen({ host, editor }: Workbench): Promise<readonly Version[]> {
  const handle = editor.getState().open?.file.handle ?? null;
  return handle === null ? [] : host.listVersions({ handle });
}

/** What stands in a version, in a few words; beside the build that is open. */
export async function versionWords({ host, editor }: Workbench, { id }: Version): Promise<string> {
  const { open } = editor.getState();
  if (open === null || open.file.handle === null) return '';
  const read = await host.readVersion({ handle: open.file.handle, id });
  if (!read.ok) return 'no longer whole';
  if (read.value.text === serialize(open.history.present)) return 'as it is on the screen';
  const parsed = await readBuild(read.value.text);
  return parsed.ok ? contentWords(parsed.value) : 'not a build';
}

function contentWords({ board, case: caseSheet, seats }: Build): string {
  const connectors = counted(board.connectors.length, 'connector');
  const leads = counted(caseSheet.leads.length, 'lead');
  return `${connectors}, ${leads}, ${counted(seats.length, 'plug')} seated`;
}

/**
 * Opens a version as unsaved work on the same file: nothing on disk is changed until it is saved, and what the
 * file holds then becomes a version itself.
 */
export async function openVersion(workbench: Workbench, { id, savedMs }: Version): Promise<void> {
  const { host, session, editor, recovery } = workbench;
  const { open } = editor.getState();
  if (open === null || open.file.handle === null) return;
  const read = await host.readVersion({ handle: open.file.handle, id });
  if (!read.ok) {
    session.getState().openDialog({ kind: 'message', message: readProblemWords(read.problem) });
    return;
  }
  const result = await readBuild(read.value.text);
  if (!result.ok) {
    const words = openProblemWords(result.problem, open.file.name);
    session.getState().openDialog({ kind: 'message', message: besideWork(words) });
    return;
  }
  // Only now, for there may be edits and saves while it is read.
  if (!(await mayLeave(workbench))) return;
  const now = editor.getState().open;
  if (now?.opening !== open.opening) return;
  const { file } = now;
  recovery.begin();
  session.getState().beginAnew();
  editor.getState().load(result.value, file, null);
  session
    .getState()
    .tell(`This is ${file.name} as it was saved ${whenWords(savedMs, Date.now())}. Save to keep it so.`);
}
