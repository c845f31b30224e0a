import { type IpcMainInvokeEvent, ipcMain } from 'electron';
import { CHANNELS } from '../boards/host';
import type { HostCalls } from './host/host-calls';
import { inputIn, receive } from './host/receive';
import { CHANNEL_PREFIX, ORIGIN } from './origin';

/** Answers every channel of the contract, for our own page only. */
export function answerPage(calls: HostCalls): void {
  for (const channel of Object.keys(CHANNELS)) {
    ipcMain.handle(CHANNEL_PREFIX + channel, async (event, json: unknown) => {
      if (!isOurPage(event)) throw new Error('Refused: not our page');
      const input = inputIn(json ?? '');
      if (input === null) throw new Error('Refused: not JSON');
      const received = await receive(calls, channel, input.value);
      if (!received.ok) throw new Error(`Refused: ${received.problem}`);
      return received.value;
    });
  }
}

/** The main frame of a window, at our own origin exactly; a frame that is gone or blank is not ours. */
function isOurPage({ senderFrame, sender }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && senderFrame.origin === ORIGIN;
}
