import { openProblemWords } from '../../boards/document/problem/problem-words';
import type { RecoveryOffer } from '../../boards/host';
import { besideWork, readProblemWords } from '../words/host-words';
import type { Workbench } from '../workbench';
import { mayLeave } from './leave-build';
import { readBuild } from './reading/read-document';
import { savesEnded } from './save-build';

const taking = new WeakSet<Workbench['editor']>();

/**
 * Opens a recovery copy as unsaved work; the copy stays until it is saved. Does nothing while another one is being
 * opened: two at once would put one in the place of the other, and the copy of that one away.
 */
export async function openRecovered(workbench: Workbench, offer: RecoveryOffer): Promise<void> {
  const { editor } = workbench;
  if (taking.has(editor)) return;
  taking.add(editor);
  try {
    await takeUp(workbench, offer);
  } finally {
    taking.delete(editor);
  }
}

async function takeUp(workbench: Workbench, offer: RecoveryOffer): Promise<void> {
  const { host, page, session, editor, recovery } = workbench;
  if (!(await mayLeave(workbench))) return;
  const agreed = editor.getState().open?.history.present;
  const read = await host.takeRecovery({ id: offer.id, page });
  if (!read.ok) {
    session.getState().openDialog({ kind: 'message', message: readProblemWords(read.problem) });
    return;
  }
  const { text, name, handle, stamp } = read.value;
  const result = await readBuild(text);
  if (!result.ok) {
    const words = openProblemWords(result.problem, name);
    session.getState().openDialog({ kind: 'message', message: besideWork(words) });
    return;
  }
  await savesEnded(workbench);
  // There was time to work on, or to open something else, while it was read.
  if (editor.getState().open?.history.present !== agreed && !(await mayLeave(workbench))) return;
  recovery.begin(offer.id);
  session.getState().beginAnew();
  session.getState().goTo('wire');
  editor.getState().load(result.value, { handle, name, folder: offer.folder, stamp, readOnly: false }, null);
  session.getState().announce(`Opened the recovery copy of ${result.value.name}.`);
}
