import { CHANNELS, type ChannelName, type HostApi, type Input, type Output } from '../../boards/host';

/** Takes the input of a call to the machine, as JSON, and brings back what was answered. */
type Ask = (channel: ChannelName, json?: string) => Promise<unknown>;

/** The machine by whichever door: each call is asked in JSON, and its answer is read by its schema. */
export function hostBy(ask: Ask, onRequest: HostApi['onRequest']): HostApi {
  const through = <C extends ChannelName>(channel: C) => {
    return async (input?: Input<C>): Promise<Output<C>> => {
      const answer = await ask(channel, JSON.stringify(input));
      // The schema is the one that Output<C> is inferred from; the compiler cannot join the two by C.
      return CHANNELS[channel].output.parse(answer) as Output<C>;
    };
  };
  return {
    about: through('about'),
    chooseOpen: through('chooseOpen'),
    chooseSave: through('chooseSave'),
    browse: through('browse'),
    placeNew: through('placeNew'),
    open: through('open'),
    save: through('save'),
    drawPaper: through('drawPaper'),
    savePaper: through('savePaper'),
    saveList: through('saveList'),
    stopPaper: through('stopPaper'),
    listRecent: through('listRecent'),
    noteRecent: through('noteRecent'),
    forgetRecent: through('forgetRecent'),
    chooseFolder: through('chooseFolder'),
    moveLibrary: through('moveLibrary'),
    listLibrary: through('listLibrary'),
    readSheetHeads: through('readSheetHeads'),
    keepSheet: through('keepSheet'),
    removeSheet: through('removeSheet'),
    readSettings: through('readSettings'),
    writeSettings: through('writeSettings'),
    keepRecovery: through('keepRecovery'),
    dropRecovery: through('dropRecovery'),
    listRecovery: through('listRecovery'),
    takeRecovery: through('takeRecovery'),
    listVersions: through('listVersions'),
    readVersion: through('readVersion'),
    writeReport: through('writeReport'),
    showState: through('showState'),
    onRequest,
  };
}
