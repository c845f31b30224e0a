import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../boards/document/limits';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { readTextFile } from '../../../electron/host/read-file';
import { asNobody, scratchFolder } from '../scratch';

function written(content: string | Uint8Array): string {
  const path = join(scratchFolder(), 'a.build.json');
  writeFileSync(path, content);
  return path;
}

const codeOf = async (path: string, limit?: number) => {
  const read = await readTextFile(DISK, path, limit);
  return read.ok ? 'read' : read.problem.code;
};

describe('Refused, each by its reason', () => {
  test('a file that is not there', async () => {
    expect(await codeOf(join(scratchFolder(), 'none.json'))).toBe('not-found');
  });

  test('a folder', async () => {
    const folder = join(scratchFolder(), 'a.build.json');
    mkdirSync(folder);
    expect(await codeOf(folder)).toBe('folder');
  });

  test('pipes, four at once, without holding up the file that is read beside them', async () => {
    const folder = scratchFolder();
    const pipes = ['1', '2', '3', '4'].map((name) => join(folder, `${name}.json`));
    for (const pipe of pipes) execFileSync('mkfifo', [pipe]);
    const path = written('{}');
    expect(await Promise.all([...pipes, path].map((each) => codeOf(each)))).toEqual([
      'special',
      'special',
      'special',
      'special',
      'read',
    ]);
  });

  test.skipIf(process.platform === 'win32')('a device that never ends', async () => {
    expect(await codeOf('/dev/zero')).toBe('special');
  });

  test('a link that leads in a circle', async () => {
    const link = join(scratchFolder(), 'round.json');
    symlinkSync(link, link);
    expect(await codeOf(link)).toBe('special');
  });

  test('a file that this account may not read', async () => {
    const path = written('{}');
    chmodSync(path, 0o000);
    expect(await asNobody(() => codeOf(path))).toBe('no-permission');
  });

  test('bytes that are not UTF-8', async () => {
    expect(await codeOf(written(new Uint8Array([0x7b, 0xff, 0x7d])))).toBe('not-text');
  });

  test('a file one byte past the limit, by its size alone', async () => {
    const path = written('123456789');
    expect(await readTextFile(DISK, path, 8)).toEqual({
      ok: false,
      problem: { code: 'too-large', name: 'a.build.json', bytes: 9, limitBytes: 8 },
    });
    expect(await codeOf(path, 9)).toBe('read');
  });
});

test('A file that grows while it is read is refused at the limit', async () => {
  const growing: FileSystem = {
    ...DISK,
    openToRead: async (path) => ({
      ...(await DISK.openToRead(path)),
      read: async (into) => into.fill(0x20).length,
    }),
  };
  const read = await readTextFile(growing, written('{}'), 1_000);
  expect(read).toMatchObject({ problem: { code: 'too-large', limitBytes: 1_000 } });
});

test('A failure that has no name among ours is told with the system’s own', async () => {
  const failing: FileSystem = {
    ...DISK,
    openToRead: async () => {
      throw Object.assign(new Error('EIO: i/o error'), { code: 'EIO' });
    },
  };
  expect(await readTextFile(failing, '/a.json')).toEqual({
    ok: false,
    problem: { code: 'unreadable', name: 'a.json', detail: 'EIO' },
  });
});

test('A mistake of our own is not taken for a failure of the disk', async () => {
  const broken: FileSystem = {
    ...DISK,
    openToRead: async () => {
      throw new TypeError('undefined is not a function');
    },
  };
  await expect(readTextFile(broken, '/a.json')).rejects.toThrow(TypeError);
});

test('A byte order mark is left out of the text', async () => {
  const read = await readTextFile(DISK, written('\uFEFF{}'));
  expect(read.ok && read.value.text).toBe('{}');
});

test('The limit for documents is the one of the file format', async () => {
  const path = written(new Uint8Array(LIMITS.fileBytes + 1).fill(0x20));
  expect(await codeOf(path)).toBe('too-large');
});
