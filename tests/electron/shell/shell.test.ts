import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { CHANNELS, type HostRequest } from '../../../boards/host';
import { INPUT_LIMIT_BYTES } from '../../../electron/host/receive';
import { BUILD } from '../../faults/work/documents';
import { bareBoard, bareSheet, scratchFolder } from '../scratch';
import type { RecordedWindow } from './recorded-electron';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('./recorded-electron'));
const { forget, recorded } = standIn;

vi.mock('electron', () => standIn.electron);

interface Started {
  readonly window: RecordedWindow;
  readonly folder: string;
  /** A call as it comes from a frame; our own page's where none is named. */
  readonly call: (channel: string, input?: unknown, senderFrame?: unknown) => Promise<unknown>;
}

/** Starts the shell on the stand-in, with a page of one file. */
async function start(files: readonly string[] = []): Promise<Started> {
  const folder = scratchFolder();
  mkdirSync(join(folder, 'dist', 'renderer'), { recursive: true });
  writeFileSync(join(folder, 'dist', 'renderer', 'index.html'), '<title>Page</title>');
  vi.stubEnv('LEADWRIGHT_DATA', join(folder, 'data'));
  vi.stubGlobal('LEADWRIGHT_VERSION', '0.0.1');
  vi.stubGlobal('LEADWRIGHT_PAGE', ['index.html']);
  recorded.app.path = folder;
  const { argv } = process;
  process.argv = ['electron', 'app', '--', ...files];
  vi.resetModules();
  await import('../../../electron/main');
  process.argv = argv;
  await vi.waitFor(() => expect(standIn.RecordedWindow.all).toHaveLength(1));
  const window = theWindow();
  const sender = window.webContents;
  const call = async (channel: string, input?: unknown, senderFrame: unknown = sender.mainFrame) => {
    const handler = recorded.handlers.get(`leadwright:${channel}`) as (...given: unknown[]) => unknown;
    return handler({ sender, senderFrame }, JSON.stringify(input));
  };
  return { window, folder, call };
}

function theWindow(): RecordedWindow {
  const [window] = standIn.RecordedWindow.all;
  if (window === undefined) throw new Error('No window was made');
  return window;
}

/** Emits something that can be prevented; whether it was. */
function isPrevented(emit: (event: { preventDefault: () => void }) => void): boolean {
  let prevented = false;
  emit({ preventDefault: () => (prevented = true) });
  return prevented;
}

beforeEach(() => {
  forget();
  vi.unstubAllEnvs();
  vi.unstubAllGlobals();
});

describe('The window', () => {
  test('is made sandboxed, isolated and without Node, with nothing fetched for spelling', async () => {
    const { window } = await start();
    expect(window.options.webPreferences).toEqual({
      preload: expect.stringMatching(/preload\.cjs$/),
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInSubFrames: false,
      nodeIntegrationInWorker: false,
      webSecurity: true,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      devTools: false,
    });
    expect(recorded.app.sandboxed).toBe(true);
    expect(window.loaded).toEqual(['app://leadwright/']);
  });

  test('does not leave its page: not by a link, not by a redirect, not in a frame, not in a view of its own', async () => {
    const { webContents } = (await start()).window;
    const leaves = (name: string, url: string, isMainFrame = true) =>
      !isPrevented((event) => webContents.emit(name, { ...event, url, isMainFrame }));
    for (const url of [
      'https://evil.test/',
      'file:///etc/passwd',
      'app://leadwright/other',
      'app://elsewhere/',
      'about:blank',
    ]) {
      expect(leaves('will-navigate', url)).toBe(false);
      expect(leaves('will-frame-navigate', url)).toBe(false);
    }
    expect(leaves('will-frame-navigate', 'app://leadwright/', false)).toBe(false);
    expect(leaves('will-redirect', 'app://leadwright/')).toBe(false);
    expect(leaves('will-attach-webview', 'app://leadwright/')).toBe(false);
  });

  test('may load its page again', async () => {
    const { webContents } = (await start()).window;
    const event = { url: 'app://leadwright/', isMainFrame: true };
    expect(isPrevented((prevention) => webContents.emit('will-navigate', { ...event, ...prevention }))).toBe(
      false,
    );
  });

  test('opens no second one', async () => {
    const { window } = await start();
    expect(window.webContents.openHandler()).toEqual({ action: 'deny' });
  });

  test('grants nothing: no request, no check, no device', async () => {
    const { permissions } = (await start()).window.webContents.session;
    const request = permissions.request as unknown as (
      page: null,
      name: string,
      answer: (yes: boolean) => void,
    ) => void;
    const answers: boolean[] = [];
    for (const name of [
      'media',
      'geolocation',
      'notifications',
      'clipboard-read',
      'fileSystem',
      'openExternal',
    ]) {
      request(null, name, (yes) => answers.push(yes));
    }
    expect(answers).toEqual([false, false, false, false, false, false]);
    expect(permissions.check?.()).toBe(false);
    expect(permissions.device?.()).toBe(false);
  });
});

