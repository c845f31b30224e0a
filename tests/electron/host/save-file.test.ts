import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DISK } from '../../../electron/host/file-system';
import { readTextFile } from '../../../electron/host/read-file';
import { saveFile } from '../../../electron/host/save-file';
import { asNobody, scratchFolder } from '../scratch';

async function stampOf(path: string): Promise<string> {
  const read = await readTextFile(DISK, path);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value.stamp;
}

function inScratch(text = 'former'): string {
  const path = join(scratchFolder(), 'work.build.json');
  writeFileSync(path, text);
  return path;
}

test('The stamp of a save is that of the file as it is read afterwards', async () => {
  const path = inScratch();
  const saved = await saveFile(DISK, { path, text: 'next Ω', expected: null });
  expect(saved).toEqual({ ok: true, value: { stamp: await stampOf(path), durable: true } });
});

test('A file that another program has changed since is not replaced', async () => {
  const path = inScratch();
  const expected = await stampOf(path);
  writeFileSync(path, 'of somebody else');
  const saved = await saveFile(DISK, { path, text: 'next', expected });
  expect(saved).toEqual({ ok: false, problem: { code: 'changed-outside', name: 'work.build.json' } });
  expect(readFileSync(path, 'utf8')).toBe('of somebody else');
  expect(readdirSync(join(path, '..'))).toEqual(['work.build.json']);
});

test('A file that was copied back or touched, with the same content, is no change', async () => {
  const path = inScratch();
  const expected = await stampOf(path);
  rmSync(path);
  writeFileSync(path, 'former');
  utimesSync(path, 1, 1);
  expect(await saveFile(DISK, { path, text: 'next', expected })).toMatchObject({ ok: true });
});

test('A file that was deleted since is a change outside', async () => {
  const path = inScratch();
  const expected = await stampOf(path);
  rmSync(path);
  expect(await saveFile(DISK, { path, text: 'next', expected })).toMatchObject({
    problem: { code: 'changed-outside' },
  });
});

test('A link goes on being a link, and what it leads to is saved', async () => {
  const path = inScratch();
  const link = join(scratchFolder(), 'link.build.json');
  symlinkSync(path, link);
  expect(await saveFile(DISK, { path: link, text: 'next', expected: null })).toMatchObject({ ok: true });
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(path, 'utf8')).toBe('next');
});

test('A link that leads nowhere is not replaced by a file', async () => {
  const link = join(scratchFolder(), 'link.build.json');
  symlinkSync(join(scratchFolder(), 'gone'), link);
  expect(await saveFile(DISK, { path: link, text: 'next', expected: null })).toMatchObject({
    problem: { code: 'special' },
  });
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
});

test.each([0o664, 0o600, 0o640])('The rights of the former file are kept: %o', async (mode) => {
  const path = inScratch();
  chmodSync(path, mode);
  await saveFile(DISK, { path, text: 'next', expected: null });
  expect(statSync(path).mode & 0o777).toBe(mode);
});

test('A name as long as the disk allows can be saved', async () => {
  const path = join(scratchFolder(), `${'n'.repeat(255 - '.build.json'.length)}.build.json`);
  expect(await saveFile(DISK, { path, text: 'next', expected: null })).toMatchObject({ ok: true });
  expect(readFileSync(path, 'utf8')).toBe('next');
});

test('A name longer than that is refused as a name', async () => {
  const path = join(scratchFolder(), `${'n'.repeat(256)}.build.json`);
  expect(await saveFile(DISK, { path, text: 'next', expected: null })).toMatchObject({
    problem: { code: 'bad-name' },
  });
});

test('A folder that is gone is told as such', async () => {
  const path = join(scratchFolder(), 'gone', 'work.build.json');
  expect(await saveFile(DISK, { path, text: 'next', expected: null })).toMatchObject({
    problem: { code: 'folder-gone' },
  });
});

test('A folder and a pipe are not saved over', async () => {
  const folder = scratchFolder();
  mkdirSync(join(folder, 'a.build.json'));
  execFileSync('mkfifo', [join(folder, 'b.build.json')]);
  for (const name of ['a.build.json', 'b.build.json']) {
    expect(await saveFile(DISK, { path: join(folder, name), text: 'next', expected: null })).toMatchObject({
      problem: { code: 'special', name },
    });
  }
});

test('A write-protected file is not replaced by way of its folder', async () => {
  const path = inScratch();
  chmodSync(path, 0o444);
  const saved = await asNobody(() => saveFile(DISK, { path, text: 'next', expected: null }));
  expect(saved).toMatchObject({ problem: { code: 'no-permission' } });
  expect(readFileSync(path, 'utf8')).toBe('former');
});

test('A folder that may not be written is told as such', async () => {
  const path = inScratch();
  chmodSync(path, 0o666);
  chmodSync(join(path, '..'), 0o555);
  const saved = await asNobody(() => saveFile(DISK, { path, text: 'next', expected: null }));
  expect(saved).toMatchObject({ problem: { code: 'no-permission' } });
  expect(readFileSync(path, 'utf8')).toBe('former');
});
