import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, vi } from 'vitest';
import { scratchFolder } from '../scratch';
import { forget, RecordedWindow, recorded } from './recorded-electron';

/** No test is lost to a machine that is busy; what never comes fails all the same. */
export const PATIENTLY = { timeout: 30_000 };

interface Started {
  readonly window: RecordedWindow;
  readonly folder: string;
  /** A call as it comes from a frame; our own page's where none is named. */
  readonly call: (channel: string, input?: unknown, senderFrame?: unknown) => Promise<unknown>;
}

/** Starts the shell on the stand-in, with a page of one file. */
export async function start(files: readonly string[] = []): Promise<Started> {
  const folder = appFolder();
  const { argv } = process;
  process.argv = ['electron', 'app', '--', ...files];
  vi.resetModules();
  await import('../../../electron/main');
  process.argv = argv;
  const window = await theWindow();
  const sender = window.webContents;
  const call = async (channel: string, input?: unknown, senderFrame: unknown = sender.mainFrame) => {
    const handler = recorded.handlers.get(`leadwright:${channel}`) as (...given: unknown[]) => unknown;
    return handler({ sender, senderFrame }, JSON.stringify(input));
  };
  return { window, folder, call };
}

/** A folder for the app with a page of one file, of which the stand-in and the shell that is loaded next are told. */
export function appFolder(): string {
  const folder = scratchFolder();
  mkdirSync(join(folder, 'dist', 'renderer'), { recursive: true });
  writeFileSync(join(folder, 'dist', 'renderer', 'index.html'), '<title>Page</title>');
  vi.stubEnv('LEADWRIGHT_DATA', join(folder, 'data'));
  vi.stubGlobal('LEADWRIGHT_VERSION', '0.0.1');
  vi.stubGlobal('LEADWRIGHT_PAGE', ['index.html']);
  recorded.app.path = folder;
  return folder;
}

/** The one window, as soon as the shell has made it. */
export async function theWindow(): Promise<RecordedWindow> {
  await vi.waitFor(() => expect(RecordedWindow.all).toHaveLength(1), PATIENTLY);
  const [window] = RecordedWindow.all;
  if (window === undefined) throw new Error('No window was made');
  return window;
}

/** Forgets what the test before has started. */
export function forgetStarted(): void {
  forget();
  vi.unstubAllEnvs();
  vi.unstubAllGlobals();
}

/** Emits something that can be prevented; whether it was. */
export function isPrevented(emit: (event: { preventDefault: () => void }) => void): boolean {
  let prevented = false;
  emit({ preventDefault: () => (prevented = true) });
  return prevented;
}
