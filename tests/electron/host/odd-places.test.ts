import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  linkSync,
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
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { saveFile } from '../../../electron/host/save-file';
import { asNobody, bareBoard, bareSheet, scratchFolder } from '../scratch';
import { makeMachine } from './machine';
import { inScratch, stampOf } from './work-file';

const save = (path: string, fs: FileSystem = DISK) => saveFile(fs, { path, text: 'next', expected: null });

test('Of two windows on one file the later to save is asked, and the earlier one’s work stays', async () => {
  const one = makeMachine();
  const two = makeMachine({ like: one });
  const path = join(one.home, 'shared.board.json');
  writeFileSync(path, bareBoard('Former'));
  const [first, second] = [one, two].map(({ host, calls }) => ({ calls, handle: host.handles.give(path) }));
  if (!first || !second) throw new Error('Two windows');
  const stamps = await Promise.all([first, second].map(({ calls, handle }) => calls.open({ handle })));
  const expected = stamps.map((opened) => (opened.ok ? opened.value.stamp : ''));
  const { handle } = first;
  expect(
    await first.calls.save({ handle, document: bareSheet('One'), expected: expected[0] ?? '' }),
  ).toMatchObject({
    ok: true,
  });
  const later = { handle: second.handle, document: bareSheet('Two'), expected: expected[1] ?? '' };
  expect(await second.calls.save(later)).toMatchObject({ problem: { code: 'changed-outside' } });
  expect(readFileSync(path, 'utf8')).toBe(bareBoard('One'));
});

test('A disk that is another one in the middle of a folder is told, and nothing is left over', async () => {
  const folder = scratchFolder();
  writeFileSync(join(folder, 'a.json'), 'former');
  const otherDisk = Object.assign(new Error('EXDEV'), { code: 'EXDEV' });
  const fs = { ...DISK, rename: () => Promise.reject(otherDisk) };
  expect(await save(join(folder, 'a.json'), fs)).toMatchObject({
    problem: { code: 'unwritable', detail: 'EXDEV' },
  });
  expect(readdirSync(folder)).toEqual(['a.json']);
  expect(readFileSync(join(folder, 'a.json'), 'utf8')).toBe('former');
});

test('Of a file with two names the one that is saved gets the next content; the other keeps the former', async () => {
  const folder = scratchFolder();
  writeFileSync(join(folder, 'a.json'), 'former');
  linkSync(join(folder, 'a.json'), join(folder, 'b.json'));
  expect(await save(join(folder, 'a.json'))).toMatchObject({ ok: true });
  expect(['a.json', 'b.json'].map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual([
    'next',
    'former',
  ]);
});

// POSIX: PATH_MAX is 4,096 bytes on Linux, the closing zero included.
test('A path longer than the system takes is refused as a name', async () => {
  const folder = scratchFolder();
  const path = join(folder, ...Array.from({ length: 20 }, () => 'd'.repeat(250)), 'a.json');
  expect(await save(path)).toMatchObject({ problem: { code: 'bad-name' } });
});

test.each([
  'לוח.board.json',
  'لوحة.board.json',
  '🔌 bench 🖥.board.json',
  'a\u0301.board.json',
  'ﬀ.board.json',
])('A name in any script is kept letter by letter: %s', async (name) => {
  const folder = scratchFolder();
  expect(await save(join(folder, name))).toMatchObject({ ok: true });
  expect(readdirSync(folder)).toEqual([name]);
});

test('Two names that differ in case only are two files where the disk has it so, else one that is asked about', async () => {
  const folder = scratchFolder();
  writeFileSync(join(folder, 'bench.json'), 'former');
  const differ =
    !readdirSync(folder).includes('BENCH.json') &&
    (await DISK.facts(join(folder, 'BENCH.json')).catch(() => null)) === null;
  const saved = await saveFile(DISK, {
    path: join(folder, 'BENCH.json'),
    text: 'next',
    expected: null,
    onlyNew: true,
  });
  expect(saved.ok).toBe(differ);
  expect(readFileSync(join(folder, 'bench.json'), 'utf8')).toBe('former');
});

test('What a killed save left is removed by the next one in that folder once it is old, and nothing else is', async () => {
  const folder = scratchFolder();
  const ours = `.leadwright-${'0'.repeat(18)}.tmp`;
  const others = ['.leadwright-0.tmp', `.leadwright-${'0'.repeat(18)}.tmp.bak`, 'notes.tmp'];
  for (const name of [ours, ...others]) writeFileSync(join(folder, name), 'x');
  mkdirSync(join(folder, `.leadwright-${'1'.repeat(18)}.tmp`));
  await save(join(folder, 'a.json'));
  expect(readdirSync(folder)).toContain(ours);
  const hourAgo = {
    ...DISK,
    factsOfLink: async (path: string) => ({ ...(await DISK.factsOfLink(path)), mtimeMs: 0 }),
  };
  await save(join(folder, 'a.json'), hourAgo);
  expect(readdirSync(folder).sort()).toEqual(
    [...others, `.leadwright-${'1'.repeat(18)}.tmp`, 'a.json'].sort(),
  );
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
