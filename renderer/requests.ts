import type { HostRequest } from '../boards/host';
import { runAction } from './actions/actions';
import { finishTyping } from './actions/finish-typing';
import { mayLeave } from './files/leave-build';
import { openFirst, openHandle } from './files/open-document';
import type { Workbench } from './workbench';

/** Does what the machine asks: its menu's actions, files it was handed, closing. */
export function answerRequests(workbench: Workbench): void {
  workbench.host.onRequest((request) => void answer(workbench, request));
}

async function answer(workbench: Workbench, request: HostRequest): Promise<void> {
  switch (request.kind) {
    case 'open':
      return openFirst(workbench, request.handles, openHandle);
    case 'leave':
      return closeWindow(workbench);
    case 'action':
      // The system's menu knows of no dialog in front of the window; its actions would pull away what that is about.
      if (workbench.session.getState().dialogs.length === 0) runAction(workbench, request.id);
  }
}

/** The machine's window closes only after the person has said what becomes of unsaved work. */
async function closeWindow(workbench: Workbench): Promise<void> {
  finishTyping();
  const { dialogs } = workbench.session.getState();
  if (dialogs.some(({ kind }) => kind === 'question') || !(await mayLeave(workbench))) return;
  await workbench.recovery.drop();
  await workbench.host.showState({ name: '', unsaved: false });
  window.close();
}
