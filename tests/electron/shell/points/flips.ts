import type { Flip } from './flipped-shell';

const WINDOW = 'electron/window.ts';
const preference = (from: string, to: string): Flip => ({ file: WINDOW, from, to });
const added = (line: string): Flip => ({
  file: WINDOW,
  from: 'webviewTag: false,',
  to: `webviewTag: false, ${line},`,
});

/** For every point, the settings each of which breaks it. */
export const FLIPS: Readonly<Record<number, readonly Flip[]>> = {
  1: [
    { file: 'electron/window.ts', from: 'loadURL(HOME)', to: "loadURL('http://leadwright.test/')" },
    { file: 'electron/protocol.ts', from: 'secure: true', to: 'secure: false' },
  ],
  2: [
    preference('nodeIntegration: false', 'nodeIntegration: true'),
    preference('nodeIntegrationInWorker: false', 'nodeIntegrationInWorker: true'),
    preference('nodeIntegrationInSubFrames: false', 'nodeIntegrationInSubFrames: true'),
  ],
  3: [preference('contextIsolation: true', 'contextIsolation: false')],
  4: [
    preference('sandbox: true', 'sandbox: false'),
    { file: 'electron/main.ts', from: 'app.enableSandbox();', to: '' },
    { file: 'electron/main.ts', from: 'app.enableSandbox();', to: "app.enableSandbox(); 'no-sandbox';" },
  ],
  5: [
    {
      file: WINDOW,
      from: '(_page, _permission, answer) => answer(false)',
      to: '(_page, permission, answer) => answer(permission === "media")',
    },
    {
      file: WINDOW,
      from: 'setPermissionCheckHandler(() => false)',
      to: 'setPermissionCheckHandler(() => true)',
    },
    {
      file: WINDOW,
      from: 'setDevicePermissionHandler(() => false)',
      to: 'setDevicePermissionHandler(() => true)',
    },
    { file: WINDOW, from: 'denyAll(window.webContents.session);', to: '' },
  ],
  6: [preference('webSecurity: true', 'webSecurity: false')],
  7: [
    {
      file: 'electron/host/page-headers.ts',
      from: "script-src 'self'",
      to: "script-src 'self' 'unsafe-eval'",
    },
    { file: 'electron/host/page-headers.ts', from: `  "form-action 'none'",\n`, to: '' },
    { file: 'electron/protocol.ts', from: '...PAGE_HEADERS, ', to: '' },
  ],
  8: [added('allowRunningInsecureContent: true')],
  9: [added('experimentalFeatures: true')],
  10: [added("enableBlinkFeatures: 'CSSVariables'")],
  11: [{ file: 'renderer/index.html', from: '</body>', to: '<webview allowpopups></webview></body>' }],
  12: [
    preference('webviewTag: false', 'webviewTag: true'),
    { file: WINDOW, from: "page.on('will-attach-webview', prevent);", to: '' },
  ],
  13: [
    { file: WINDOW, from: "page.on('will-navigate', preventLeaving);", to: '' },
    { file: WINDOW, from: "page.on('will-frame-navigate', preventLeaving);", to: '' },
    { file: WINDOW, from: "page.on('will-redirect', prevent);", to: '' },
    { file: WINDOW, from: 'event.url !== HOME', to: '!event.url.startsWith(ORIGIN)' },
    preference('navigateOnDragDrop: false', 'navigateOnDragDrop: true'),
  ],
  14: [{ file: WINDOW, from: "action: 'deny'", to: "action: 'allow'" }],
  15: [
    {
      file: WINDOW,
      from: 'stayOnPage(window.webContents);',
      to: 'stayOnPage(window.webContents); ({} as { openExternal?: (url: string) => void }).openExternal?.("");',
    },
  ],
  16: [{ file: 'package.json', from: '"electron": "', to: '"electron": "^' }],
  17: [
    { file: 'electron/ipc.ts', from: 'senderFrame === sender.mainFrame && ', to: '' },
    { file: 'electron/ipc.ts', from: ' && senderFrame.origin === ORIGIN', to: '' },
    {
      file: 'electron/ipc.ts',
      from: "if (!isOurPage(event)) throw new Error('Refused: not our page');",
      to: '',
    },
  ],
  18: [
    { file: 'electron/protocol.ts', from: 'status: 403', to: 'status: 200' },
    { file: 'electron/protocol.ts', from: 'status: 404', to: 'status: 200' },
  ],
  19: [
    { file: 'electron-builder.yml', from: 'runAsNode: false', to: 'runAsNode: true' },
    { file: 'electron-builder.yml', from: 'onlyLoadAppFromAsar: true', to: 'onlyLoadAppFromAsar: false' },
    {
      file: 'electron-builder.yml',
      from: 'enableNodeOptionsEnvironmentVariable: false',
      to: 'enableNodeOptionsEnvironmentVariable: true',
    },
  ],
  20: [
    {
      file: 'electron/preload.ts',
      from: '(_event: unknown, request: HostRequest) => listener(request)',
      to: '(...all: unknown[]) => (listener as (...each: unknown[]) => void)(...all)',
    },
    {
      file: 'electron/preload.ts',
      from: "exposeInMainWorld('leadwright', host)",
      to: "exposeInMainWorld('leadwright', { ...host, ipcRenderer })",
    },
    {
      file: 'electron/preload.ts',
      from: "contextBridge.exposeInMainWorld('leadwright', host);",
      to: "contextBridge.exposeInMainWorld('leadwright', host); contextBridge.exposeInMainWorld('ipc', ipcRenderer);",
    },
  ],
};
