import { readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { openRecovery } from '../../../electron/host/recovery';
import { scratchFolder } from '../scratch';
import { PAGE, SESSION } from './unsaved-work';

const OTHER = 'another-session-of-it';
const BESIDE = 'page-of-another-window';

/** A copy of some session, kept through the module itself. */
const copyOf = (savedMs: number, name = 'Bench three') => ({
  path: null,
  stamp: null,
  name,
  savedMs,
  changes: 1,
});

describe('Copies of many sessions', () => {
  test('are offered newest first, at most a hundred, and nothing else that lies there', async () => {
    const folder = scratchFolder();
    const before = openRecovery(DISK, folder);
    for (let at = 0; at < 102; at++)
      await before.keep(`session-${at}`, 'gone', copyOf((at * 7) % 102, `Work ${at}`), 'x');
    writeFileSync(join(folder, 'notes.txt'), 'x');
    const offers = await openRecovery(DISK, folder).list();
    expect(offers.map(({ copy }) => copy.header.savedMs)).toEqual(
      Array.from({ length: 100 }, (_, at) => 101 - at),
    );
  });

  test('are none where there is no folder yet, or where it cannot be listed', async () => {
    const folder = join(scratchFolder(), 'not-there');
    expect(await openRecovery(DISK, folder).list()).toEqual([]);
    const refuse = () => Promise.reject(Object.assign(new Error('EACCES'), { code: 'EACCES' }));
    expect(await openRecovery({ ...DISK, list: refuse }, folder).list()).toEqual([]);
  });

  test('lie in files for this account alone', async () => {
    const folder = scratchFolder();
    await openRecovery(DISK, folder).keep(SESSION, PAGE, copyOf(1), 'x');
    expect(statSync(join(folder, `${SESSION}.a.copy`)).mode & 0o777).toBe(0o600);
  });
});

describe('The two files of a session', () => {
  test('take turns, each with a number one higher, also after a restart', async () => {
    const folder = scratchFolder();
    const texts = () =>
      readdirSync(folder)
        .sort()
        .map((name) => {
          const content = readFileSync(join(folder, name), 'utf8');
          return [
            name.slice(-6, -5),
            JSON.parse(content.split('\n')[0] ?? '').serial,
            content.split('\n')[1],
          ];
        });
    const recovery = openRecovery(DISK, folder);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    await recovery.keep(SESSION, PAGE, copyOf(2), 'two');
    expect(texts()).toEqual([
      ['a', 1, 'one'],
      ['b', 2, 'two'],
    ]);
    await recovery.keep(SESSION, PAGE, copyOf(3), 'three');
    const again = openRecovery(DISK, folder);
    await again.keep(SESSION, PAGE, copyOf(4), 'four');
    expect(texts()).toEqual([
      ['a', 3, 'three'],
      ['b', 4, 'four'],
    ]);
    expect(await again.take(SESSION, PAGE)).toMatchObject({ text: 'four' });
  });

  test('of two whole ones the later is the work, whatever the clock said', async () => {
    const folder = scratchFolder();
    const recovery = openRecovery(DISK, folder);
    await recovery.keep(SESSION, PAGE, copyOf(900), 'earlier');
    await recovery.keep(SESSION, PAGE, copyOf(100), 'later');
    expect(await openRecovery(DISK, folder).take(SESSION, PAGE)).toMatchObject({ text: 'later' });
  });

  test('both go when the session ends, and the next begins with the first again', async () => {
    const folder = scratchFolder();
    const recovery = openRecovery(DISK, folder);
    for (const text of ['one', 'two', 'three']) await recovery.keep(SESSION, PAGE, copyOf(1), text);
    await recovery.drop(SESSION, PAGE);
    expect(readdirSync(folder)).toEqual([]);
    await recovery.drop(SESSION, PAGE);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'anew');
    expect(readdirSync(folder)).toEqual([`${SESSION}.a.copy`]);
    expect(await recovery.take(SESSION, PAGE)).toMatchObject({ text: 'anew', header: { serial: 1 } });
  });

  test('the older goes first, and when one cannot be removed the newest is still there', async () => {
    const folder = scratchFolder();
    const recovery = openRecovery(DISK, folder);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    await recovery.keep(SESSION, PAGE, copyOf(2), 'two');
    const asked: string[] = [];
    const refuse = (path: string) => {
      asked.push(path);
      return Promise.reject(Object.assign(new Error('EIO'), { code: 'EIO' }));
    };
    await openRecovery({ ...DISK, remove: refuse }, folder).drop(SESSION, PAGE);
    expect(asked).toEqual([join(folder, `${SESSION}.a.copy`)]);
    const flushed: string[] = [];
    const openFolder = (path: string) => {
      flushed.push(path);
      return DISK.openFolder(path);
    };
    await openRecovery({ ...DISK, openFolder }, folder).drop(SESSION, PAGE);
    expect(flushed).toEqual([folder, folder]);
    expect(readdirSync(folder)).toEqual([]);
  });

  test('a copy that is too odd to be text is set aside', async () => {
    const folder = scratchFolder();
    writeFileSync(join(folder, `${SESSION}.a.copy`), Buffer.from([0xff]));
    expect(await openRecovery(DISK, folder).take(SESSION, PAGE)).toBeNull();
    expect(readdirSync(folder)).toEqual([`${SESSION}.a.copy.broken`]);
  });

  test('a copy that cannot be read just now is not set aside', async () => {
    const folder = scratchFolder();
    await openRecovery(DISK, folder).keep(SESSION, PAGE, copyOf(1), 'one');
    const failing: FileSystem = {
      ...DISK,
      openToRead: () => Promise.reject(Object.assign(new Error('EIO'), { code: 'EIO' })),
    };
    expect(await openRecovery(failing, folder).take(SESSION, PAGE)).toBeNull();
    expect(readdirSync(folder)).toEqual([`${SESSION}.a.copy`]);
  });

  test('a broken copy that cannot be set aside is in nobody’s way', async () => {
    const folder = scratchFolder();
    const recovery = openRecovery(DISK, folder);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    await recovery.keep(SESSION, PAGE, copyOf(2), 'two');
    truncateSync(join(folder, `${SESSION}.b.copy`), 10);
    const refuse = () => Promise.reject(Object.assign(new Error('EROFS'), { code: 'EROFS' }));
    expect(await openRecovery({ ...DISK, rename: refuse }, folder).take(SESSION, PAGE)).toMatchObject({
      text: 'one',
    });
  });
});

