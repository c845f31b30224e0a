import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { keptFile } from '../../../electron/host/kept-file';
import { scratchFolder } from '../scratch';

const CountZ = z.strictObject({ count: z.int() });
const FALLBACK = { count: 0 };
const MEBIBYTE = 1024 * 1024;

const fileIn = (folder: string) => join(folder, 'own', 'count.json');
const kept = (path: string, fs: FileSystem = DISK) => keptFile(fs, path, CountZ, FALLBACK);
const more = ({ count }: { readonly count: number }) => ({ count: count + 1 });

test('What was kept is there at the next start, in a file and a folder for this account alone', async () => {
  const path = fileIn(scratchFolder());
  expect(await kept(path).read()).toEqual(FALLBACK);
  await kept(path).change(more);
  await kept(path).change(more);
  expect(await kept(path).read()).toEqual({ count: 2 });
  expect(readFileSync(path, 'utf8')).toBe('{\n  "count": 2\n}\n');
  expect(statSync(path).mode & 0o777).toBe(0o600);
  expect(readdirSync(dirname(path))).toEqual(['count.json']);
});

test('Changes at once are made one after the other, and a reading after them sees all', async () => {
  const one = kept(fileIn(scratchFolder()));
  const changes = Array.from({ length: 5 }, () => one.change(more));
  expect(await one.read()).toEqual({ count: 5 });
  await Promise.all(changes);
});

test('What a change leaves as it is is not written again', async () => {
  const path = fileIn(scratchFolder());
  await kept(path).change(more);
  // Of what is written anew, for it is written beside and takes the name then.
  const piece = () => statSync(path).ino;
  const before = piece();
  await kept(path).change(({ count }) => ({ count }));
  expect(piece()).toBe(before);
  await kept(path).change(more);
  expect(piece()).not.toBe(before);
});

test.each([
  ['no JSON', '{"count":'],
  ['of another shape', '{"count":"two"}'],
  ['no text', Buffer.from([0xff, 0xfe, 0x00])],
  ['too long', `{"count":1${' '.repeat(MEBIBYTE)}}`],
])('A file that is %s is set aside and never deleted', async (_, content) => {
  const path = fileIn(scratchFolder());
  await kept(path).change(more);
  writeFileSync(path, content);
  expect(await kept(path).read()).toEqual(FALLBACK);
  expect(existsSync(path)).toBe(false);
  expect(readFileSync(`${path}.broken`).equals(Buffer.from(content))).toBe(true);
  await kept(path).change(more);
  expect(await kept(path).read()).toEqual({ count: 1 });
});

test('A file of a mebibyte is still read', async () => {
  const path = fileIn(scratchFolder());
  await kept(path).change(more);
  const text = '{"count":7}';
  writeFileSync(path, text + ' '.repeat(MEBIBYTE - text.length));
  expect(await kept(path).read()).toEqual({ count: 7 });
});

test('A file that cannot be read just now is left as it is, and nothing is written over it', async () => {
  const path = fileIn(scratchFolder());
  await kept(path).change(more);
  const failing: FileSystem = {
    ...DISK,
    openToRead: () => Promise.reject(Object.assign(new Error('EIO'), { code: 'EIO' })),
  };
  expect(await kept(path, failing).read()).toEqual(FALLBACK);
  await kept(path, failing).change(() => ({ count: 99 }));
  expect(readdirSync(dirname(path))).toEqual(['count.json']);
  expect(await kept(path).read()).toEqual({ count: 1 });
});

test('A disk that takes nothing, not even another name, stops nobody', async () => {
  const path = fileIn(scratchFolder());
  await kept(path).change(more);
  writeFileSync(path, 'broken');
  const refuse = () => Promise.reject(Object.assign(new Error('EROFS'), { code: 'EROFS' }));
  const readOnly: FileSystem = { ...DISK, rename: refuse, createNew: refuse, makeFolder: refuse };
  await kept(path, readOnly).change(more);
  expect(await kept(path, readOnly).read()).toEqual(FALLBACK);
  expect(readFileSync(path, 'utf8')).toBe('broken');
});
