import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { electronBinary } from '../../../electron/start/electron-binary.mjs';
import { findBrowser } from '../../../electron/start/find-browser.mjs';
import { asNobody, scratchFolder } from '../scratch';

function program(folder: string, name: string, mode = 0o755): string {
  const path = join(folder, name);
  writeFileSync(path, '');
  chmodSync(path, mode);
  return path;
}

test('A browser is found by its usual names on the path, the first folder first', () => {
  const [first, second] = [scratchFolder(), scratchFolder()];
  const chrome = program(first, 'google-chrome');
  expect(findBrowser({ PATH: `${first}:${second}` }, 'linux')).toBe(chrome);
  const chromium = program(second, 'chromium');
  expect(findBrowser({ PATH: `${first}:${second}` }, 'linux')).toBe(chromium);
});

test('The browser that was named is taken, and no other in its place', () => {
  const folder = scratchFolder();
  program(folder, 'chromium');
  const named = program(folder, 'mine');
  expect(findBrowser({ PATH: folder, LEADWRIGHT_BROWSER: named }, 'linux')).toBe(named);
  expect(findBrowser({ PATH: folder, LEADWRIGHT_BROWSER: join(folder, 'gone') }, 'linux')).toBeNull();
});

test('A file that cannot be run is no browser', async () => {
  const folder = scratchFolder();
  program(folder, 'chromium', 0o644);
  expect(await asNobody(async () => findBrowser({ PATH: folder }, 'linux'))).toBeNull();
});

test('On Windows the usual places are looked into', () => {
  const folder = scratchFolder();
  expect(findBrowser({ PROGRAMFILES: folder }, 'win32')).toBeNull();
});

test('Electron’s program is looked for as a file, where its installer puts it or where one is named', () => {
  const home = scratchFolder();
  expect(electronBinary({}, home)).toBeNull();
  writeFileSync(join(home, 'path.txt'), 'electron');
  expect(electronBinary({}, home)).toBeNull();
  mkdirSync(join(home, 'dist'));
  const installed = program(join(home, 'dist'), 'electron');
  expect(electronBinary({}, home)).toBe(installed);
  const elsewhere = scratchFolder();
  const named = program(elsewhere, 'electron');
  expect(electronBinary({ ELECTRON_OVERRIDE_DIST_PATH: elsewhere }, home)).toBe(named);
});