describe('The page’s files', () => {
  const ask = (url: string, method = 'GET') => recorded.served.get('app')?.(new Request(url, { method }));

  test('are served under their own scheme, as strict as https', async () => {
    await start();
    expect(recorded.schemes).toEqual([
      [
        {
          scheme: 'app',
          privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true },
        },
      ],
    ]);
    const answer = ask('app://leadwright/');
    expect(await answer?.text()).toBe('<title>Page</title>');
    expect(answer?.headers.get('content-security-policy')).toMatch(/^default-src 'none'; script-src 'self';/);
  });

  test.each([
    'app://leadwright/other.html',
    'app://leadwright/index.html?x',
    'app://leadwright/%2e%2e/secret',
    'app://elsewhere/index.html',
    'app://leadwright.evil/index.html',
  ])('and nothing is at %s', async (url) => {
    await start();
    expect(ask(url)?.status).toBe(404);
  });

  test('are not written to, and the disk is not served by its paths', async () => {
    await start();
    expect(ask('app://leadwright/', 'POST')?.status).toBe(404);
    expect(recorded.served.get('file')?.(new Request('http://x'))?.status).toBe(403);
  });
});

describe('Calls', () => {
  test('exactly the channels of the contract are answered', async () => {
    await start();
    expect([...recorded.handlers.keys()].sort()).toEqual(
      Object.keys(CHANNELS)
        .map((name) => `leadwright:${name}`)
        .sort(),
    );
  });

  test('our page is answered', async () => {
    const { call } = await start();
    expect(await call('about', { page: 'page-of-the-shell' })).toMatchObject({
      door: 'electron',
      dialogs: 'native',
      version: '0.0.1',
    });
  });

  test.each([
    ['a frame in the page', { origin: 'app://leadwright' }],
    ['a frame that is gone', null],
  ])('%s is refused on every channel', async (_name, frame) => {
    const { call } = await start();
    for (const channel of Object.keys(CHANNELS))
      await expect(call(channel, undefined, frame)).rejects.toThrow('Refused');
  });

  test.each(['null', 'about:blank', '', 'http://evil.test', 'app://leadwright.evil', 'file://'])(
    'the main frame at %j is refused',
    async (origin) => {
      const { call, window } = await start();
      window.webContents.mainFrame.origin = origin;
      await expect(call('about', { page: 'page-of-the-shell' })).rejects.toThrow('Refused');
    },
  );

  test('an input that its channel does not take is refused, and so is one that is not JSON', async () => {
    const { call, window } = await start();
    await expect(call('open', { handle: '/etc/passwd' })).rejects.toThrow('Refused: bad-input');
    const sender = window.webContents;
    const raw = recorded.handlers.get('leadwright:open') as (...given: unknown[]) => Promise<unknown>;
    const tooLong = ' '.repeat(INPUT_LIMIT_BYTES + 1);
    for (const json of ['{', 7, {}, tooLong])
      await expect(raw({ sender, senderFrame: sender.mainFrame }, json)).rejects.toThrow('Refused: not JSON');
  });

  test('a file comes by the system’s dialog, and the page learns a handle', async () => {
    const { call, folder } = await start();
    const path = join(folder, 'bare.board.json');
    writeFileSync(path, bareBoard('Bare'));
    recorded.dialogs.open = [path];
    const handle = await call('chooseOpen');
    expect(await call('open', { handle })).toMatchObject({ ok: true, value: { name: 'bare.board.json' } });
    recorded.dialogs.open = [];
    expect(await call('chooseOpen')).toBeNull();
  });

  test('a folder for the library comes by the system’s dialog, and is the library then', async () => {
    const { call, folder } = await start();
    writeFileSync(join(folder, 'bare.board.json'), bareBoard('Bare'));
    recorded.dialogs.open = [folder];
    const handle = await call('chooseFolder');
    expect(await call('moveLibrary', { folder: handle })).toEqual({ ok: true, value: null });
    expect(await call('listLibrary')).toMatchObject({
      value: { folder, files: [{ name: 'bare.board.json' }] },
    });
    recorded.dialogs.open = [];
    expect(await call('chooseFolder')).toBeNull();
  });

  test('a name chosen without an ending is given one, and then it is told whether it is taken', async () => {
    const { call, folder } = await start();
    const place = () => call('chooseSave', { suggested: 'Bench.build.json', kind: 'build' });
    recorded.dialogs.save = join(folder, 'bench');
    expect(await place()).toMatchObject({ name: 'bench.build.json', exists: false });
    writeFileSync(join(folder, 'bench.build.json'), '');
    expect(await place()).toMatchObject({ name: 'bench.build.json', exists: true });
    recorded.dialogs.save = join(folder, 'bench.build.json');
    expect(await place()).toMatchObject({ name: 'bench.build.json', exists: false });
    recorded.dialogs.save = '';
    expect(await place()).toBeNull();
  });

  test('the system’s dialog is told to ask before it names a file that is there', async () => {
    const { call } = await start();
    recorded.dialogs.save = '';
    await call('chooseSave', { suggested: 'Bench.build.json', kind: 'build' });
    expect(recorded.dialogs.asked).toEqual([
      expect.objectContaining({
        defaultPath: 'Bench.build.json',
        properties: ['showOverwriteConfirmation'],
      }),
    ]);
  });

  test('a chosen theme is taken on by the parts that are not the page’s', async () => {
    const { call } = await start();
    await call('writeSettings', { theme: 'dark', largeType: false });
    expect(recorded.theme.themeSource).toBe('dark');
  });
});

