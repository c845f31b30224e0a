import { mkdirSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { saveProblemSentences } from '../../../electron/cli/save-words';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { saveFile } from '../../../electron/host/save-file';
import { saveProblemWords } from '../../../renderer/words/host-words';
import { scratchFolder } from '../scratch';

const BLOCK = 4_096;

/** A disk of 4 kB pieces that takes no more, and of which so much is free; with what its room was asked of. */
function fullDisk(freeBytes: number, code = 'ENOSPC') {
  const asked: string[] = [];
  const fs: FileSystem = {
    ...DISK,
    createNew: async (path, mode) => ({
      ...(await DISK.createNew(path, mode)),
      write: () => Promise.reject(Object.assign(new Error(code), { code })),
    }),
    room: async (folder) => {
      asked.push(folder, ...readdirSync(folder));
      return { freeBytes, blockBytes: BLOCK };
    },
  };
  return { fs, asked };
}

async function problemOf(fs: FileSystem, path: string, text: string) {
  const saved = await saveFile(fs, { path, text, expected: null });
  if (saved.ok) throw new Error('It was saved');
  return saved.problem;
}

test('On a full disk it is said what is needed, what is free and what is missing, at the window and the command line', async () => {
  const path = join(scratchFolder(), 'work.build.json');
  const problem = await problemOf(fullDisk(3 * BLOCK).fs, path, 'x'.repeat(4 * BLOCK));
  const said = /there is room for 12\u00a0kB, and 21\u00a0kB is needed/;
  const advice = /^Make at least 9\u00a0kB free there, or /;
  expect(saveProblemWords(problem).lines[0]).toMatch(said);
  expect(saveProblemWords(problem).advice).toMatch(advice);
  expect(saveProblemSentences(problem)).toEqual([expect.stringMatching(said), expect.stringMatching(advice)]);
});

test.each([
  [1, 2],
  [BLOCK, 2],
  [BLOCK + 1, 3],
])('%i bytes take %i pieces of a disk, with one for the name', async (bytes, pieces) => {
  const problem = await problemOf(fullDisk(0).fs, join(scratchFolder(), 'a.json'), 'x'.repeat(bytes));
  expect(problem).toMatchObject({ room: { neededBytes: pieces * BLOCK, freeBytes: 0 } });
});

test('Where nothing is free, that is said', async () => {
  const problem = await problemOf(fullDisk(0).fs, join(scratchFolder(), 'a.json'), 'x');
  expect(saveProblemWords(problem).lines[0]).toContain('nothing is free, and 9\u00a0kB is needed');
  expect(saveProblemSentences(problem)[0]).toContain('nothing is free, and 9\u00a0kB is needed');
});

test('Asked is the disk on which the file lies, not that of a link to it, and when nothing of the try is left', async () => {
  const [far, near] = [scratchFolder(), scratchFolder()];
  writeFileSync(join(far, 'real.json'), '');
  symlinkSync(join(far, 'real.json'), join(near, 'link.json'));
  const { fs, asked } = fullDisk(0);
  await problemOf(fs, join(near, 'link.json'), 'x');
  expect(asked).toEqual([far, 'real.json']);
});

test('Of a new file, the disk of its folder is asked', async () => {
  const folder = join(scratchFolder(), 'within');
  mkdirSync(folder);
  const { fs, asked } = fullDisk(0);
  await problemOf(fs, join(folder, 'new.json'), 'x');
  expect(asked).toEqual([folder]);
});

test('A disk that writes less and does not say so is taken for a full one', async () => {
  const path = join(scratchFolder(), 'a.json');
  const { fs } = fullDisk(0);
  const short: FileSystem = {
    ...fs,
    createNew: async (at, mode) => {
      const file = await DISK.createNew(at, mode);
      return { ...file, write: (bytes) => file.write(bytes.subarray(1)) };
    },
  };
  expect(await problemOf(short, path, 'xx')).toMatchObject({ code: 'no-space', room: { freeBytes: 0 } });
  expect(readdirSync(dirname(path))).toEqual([]);
});

test.each([
  ['has room enough', async () => ({ freeBytes: 2 * BLOCK, blockBytes: BLOCK })],
  ['does not say', () => Promise.reject(Object.assign(new Error('ENOSYS'), { code: 'ENOSYS' }))],
])('A full disk that %s is said to be full, without amounts', async (_, room) => {
  const { fs } = fullDisk(0);
  const problem = await problemOf({ ...fs, room }, join(scratchFolder(), 'a.json'), 'x');
  expect(problem).toEqual({ code: 'no-space', name: 'a.json', room: null });
  expect(saveProblemWords(problem).lines[0]).toMatch(/^The disk is full\. The file/);
  expect(saveProblemWords(problem).advice).not.toMatch(/\d/);
});

test('A used-up quota is not called a full disk: others may still have room', async () => {
  const problem = await problemOf(fullDisk(0, 'EDQUOT').fs, join(scratchFolder(), 'a.json'), 'x');
  expect(problem).toEqual({ code: 'quota-used', name: 'a.json' });
  expect(saveProblemWords(problem).lines[0]).toContain('your account');
});

test('The real disk says how much of it is free, in whole pieces', async () => {
  const { freeBytes, blockBytes } = await DISK.room(scratchFolder());
  expect(blockBytes).toBeGreaterThanOrEqual(512);
  expect(freeBytes % blockBytes).toBe(0);
  expect(freeBytes).toBeGreaterThan(0);
});