describe('A page', () => {
  test('that works on a session is asked for by no other, until it ends', async () => {
    const recovery = openRecovery(DISK, scratchFolder());
    recovery.beginPage(PAGE);
    recovery.beginPage(BESIDE);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    expect(await recovery.list()).toEqual([]);
    expect(await recovery.take(SESSION, BESIDE)).toBe('elsewhere');
    await recovery.drop(SESSION, BESIDE);
    expect(await recovery.take(SESSION, PAGE)).toMatchObject({ text: 'one' });
    recovery.endPage(PAGE);
    expect(await recovery.list()).toMatchObject([{ session: SESSION }]);
    expect(await recovery.take(SESSION, BESIDE)).toMatchObject({ text: 'one' });
    recovery.beginPage(PAGE);
    expect(await recovery.take(SESSION, PAGE)).toBe('elsewhere');
  });

  test('after all have ended, everything is offered', async () => {
    const recovery = openRecovery(DISK, scratchFolder());
    recovery.beginPage(PAGE);
    recovery.beginPage(BESIDE);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    await recovery.keep(OTHER, BESIDE, copyOf(2), 'two');
    recovery.endPages();
    expect((await recovery.list()).map(({ session }) => session)).toEqual([OTHER, SESSION]);
  });

  test('that drops what it took up is the owner of it no more', async () => {
    const folder = scratchFolder();
    const recovery = openRecovery(DISK, folder);
    recovery.beginPage(PAGE);
    await recovery.keep(SESSION, PAGE, copyOf(1), 'one');
    await recovery.drop(SESSION, PAGE);
    await openRecovery(DISK, folder).keep(SESSION, 'x', copyOf(2), 'of another');
    expect(await recovery.take(SESSION, BESIDE)).toMatchObject({ text: 'of another' });
  });
});