describe('Closing', () => {
  const close = (window: RecordedWindow) => isPrevented((event) => window.emit('close', event));

  test('goes ahead when nothing is unsaved', async () => {
    const { window, call } = await start();
    await call('showState', { name: 'Bench', unsaved: false });
    expect(close(window)).toBe(false);
  });

  test('waits for the page to ask when something is, and goes ahead when the page has said so', async () => {
    const { window, call } = await start();
    await call('showState', { name: 'Bench', unsaved: true });
    expect(window.edited).toBe(true);
    expect(close(window)).toBe(true);
    expect(window.webContents.sent).toEqual([['leadwright:request', { kind: 'leave' }]]);
    await call('showState', { name: 'Bench', unsaved: false });
    expect(close(window)).toBe(false);
  });

  test('does not wait for a page that hangs', async () => {
    const { window, call } = await start();
    await call('showState', { name: 'Bench', unsaved: true });
    window.emit('unresponsive');
    expect(close(window)).toBe(false);
    window.emit('responsive');
    expect(close(window)).toBe(true);
  });

  test('the program ends when what its files held before has been kept', async () => {
    const { call, folder } = await start();
    const quit = () => isPrevented((event) => recorded.app.emit('will-quit', event));
    recorded.dialogs.save = join(folder, 'work.board.json');
    const chosen = await call('chooseSave', { suggested: 'work.board.json', kind: 'board' });
    const { handle } = chosen as { readonly handle: string };
    await call('save', { handle, document: bareSheet('One'), expected: null });
    expect(quit()).toBe(true);
    await vi.waitFor(() => expect(recorded.app.quits).toBe(1));
    expect(await call('listVersions', { handle })).toHaveLength(1);
    expect(quit()).toBe(false);
  });

  test.each([
    ['a save', 'work.board.json', 'board', 'save', { document: bareSheet('One'), expected: null }],
    ['a list', 'cables.csv', 'csv', 'saveList', { build: BUILD, list: 'cables' }],
  ])('the program does not end while %s is under way', async (_what, name, kind, channel, input) => {
    const { call, folder } = await start();
    const path = join(folder, name);
    recorded.dialogs.save = path;
    const { handle } = (await call('chooseSave', { suggested: name, kind })) as { readonly handle: string };
    const ends: boolean[] = [];
    recorded.app.quit = () => void ends.push(existsSync(path));
    void call(channel, { handle, ...input });
    expect(isPrevented((event) => recorded.app.emit('will-quit', event))).toBe(true);
    await vi.waitFor(() => expect(ends).toEqual([true]));
  });

  test('a program that is ending lets the next one be the first, and has no window any more', async () => {
    const { window, call } = await start();
    await call('showState', { name: '', unsaved: false });
    window.emit('closed');
    expect(recorded.app.released).toBe(0);
    recorded.app.emit('will-quit', { preventDefault: () => undefined });
    expect(recorded.app.released).toBe(1);
    recorded.app.emit('open-file', { preventDefault: () => undefined }, '/there/c.build.json');
    recorded.app.emit('second-instance', {}, ['electron', 'b.build.json'], '/there');
    expect([window.webContents.sent, window.focused]).toEqual([[], false]);
  });

  test('a page that broke down is loaded again once it had come up, and otherwise given up', async () => {
    const { window, call } = await start();
    await call('showState', { name: 'Bench', unsaved: true });
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
    expect(window.webContents.reloads).toBe(1);
    expect(close(window)).toBe(false);
    window.webContents.emit('render-process-gone', {}, { reason: 'crashed' });
    expect(window.destroyed).toBe(true);
  });
});

