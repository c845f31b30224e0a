import { chmodSync, readdirSync, readFileSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK, type FileFacts, type FileSystem } from '../../../electron/host/file-system';
import { flushFolder } from '../../../electron/host/flush-folder';
import { saveFile } from '../../../electron/host/save-file';
import { looksUntouched, sameContent, stampOf as stampOfFacts } from '../../../electron/host/stamp';
import { clearOldTemporaries, temporaryIn } from '../../../electron/host/temporary';
import { scratchFolder } from '../scratch';
import { inScratch, stampOf } from './work-file';

test('The stamp of a save is that of the file as it is read afterwards', async () => {
  const path = inScratch();
  const saved = await saveFile(DISK, { path, text: 'next Ω', expected: null });
  expect(saved).toEqual({ ok: true, value: { stamp: await stampOf(path), durable: true } });
});

const failure = (code: string) => Object.assign(new Error(code), { code });

/** The real disk, and what was asked of it. */
function listening(change: Partial<FileSystem> = {}) {
  const asked: string[] = [];
  const fs: FileSystem = {
    ...DISK,
    createNew: async (path, mode) => {
      asked.push(`create ${basename(path).replace(/[0-9a-f]{18}/, 'x')} ${mode.toString(8)}`);
      const file = await DISK.createNew(path, mode);
      return {
        ...file,
        chmod: (to) => {
          asked.push(`chmod ${to.toString(8)}`);
          return file.chmod(to);
        },
        sync: async () => void asked.push('sync'),
        close: async () => {
          asked.push('close');
          await file.close();
        },
      };
    },
    openToRead: (path) => {
      asked.push('read');
      return DISK.openToRead(path);
    },
    ...change,
  };
  return { fs, asked };
}

describe('The file that is written beside', () => {
  test('has its name from nobody, is open to nobody else, and has the former one’s rights before it is flushed', async () => {
    const path = inScratch();
    chmodSync(path, 0o644);
    const { fs, asked } = listening();
    await saveFile(fs, { path, text: 'next', expected: null });
    expect(asked).toEqual(['create .leadwright-x.tmp 600', 'chmod 644', 'sync', 'close']);
  });

  test('is left with its rights where the former had the same', async () => {
    const path = inScratch();
    chmodSync(path, 0o600);
    const { fs, asked } = listening();
    await saveFile(fs, { path, text: 'next', expected: null });
    expect(asked).toEqual(['create .leadwright-x.tmp 600', 'sync', 'close']);
  });

  test('has the rights that were asked for where there was none, or else those of new files', async () => {
    const { fs, asked } = listening();
    const folder = scratchFolder();
    await saveFile(fs, { path: join(folder, 'a.json'), text: 'x', expected: null, mode: 0o640 });
    await saveFile(fs, { path: join(folder, 'b.json'), text: 'x', expected: null });
    expect(asked.filter((line) => line.startsWith('create'))).toEqual([
      'create .leadwright-x.tmp 640',
      'create .leadwright-x.tmp 666',
    ]);
  });

  test('that cannot be removed again does not hide why the save failed', async () => {
    const path = inScratch();
    const { fs } = listening({
      rename: () => Promise.reject(failure('EIO')),
      remove: () => Promise.reject(failure('EACCES')),
    });
    expect(await saveFile(fs, { path, text: 'next', expected: null })).toMatchObject({
      problem: { code: 'unwritable', detail: 'EIO' },
    });
  });

  test('is no longer looked for once it has the name', async () => {
    const path = inScratch();
    const removed: string[] = [];
    const { fs } = listening({
      remove: async (gone) => {
        removed.push(gone);
      },
    });
    expect(await saveFile(fs, { path, text: 'next', expected: null })).toMatchObject({ ok: true });
    expect(removed).toEqual([]);
  });
});

test('What is no failure of the system is a bug, and is thrown on', async () => {
  const { fs } = listening({ rename: () => Promise.reject(new TypeError('a bug')) });
  await expect(saveFile(fs, { path: inScratch(), text: 'next', expected: null })).rejects.toThrow('a bug');
});

