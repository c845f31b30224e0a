import { readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { fileVersions, type Held, type Versions } from '../../../electron/host/versions';
import { bareBoard, bareSheet, scratchFolder } from '../scratch';
import { makeMachine } from './machine';
import { versionHistories } from './version-histories';

const MINUTE_MS = 60_000;
const PATH = '/bench/work.build.json';

test('What a file held is kept at each save, also what another program had put there', async () => {
  const machine = makeMachine();
  const path = join(machine.home, 'work.board.json');
  const handle = machine.host.handles.give(path);
  writeFileSync(path, bareBoard('Of another program'));
  await machine.calls.save({ handle, document: bareSheet('One'), expected: null });
  const listed = await machine.calls.listVersions({ handle });
  const texts = await Promise.all(listed.map(({ id }) => machine.calls.readVersion({ handle, id })));
  expect(texts).toEqual([
    { ok: true, value: { text: bareBoard('One') } },
    { ok: true, value: { text: bareBoard('Of another program') } },
  ]);
});

test('Of saves within five minutes the first and the last are kept', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await saveInTurn(
    versions,
    [0, 1, 2, 3, 10].map((minute) => at(minute)),
  );
  expect((await versions.list(PATH)).map(({ savedMs }) => savedMs / MINUTE_MS)).toEqual([10, 3, 0]);
});

test('A version that is no longer whole, and one that never was, is not there', async () => {
  const folder = scratchFolder();
  const versions = fileVersions(DISK, folder);
  await versions.keep(PATH, { text: 'whole', savedMs: 1 }, null);
  const [{ id } = { id: '' }] = await versions.list(PATH);
  const [inner = ''] = readdirSync(folder);
  writeFileSync(join(folder, inner, `${id}.version`), 'whold');
  expect(await versions.read(PATH, id)).toBeNull();
  for (const other of ['', '../../etc/passwd', `../${inner}/${id}`])
    expect(await versions.read(PATH, other)).toBeNull();
});

test('A save does not wait for its versions, and whoever asks for them does', async () => {
  let go = (): void => undefined;
  const held = new Promise<void>((resolve) => {
    go = resolve;
  });
  const slow: FileSystem = {
    ...DISK,
    makeFolder: async (path) => {
      if (path.includes('versions')) await held;
      await DISK.makeFolder(path);
    },
  };
  const { calls, home, host } = makeMachine({ fs: slow });
  const handle = host.handles.give(join(home, 'work.board.json'));
  expect(await calls.save({ handle, document: bareSheet('x'), expected: null })).toMatchObject({ ok: true });
  const told: string[] = [];
  const listed = calls.listVersions({ handle }).then((versions) => told.push(`listed ${versions.length}`));
  const settled = host.versions.settled().then(() => told.push('settled'));
  await calls.listRecent();
  expect(told).toEqual([]);
  go();
  await Promise.all([listed, settled]);
  expect(told.toSorted()).toEqual(['listed 1', 'settled']);
});

test('A disk that takes no version does not keep the file from being saved', async () => {
  const full = Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
  const fs: FileSystem = {
    ...DISK,
    makeFolder: (path) => (path.includes('versions') ? Promise.reject(full) : DISK.makeFolder(path)),
  };
  const machine = makeMachine({ fs });
  const handle = machine.host.handles.give(join(machine.home, 'work.board.json'));
  expect(await machine.calls.save({ handle, document: bareSheet('x'), expected: null })).toMatchObject({
    ok: true,
  });
  expect(await machine.calls.listVersions({ handle })).toEqual([]);
});

test('In any run of saves the bounds hold, the newest is there, and what is listed opens to the byte', async () => {
  expect(
    await versionHistories(scratchFolder(), 25, fc.sample(fc.nat(), { numRuns: 1, seed: 1 })[0] ?? 0),
  ).toEqual({
    tried: 25,
    failures: [],
  });
});

const heldTexts = async (versions: Versions, path = PATH) =>
  Promise.all((await versions.list(path)).map(({ id }) => versions.read(path, id)));

const at = (minute: number, text = `at ${minute}`): Held => ({ text, savedMs: minute * MINUTE_MS });

