import { readFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { extname, join } from 'node:path';
import { app, type BrowserWindow, dialog, nativeTheme } from 'electron';
import type { HostRequest } from '../boards/host';
import { BUILT } from './built';
import { hostCalls } from './host/calls';
import { DISK } from './host/file-system';
import { openHost } from './host/host';
import { loadPageFiles } from './host/page-files';
import { workEnded } from './host/under-way';
import { answerPage } from './ipc';
import { makeLeaving } from './leaving';
import { putUpMenu } from './menu';
import { namedFiles } from './named-files';
import { CHANNEL_PREFIX } from './origin';
import { claimScheme, servePage } from './protocol';
import { makeWindow } from './window';

const DOCUMENTS = [{ name: 'Builds, board sheets and case sheets', extensions: ['json'] }];
const PAPERS = ['pdf', 'svg', 'png'];
const SMOKE_LIMIT_MS = 60_000;

const built = join(app.getAppPath(), 'dist');
const isSmoke = process.argv.includes('--smoke');
const leaving = makeLeaving();
let window: BrowserWindow | null = null;
let pageIsUp = false;
let workIsDone = false;

const host = openHost({
  fs: DISK,
  version: BUILT.version,
  surroundings: { platform: process.platform, home: homedir(), env: process.env },
  readPaperFile: (name) => readFile(join(built, 'paper', name)),
  toOpen: namedFiles(process.argv.slice(1), process.cwd()),
  door: {
    kind: 'electron',
    dialogs: 'native',
    chooseOpen: async () => {
      const options = { filters: DOCUMENTS, properties: ['openFile' as const] };
      const chosen = await (window ? dialog.showOpenDialog(window, options) : dialog.showOpenDialog(options));
      return chosen.filePaths[0] ?? null;
    },
    chooseSave: async (suggested) => {
      // On Linux the dialog asks before it names a file that is there only where it is told to.
      const properties = ['showOverwriteConfirmation' as const];
      const options = { filters: filtersFor(suggested), defaultPath: suggested, properties };
      const chosen = await (window ? dialog.showSaveDialog(window, options) : dialog.showSaveDialog(options));
      return chosen.canceled ? null : chosen.filePath;
    },
    chooseFolder: async () => {
      const options = { properties: ['openDirectory' as const, 'createDirectory' as const] };
      const chosen = await (window ? dialog.showOpenDialog(window, options) : dialog.showOpenDialog(options));
      return chosen.filePaths[0] ?? null;
    },
    showTheme: (theme) => {
      nativeTheme.themeSource = theme;
    },
    showState: (state) => {
      pageIsUp = true;
      // What came after the page had asked what to open, and before it could be told.
      open(host.arrivals.take());
      leaving.note(state);
      window?.setDocumentEdited(state.unsaved);
      if (isSmoke) app.exit(0);
    },
  },
});

/** What the system's dialog offers for a file that is suggested under some name. */
function filtersFor(suggested: string) {
  const ending = extname(suggested).slice(1);
  return PAPERS.includes(ending) ? [{ name: ending.toUpperCase(), extensions: [ending] }] : DOCUMENTS;
}

function tell(request: HostRequest): void {
  window?.webContents.send(`${CHANNEL_PREFIX}request`, request);
}

function open(paths: readonly string[]): void {
  if (!pageIsUp) host.arrivals.add(paths);
  else if (paths.length > 0) tell({ kind: 'open', handles: paths.map(host.handles.give) });
}

function openWindow(): void {
  window = makeWindow(join(built, 'preload.cjs'));
  window.on('close', (event) => {
    if (leaving.mayClose()) return;
    event.preventDefault();
    tell({ kind: 'leave' });
  });
  window.on('closed', () => {
    window = null;
  });
  window.on('unresponsive', () => leaving.noteAnswering(false));
  window.on('responsive', () => leaving.noteAnswering(true));
  window.webContents.on('render-process-gone', (_event, { reason }) => {
    void host.underWay.add(host.reports.write({ part: 'page', name: reason, message: '', stack: '' }));
    leaving.note({ unsaved: false });
    // Once more for a page that had shown itself; one that never did would only fail again.
    if (pageIsUp) window?.webContents.reload();
    else window?.destroy();
    pageIsUp = false;
  });
}

app.enableSandbox();
claimScheme();
app.on('window-all-closed', () => app.quit());
app.on('will-quit', (event) => {
  if (workIsDone) return;
  event.preventDefault();
  // Whoever starts the program meanwhile gets a window of its own; here there is none any more.
  app.releaseSingleInstanceLock();
  void workEnded(host).then(() => {
    workIsDone = true;
    app.quit();
  });
});
app.on('open-file', (event, path) => {
  event.preventDefault();
  open([path]);
});

if (app.requestSingleInstanceLock()) {
  app.on('second-instance', (_event, args, folder) => {
    open(namedFiles(args.slice(1), folder));
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  void app.whenReady().then(async () => {
    servePage(await loadPageFiles(join(built, 'renderer'), BUILT.pageNames));
    answerPage(hostCalls(host));
    putUpMenu((id) => tell({ kind: 'action', id }));
    openWindow();
  });
  if (isSmoke) setTimeout(() => app.exit(1), SMOKE_LIMIT_MS);
} else {
  app.quit();
}
