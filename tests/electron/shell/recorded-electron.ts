import { EventEmitter } from 'node:events';

type Handler = (...given: never[]) => unknown;

/** A page that does nothing but remember what it was told. */
export class RecordedPage extends EventEmitter {
  readonly sent: unknown[][] = [];
  readonly mainFrame = { origin: 'app://leadwright' };
  readonly session = {
    permissions: {} as Record<string, Handler>,
    setPermissionRequestHandler: (handler: Handler) => {
      this.session.permissions.request = handler;
    },
    setPermissionCheckHandler: (handler: Handler) => {
      this.session.permissions.check = handler;
    },
    setDevicePermissionHandler: (handler: Handler) => {
      this.session.permissions.device = handler;
    },
  };
  reloads = 0;
  openHandler: Handler = () => undefined;
  setWindowOpenHandler(handler: Handler): void {
    this.openHandler = handler;
  }
  send(...message: unknown[]): void {
    this.sent.push(message);
  }
  reload(): void {
    this.reloads++;
  }
}

export class RecordedWindow extends EventEmitter {
  static readonly all: RecordedWindow[] = [];
  readonly webContents = new RecordedPage();
  readonly loaded: string[] = [];
  edited = false;
  shown = false;
  destroyed = false;
  focused = false;
  constructor(readonly options: Record<string, unknown>) {
    super();
    RecordedWindow.all.push(this);
  }
  async loadURL(url: string): Promise<void> {
    this.loaded.push(url);
  }
  show(): void {
    this.shown = true;
  }
  focus(): void {
    this.focused = true;
  }
  isMinimized(): boolean {
    return false;
  }
  setDocumentEdited(edited: boolean): void {
    this.edited = edited;
  }
  destroy(): void {
    this.destroyed = true;
  }
}

class RecordedApp extends EventEmitter {
  isPackaged = true;
  sandboxed = false;
  quits = 0;
  isFirst = true;
  released = 0;
  path = '';
  getAppPath(): string {
    return this.path;
  }
  enableSandbox(): void {
    this.sandboxed = true;
  }
  requestSingleInstanceLock(): boolean {
    return this.isFirst;
  }
  releaseSingleInstanceLock(): void {
    this.released++;
  }
  async whenReady(): Promise<void> {}
  quit(): void {
    this.quits++;
  }
}

/**
 * Stands in for the module "electron", and remembers. It is the same for all tests of a file: begin anew by
 * `forget`.
 */
export const recorded = {
  app: new RecordedApp(),
  handlers: new Map<string, Handler>(),
  schemes: [] as unknown[],
  served: new Map<string, (request: Request) => Response>(),
  menus: [] as unknown[],
  exposed: new Map<string, unknown>(),
  invoked: [] as unknown[][],
  renderer: new EventEmitter(),
  dialogs: { open: [] as string[], save: '', asked: [] as Record<string, unknown>[] },
  theme: { themeSource: 'system' },
};

export function forget(): void {
  recorded.app = new RecordedApp();
  RecordedWindow.all.length = 0;
  for (const table of [recorded.handlers, recorded.served, recorded.exposed]) table.clear();
  for (const list of [recorded.schemes, recorded.menus, recorded.invoked, recorded.dialogs.asked])
    list.length = 0;
  recorded.renderer.removeAllListeners();
}

/** What `import ... from 'electron'` gives. */
export const electron = {
  get app() {
    return recorded.app;
  },
  BrowserWindow: RecordedWindow,
  ipcMain: { handle: (channel: string, handler: Handler) => recorded.handlers.set(channel, handler) },
  protocol: {
    registerSchemesAsPrivileged: (schemes: unknown) => recorded.schemes.push(schemes),
    handle: (scheme: string, handler: (request: Request) => Response) => recorded.served.set(scheme, handler),
  },
  Menu: {
    buildFromTemplate: (template: unknown) => template,
    setApplicationMenu: (menu: unknown) => recorded.menus.push(menu),
  },
  dialog: {
    showOpenDialog: async () => ({ filePaths: recorded.dialogs.open }),
    showSaveDialog: async (...given: (RecordedWindow | Record<string, unknown>)[]) => {
      const options = given.at(-1);
      if (options !== undefined && !(options instanceof RecordedWindow)) recorded.dialogs.asked.push(options);
      return { canceled: recorded.dialogs.save === '', filePath: recorded.dialogs.save };
    },
  },
  nativeTheme: recorded.theme,
  contextBridge: { exposeInMainWorld: (name: string, api: unknown) => recorded.exposed.set(name, api) },
  ipcRenderer: {
    invoke: async (...call: unknown[]) => recorded.invoked.push(call),
    on: (channel: string, listener: (...given: unknown[]) => void) => recorded.renderer.on(channel, listener),
    removeListener: (channel: string, listener: (...given: unknown[]) => void) =>
      recorded.renderer.removeListener(channel, listener),
  },
};