test('What was there before is kept once, however often the same is saved over', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(10, 'one'), at(0, 'before'));
  await versions.keep(PATH, at(20, 'two'), at(10, 'one'));
  expect(await heldTexts(versions)).toEqual(['two', 'one', 'before']);
});

/** Saves one after the other, where nobody else writes the file. */
async function saveInTurn(versions: Versions, saves: readonly Held[]): Promise<void> {
  for (const [place, now] of saves.entries()) await versions.keep(PATH, now, saves[place - 1] ?? null);
}

test('Two versions as far apart as five minutes are both kept; a second less, and the one between them goes', async () => {
  const apart = fileVersions(DISK, scratchFolder());
  await saveInTurn(apart, [at(0), at(2), at(5), at(6)]);
  expect(await heldTexts(apart)).toEqual(['at 6', 'at 5', 'at 2', 'at 0']);
  const near = fileVersions(DISK, scratchFolder());
  await saveInTurn(near, [at(0), at(2), at(5 - 1 / 60, 'just before 5'), at(6)]);
  expect(await heldTexts(near)).toEqual(['at 6', 'just before 5', 'at 0']);
});

test('Of two versions none is between', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(1), at(0));
  expect(await heldTexts(versions)).toEqual(['at 1', 'at 0']);
});

test('A file has fifty versions at most, and the oldest goes', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  for (let minute = 0; minute < 52 * 10; minute += 10) await versions.keep(PATH, at(minute), null);
  const kept = (await versions.list(PATH)).map(({ savedMs }) => savedMs / MINUTE_MS);
  expect([kept.length, kept[0], kept.at(-1)]).toEqual([50, 510, 20]);
});

test('A version is known by its time, its length in bytes and its content, in a file for this account alone', async () => {
  const folder = scratchFolder();
  const versions = fileVersions(DISK, folder);
  await versions.keep(PATH, { text: 'Ω', savedMs: 1234.5 }, null);
  const [version] = await versions.list(PATH);
  expect(version).toMatchObject({ savedMs: 1235, bytes: 2 });
  expect(version?.id).toMatch(/^1235-2-[0-9a-f]{16}$/);
  const [inner = ''] = readdirSync(folder);
  expect(inner).toMatch(/^[0-9a-f]{32}$/);
  const [file = ''] = readdirSync(join(folder, inner));
  expect(file).toBe(`${version?.id}.version`);
  expect(statSync(join(folder, inner, file)).mode & 0o777).toBe(0o600);
});

test('A file from before time was counted is kept all the same', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(10, 'now'), { text: 'old', savedMs: -5 });
  expect((await versions.list(PATH)).map(({ savedMs }) => savedMs)).toEqual([10 * MINUTE_MS, 0]);
});

test('What else lies in the folders is no version, is not counted and is not removed', async () => {
  const folder = scratchFolder();
  const versions = fileVersions(DISK, folder, { perFile: 2, bytes: 20, apartMs: 0 });
  await versions.keep(PATH, at(1, 'one'), null);
  const [inner = ''] = readdirSync(folder);
  const [file = ''] = readdirSync(join(folder, inner));
  const strangers = [
    'notes.txt',
    'x1-1-0123456789abcdef.version',
    '1-1-0123456789abcdefx.version',
    file.replace('.version', '.version.bak'),
    file.replace('.version', ''),
  ];
  for (const name of strangers) writeFileSync(join(folder, inner, name), 'x'.repeat(50));
  writeFileSync(join(folder, 'beside.txt'), 'x'.repeat(50));
  await versions.keep(PATH, at(2, 'two'), null);
  await versions.keep(PATH, at(3, 'three'), null);
  expect(await heldTexts(versions)).toEqual(['three', 'two']);
  expect(readdirSync(join(folder, inner))).toEqual(expect.arrayContaining(strangers));
  expect(readdirSync(folder)).toContain('beside.txt');
});

