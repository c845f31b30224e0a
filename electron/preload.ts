import { contextBridge, ipcRenderer } from 'electron';
import type { Bridge, HostRequest } from '../boards/host';
import { CHANNEL_PREFIX } from './origin';

const ask = (channel: string, json?: string) => ipcRenderer.invoke(CHANNEL_PREFIX + channel, json);

/** One named function for each call. The page is given no way to name a channel. */
const host = {
  about: (json) => ask('about', json),
  chooseOpen: () => ask('chooseOpen'),
  chooseSave: (json) => ask('chooseSave', json),
  browse: (json) => ask('browse', json),
  placeNew: (json) => ask('placeNew', json),
  open: (json) => ask('open', json),
  save: (json) => ask('save', json),
  drawPaper: (json) => ask('drawPaper', json),
  savePaper: (json) => ask('savePaper', json),
  saveList: (json) => ask('saveList', json),
  stopPaper: () => ask('stopPaper'),
  listRecent: () => ask('listRecent'),
  noteRecent: (json) => ask('noteRecent', json),
  forgetRecent: (json) => ask('forgetRecent', json),
  chooseFolder: () => ask('chooseFolder'),
  moveLibrary: (json) => ask('moveLibrary', json),
  listLibrary: () => ask('listLibrary'),
  readSheetHeads: (json) => ask('readSheetHeads', json),
  keepSheet: (json) => ask('keepSheet', json),
  removeSheet: (json) => ask('removeSheet', json),
  readSettings: () => ask('readSettings'),
  writeSettings: (json) => ask('writeSettings', json),
  keepRecovery: (json) => ask('keepRecovery', json),
  dropRecovery: (json) => ask('dropRecovery', json),
  listRecovery: () => ask('listRecovery'),
  takeRecovery: (json) => ask('takeRecovery', json),
  listVersions: (json) => ask('listVersions', json),
  readVersion: (json) => ask('readVersion', json),
  writeReport: (json) => ask('writeReport', json),
  showState: (json) => ask('showState', json),
  onRequest: (listener) => {
    // The event itself stays here: through it the page would reach the channels.
    const pass = (_event: unknown, request: HostRequest) => listener(request);
    ipcRenderer.on(`${CHANNEL_PREFIX}request`, pass);
    return () => {
      ipcRenderer.removeListener(`${CHANNEL_PREFIX}request`, pass);
    };
  },
} satisfies Bridge;

contextBridge.exposeInMainWorld('leadwright', host);
