import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { INPUT_LIMIT_BYTES } from '../../../electron/host/receive';
import { bareBoard } from '../scratch';
import { forgetStarted, isPrevented, start } from './started-shell';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('./recorded-electron'));
const { recorded } = standIn;

vi.mock('electron', () => standIn.electron);

beforeEach(forgetStarted);

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
