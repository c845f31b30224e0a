import { linkSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { saveFile } from '../../../electron/host/save-file';
import { bareBoard, scratchFolder } from '../scratch';
import { makeMachine } from './machine';

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
    await first.calls.save({ handle, text: bareBoard('One'), expected: expected[0] ?? '' }),
  ).toMatchObject({
    ok: true,
  });
  const later = { handle: second.handle, text: bareBoard('Two'), expected: expected[1] ?? '' };
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
