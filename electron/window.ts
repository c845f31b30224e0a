import { app, BrowserWindow, type Session, type WebContents } from 'electron';
import { ORIGIN } from './origin';

const HOME = `${ORIGIN}/`;

/** The one window: sandboxed, without Node, and with nowhere to go but our own page. */
export function makeWindow(preload: string): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 820,
    minWidth: 640,
    minHeight: 480,
    show: false,
    title: 'Leadwright',
    webPreferences: {
      preload,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      // Its dictionaries would be fetched from the net.
      spellcheck: false,
      devTools: !app.isPackaged,
    },
  });
  window.once('ready-to-show', () => window.show());
  stayOnPage(window.webContents);
  denyAll(window.webContents.session);
  void window.loadURL(HOME);
  return window;
}

function stayOnPage(page: WebContents): void {
  const prevent = (event: { preventDefault: () => void }) => event.preventDefault();
  // The page may load itself again, and go nowhere else.
  const preventLeaving = (event: { url: string; isMainFrame: boolean; preventDefault: () => void }) => {
    if (!event.isMainFrame || event.url !== HOME) event.preventDefault();
  };
  page.on('will-navigate', preventLeaving);
  page.on('will-frame-navigate', preventLeaving);
  page.on('will-redirect', prevent);
  page.on('will-attach-webview', prevent);
  page.setWindowOpenHandler(() => ({ action: 'deny' }));
}

/** The page needs no camera, no position, no devices, no notices: nothing is granted, and nothing asked. */
function denyAll(session: Session): void {
  session.setPermissionRequestHandler((_page, _permission, answer) => answer(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
}
