import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { fileVersions } from '../../../electron/host/versions';
import { bareBoard, scratchFolder } from '../scratch';
import { makeMachine } from './machine';
import { versionHistories } from './version-histories';

const MINUTE_MS = 60_000;
const PATH = '/bench/work.build.json';

test('What a file held is kept at each save, also what another program had put there', async () => {
  const machine = makeMachine();
  const path = join(machine.home, 'work.board.json');
  const handle = machine.host.handles.give(path);
  writeFileSync(path, bareBoard('Of another program'));
  await machine.calls.save({ handle, text: bareBoard('One'), expected: null });
  const listed = await machine.calls.listVersions({ handle });
  const texts = await Promise.all(listed.map(({ id }) => machine.calls.readVersion({ handle, id })));
  expect(texts).toEqual([
    { ok: true, value: { text: bareBoard('One') } },
    { ok: true, value: { text: bareBoard('Of another program') } },
  ]);
});

test('Of saves within five minutes the first and the last are kept', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  for (const minute of [0, 1, 2, 3, 10])
    await versions.keep(PATH, { text: `at ${minute}`, savedMs: minute * MINUTE_MS }, null);
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

test('A disk that takes no version does not keep the file from being saved', async () => {
  const full = Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
  const fs: FileSystem = {
    ...DISK,
    makeFolder: (path) => (path.includes('versions') ? Promise.reject(full) : DISK.makeFolder(path)),
  };
  const machine = makeMachine({ fs });
  const handle = machine.host.handles.give(join(machine.home, 'work.board.json'));
  expect(await machine.calls.save({ handle, text: bareBoard('x'), expected: null })).toMatchObject({
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