describe('Files from outside', () => {
  test('named at the start wait for the page', async () => {
    const { call } = await start(['/there/a.build.json', '--flag', '/there/notes.txt']);
    const { toOpen } = CHANNELS.about.output.parse(await call('about', { page: 'page-of-the-shell' }));
    expect(toOpen).toHaveLength(1);
  });

  test('of a second start go to the page that is up, by handle', async () => {
    const { call, window } = await start();
    await call('showState', { name: '', unsaved: false });
    recorded.app.emit('second-instance', {}, ['electron', 'b.build.json'], '/there');
    expect(window.webContents.sent).toEqual([
      ['leadwright:request', { kind: 'open', handle: expect.stringMatching(/^[\w-]{32}$/) }],
    ]);
    expect(window.focused).toBe(true);
  });

  test('opened by the system before the page is up wait for it', async () => {
    const { call } = await start();
    expect(isPrevented((event) => recorded.app.emit('open-file', event, '/there/c.build.json'))).toBe(true);
    expect(
      CHANNELS.about.output.parse(await call('about', { page: 'page-of-the-shell' })).toOpen,
    ).toHaveLength(1);
  });

  test('that come after the page has asked for them, and before it has shown itself, are opened when it has', async () => {
    const { call, window } = await start(['/there/a.build.json']);
    await call('about', { page: 'page-of-the-shell' });
    recorded.app.emit('second-instance', {}, ['electron', 'b.build.json'], '/there');
    recorded.app.emit('open-file', { preventDefault: () => undefined }, '/there/c.build.json');
    expect(window.webContents.sent).toEqual([]);
    await call('showState', { name: '', unsaved: false });
    await call('showState', { name: 'b', unsaved: false });
    const requests = window.webContents.sent.map(([, request]) => request as HostRequest);
    const handles = requests.flatMap((request) => (request.kind === 'open' ? [request.handle] : []));
    expect(await Promise.all(handles.map((handle) => call('open', { handle })))).toMatchObject([
      { problem: { code: 'not-found', name: 'b.build.json' } },
      { problem: { code: 'not-found', name: 'c.build.json' } },
    ]);
    expect(await call('about', { page: 'page-loaded-again' })).toMatchObject({ toOpen: [] });
  });

  test('a second start opens no window of its own', async () => {
    recorded.app.isFirst = false;
    vi.stubGlobal('LEADWRIGHT_VERSION', '0.0.1');
    vi.stubGlobal('LEADWRIGHT_PAGE', []);
    vi.resetModules();
    await import('../../../electron/main');
    expect(recorded.app.quits).toBe(1);
    expect(standIn.RecordedWindow.all).toEqual([]);
  });
});
