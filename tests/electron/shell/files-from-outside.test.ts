import { beforeEach, describe, expect, test, vi } from 'vitest';
import { CHANNELS, type HostRequest } from '../../../boards/host';
import type { RecordedWindow } from './recorded-electron';
import { forgetStarted, isPrevented, start } from './started-shell';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('./recorded-electron'));
const { recorded } = standIn;

vi.mock('electron', () => standIn.electron);

beforeEach(forgetStarted);

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
      ['leadwright:request', { kind: 'open', handles: [expect.stringMatching(/^[\w-]{32}$/)] }],
    ]);
    expect(window.focused).toBe(true);
  });

  test('of which a second start names several go to the page together, so that it can tell what it leaves', async () => {
    const { call, window } = await start();
    await call('showState', { name: '', unsaved: false });
    recorded.app.emit('second-instance', {}, ['electron', 'b.build.json', 'c.build.json'], '/there');
    expect(requestsTo(window)).toEqual([{ kind: 'open', handles: [expect.any(String), expect.any(String)] }]);
  });

  test('are none where a second start names none', async () => {
    const { call, window } = await start();
    await call('showState', { name: '', unsaved: false });
    recorded.app.emit('second-instance', {}, ['electron', '--flag', 'notes.txt'], '/there');
    expect(requestsTo(window)).toEqual([]);
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
    const handles = requestsTo(window).flatMap((request) => (request.kind === 'open' ? request.handles : []));
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

function requestsTo(window: RecordedWindow): readonly HostRequest[] {
  return window.webContents.sent.map(([, request]) => request as HostRequest);
}