describe('Whether a file has changed outside', () => {
  test('is told from its outside, without reading it, where that is as it was', async () => {
    const path = inScratch();
    const expected = await stampOf(path);
    const { fs, asked } = listening();
    expect(await saveFile(fs, { path, text: 'next', expected })).toMatchObject({ ok: true });
    expect(asked).not.toContain('read');
  });

  test('counts as so where it cannot be read', async () => {
    const path = inScratch();
    const expected = await stampOf(path);
    utimesSync(path, 1, 1);
    const { fs } = listening({ openToRead: () => Promise.reject(failure('EIO')) });
    expect(await saveFile(fs, { path, text: 'next', expected })).toMatchObject({
      problem: { code: 'changed-outside' },
    });
  });

  test('a new file takes no place that is taken, not even by a link that leads nowhere', async () => {
    const path = inScratch();
    const save = { path, text: 'next', expected: null, onlyNew: true } as const;
    expect(await saveFile(DISK, save)).toEqual({
      ok: false,
      problem: { code: 'changed-outside', name: 'work.build.json' },
    });
    expect(readFileSync(path, 'utf8')).toBe('former');
    const free = join(scratchFolder(), 'free.build.json');
    expect(await saveFile(DISK, { ...save, path: free })).toMatchObject({ ok: true });
  });

  test('size, time and place of a file are its outside, and the hash is what is in it', () => {
    const facts: FileFacts = { size: 4n, mtimeNs: 5n, mtimeMs: 0, ino: 6n, mode: 0o644, kind: 'file' };
    const stamp = stampOfFacts(facts, 'abc');
    expect(stamp).toBe('4-5-6-abc');
    expect(looksUntouched(stamp, facts)).toBe(true);
    for (const other of [{ size: 40n }, { mtimeNs: 50n }, { ino: 60n }])
      expect(looksUntouched(stamp, { ...facts, ...other })).toBe(false);
    expect(sameContent(stamp, '1-2-3-abc')).toBe(true);
    expect(sameContent(stamp, '4-5-6-abd')).toBe(false);
    expect(sameContent(stamp, '4-5-6-xabc')).toBe(false);
  });
});

describe('The folder of a saved file', () => {
  const open = (sync: () => Promise<void>, closed: string[]) => async () => ({
    sync,
    close: async () => void closed.push('closed'),
  });

  test.skipIf(process.platform === 'win32')('is flushed, and closed also where that fails', async () => {
    const closed: string[] = [];
    const sound = { ...DISK, openFolder: open(async () => undefined, closed) };
    const failing = { ...DISK, openFolder: open(() => Promise.reject(failure('EIO')), closed) };
    expect([await flushFolder(sound, '/x'), await flushFolder(failing, '/x')]).toEqual([true, false]);
    expect(closed).toEqual(['closed', 'closed']);
  });

  test.skipIf(process.platform === 'win32')('that cannot be opened is not surely on disk', async () => {
    const refusing = { ...DISK, openFolder: () => Promise.reject(failure('EACCES')) };
    expect(await flushFolder(refusing, '/x')).toBe(false);
  });
});

describe('What killed programs left', () => {
  const HOUR_MS = 60 * 60 * 1000;
  const left = (folder: string) => {
    const path = temporaryIn(folder);
    writeFileSync(path, 'x');
    utimesSync(path, 1_000, 1_000);
    return path;
  };

  test('has a name of its own each time', () => {
    const names = Array.from({ length: 100 }, () => temporaryIn('/x'));
    expect(new Set(names).size).toBe(100);
    for (const name of names) expect(name).toMatch(/^\/x\/\.leadwright-[0-9a-f]{18}\.tmp$/);
  });

  test('goes when it is more than an hour old, and no sooner', async () => {
    const folder = scratchFolder();
    left(folder);
    await clearOldTemporaries(DISK, folder, 1_000_000 + HOUR_MS);
    expect(readdirSync(folder)).toHaveLength(1);
    await clearOldTemporaries(DISK, folder, 1_000_001 + HOUR_MS);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('a link of such a name stays, however old', async () => {
    const folder = scratchFolder();
    symlinkSync('/nowhere', temporaryIn(folder));
    await clearOldTemporaries(DISK, folder, Number.MAX_SAFE_INTEGER);
    expect(readdirSync(folder)).toHaveLength(1);
  });

  test('a folder that cannot be listed keeps nobody from saving', async () => {
    const path = inScratch();
    const { fs } = listening({ list: () => Promise.reject(failure('EACCES')) });
    expect(await saveFile(fs, { path, text: 'next', expected: null })).toMatchObject({ ok: true });
  });
});