describe('Of all files together', () => {
  const other = '/bench/other.build.json';

  test('the oldest goes first where there is too much, the newest of each file last', async () => {
    const versions = fileVersions(DISK, scratchFolder(), { perFile: 9, bytes: 30, apartMs: 0 });
    await versions.keep(other, at(1, 'o'.repeat(10)), null);
    await versions.keep(PATH, at(2, 'a'.repeat(10)), null);
    await versions.keep(PATH, at(3, 'b'.repeat(10)), null);
    expect(await heldTexts(versions)).toHaveLength(2);
    await versions.keep(PATH, at(4, 'c'.repeat(10)), null);
    expect(await heldTexts(versions)).toEqual(['c'.repeat(10), 'b'.repeat(10)]);
    expect(await heldTexts(versions, other)).toEqual(['o'.repeat(10)]);
    await versions.keep(PATH, at(5, 'd'.repeat(30)), null);
    expect(await heldTexts(versions)).toEqual(['d'.repeat(30)]);
    expect(await heldTexts(versions, other)).toEqual([]);
  });

  test('just as much as there may be is not too much', async () => {
    const versions = fileVersions(DISK, scratchFolder(), { perFile: 9, bytes: 20, apartMs: 0 });
    await versions.keep(other, at(1, 'o'.repeat(10)), null);
    await versions.keep(PATH, at(2, 'a'.repeat(10)), null);
    expect([...(await heldTexts(versions)), ...(await heldTexts(versions, other))]).toHaveLength(2);
  });

  test('they are counted again only after a sixteenth of the bound was written', async () => {
    let lists = 0;
    const folder = scratchFolder();
    const counting: FileSystem = {
      ...DISK,
      list: (path) => {
        if (path === folder) lists++;
        return DISK.list(path);
      },
    };
    const versions = fileVersions(counting, folder, { perFile: 90, bytes: 1_600, apartMs: 0 });
    await versions.keep(PATH, at(1, 'a'.repeat(10)), null);
    expect(lists).toBe(1);
    for (let minute = 2; minute <= 11; minute++) await versions.keep(PATH, at(minute, 'b'.repeat(10)), null);
    expect(lists).toBe(1);
    await versions.keep(PATH, at(12, 'c'), null);
    expect(lists).toBe(2);
  });

  test('a version that cannot be removed does not keep others from going', async () => {
    const folder = scratchFolder();
    const asked: string[] = [];
    const stuck: FileSystem = {
      ...DISK,
      remove: (path) => {
        asked.push(path);
        return Promise.reject(Object.assign(new Error('EIO'), { code: 'EIO' }));
      },
    };
    const versions = fileVersions(stuck, folder, { perFile: 1, bytes: 5, apartMs: 0 });
    await versions.keep(PATH, at(1, 'aaaa'), null);
    await versions.keep(PATH, at(2, 'bbbb'), null);
    expect(asked.length).toBeGreaterThanOrEqual(2);
    expect(await heldTexts(versions)).toEqual(['bbbb', 'aaaa']);
  });
});

test('A version is read by its whole name alone', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(1, 'one'), null);
  const [{ id } = { id: '' }] = await versions.list(PATH);
  expect(await versions.read(PATH, id)).toBe('one');
  for (const other of [`x${id}`, `${id}x`, id.slice(0, -1), id.replace('-', '_')])
    expect(await versions.read(PATH, other)).toBeNull();
  expect(await versions.read('/bench/other.json', id)).toBeNull();
  expect(await versions.list('/bench/other.json')).toEqual([]);
});

test('The window asks for versions by the handle of a file, and one from before is refused', async () => {
  const machine = makeMachine();
  const handle = machine.host.handles.give(join(machine.home, 'work.board.json'));
  const id = '1-1-0123456789abcdef';
  expect(await machine.calls.listVersions({ handle: 'nobodys-handle-at-all' })).toEqual([]);
  expect(await machine.calls.readVersion({ handle: 'nobodys-handle-at-all', id })).toEqual({
    ok: false,
    problem: { code: 'stale-handle', name: 'this file' },
  });
  expect(await machine.calls.readVersion({ handle, id })).toEqual({
    ok: false,
    problem: { code: 'not-found', name: 'work.board.json' },
  });
});
