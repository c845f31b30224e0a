import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { BUILD } from '../../faults/work/documents';
import { bareSheet } from '../scratch';
import type { RecordedWindow } from './recorded-electron';
import { forgetStarted, isPrevented, PATIENTLY, start } from './started-shell';

// Loaded once and kept, while the shell's own modules are loaded anew for each test.
const standIn = await vi.hoisted(() => import('./recorded-electron'));
const { recorded } = standIn;

vi.mock('electron', () => standIn.electron);

beforeEach(forgetStarted);

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
    await vi.waitFor(() => expect(recorded.app.quits).toBe(1), PATIENTLY);
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
    await vi.waitFor(() => expect(ends).toEqual([true]), PATIENTLY);
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
