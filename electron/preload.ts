import { contextBridge, ipcRenderer } from 'electron';
import type { HostApi, HostRequest } from '../boards/host';
import { CHANNEL_PREFIX } from './origin';

const ask = (channel: string, input?: unknown) => ipcRenderer.invoke(CHANNEL_PREFIX + channel, input);

/** One named function for each call. The page is given no way to name a channel. */
const host = {
  about: (input) => ask('about', input),
  chooseOpen: () => ask('chooseOpen'),
  chooseSave: (input) => ask('chooseSave', input),
  browse: (input) => ask('browse', input),
  placeNew: (input) => ask('placeNew', input),
  open: (input) => ask('open', input),
  save: (input) => ask('save', input),
  drawPaper: (input) => ask('drawPaper', input),
  savePaper: (input) => ask('savePaper', input),
  saveList: (input) => ask('saveList', input),
  stopPaper: () => ask('stopPaper'),
  listRecent: () => ask('listRecent'),
  noteRecent: (input) => ask('noteRecent', input),
  forgetRecent: (input) => ask('forgetRecent', input),
  chooseFolder: () => ask('chooseFolder'),
  moveLibrary: (input) => ask('moveLibrary', input),
  listLibrary: () => ask('listLibrary'),
  readSheetHeads: (input) => ask('readSheetHeads', input),
  keepSheet: (input) => ask('keepSheet', input),
  removeSheet: (input) => ask('removeSheet', input),
  readSettings: () => ask('readSettings'),
  writeSettings: (input) => ask('writeSettings', input),
  keepRecovery: (input) => ask('keepRecovery', input),
  dropRecovery: (input) => ask('dropRecovery', input),
  listRecovery: () => ask('listRecovery'),
  takeRecovery: (input) => ask('takeRecovery', input),
  listVersions: (input) => ask('listVersions', input),
  readVersion: (input) => ask('readVersion', input),
  writeReport: (input) => ask('writeReport', input),
  showState: (input) => ask('showState', input),
  onRequest: (listener) => {
    // The event itself stays here: through it the page would reach the channels.
    const pass = (_event: unknown, request: HostRequest) => listener(request);
    ipcRenderer.on(`${CHANNEL_PREFIX}request`, pass);
    return () => {
      ipcRenderer.removeListener(`${CHANNEL_PREFIX}request`, pass);
    };
  },
} satisfies HostApi;

contextBridge.exposeInMainWorld('leadwright', host);
