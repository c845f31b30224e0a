import { chmodSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { bareBoard, bareSheet, scratchFolder } from '../scratch';
import { type Machine, makeMachine } from './machine';

/** A machine on which a file lies that the person has chosen. */
function withFile(name: string, text: string | null, fs?: FileSystem) {
  const machine = makeMachine(fs === undefined ? {} : { fs });
  const path = join(machine.home, name);
  if (text !== null) writeFileSync(path, text);
  return { ...machine, path, handle: machine.host.handles.give(path) };
}

const NOBODYS = 'a-handle-that-nobody-was-given';
const recentNames = async ({ calls }: Machine) => (await calls.listRecent()).map(({ name }) => name);

describe('Opening', () => {
  test('gives the text, where it lies, and that it may be written', async () => {
    const { calls, handle, home } = withFile('a.board.json', bareBoard('One'));
    expect(await calls.open({ handle })).toEqual({
      ok: true,
      value: {
        handle,
        name: 'a.board.json',
        folder: home,
        text: bareBoard('One'),
        stamp: expect.stringMatching(/^\d+-\d+-\d+-[0-9a-f]{64}$/),
        readOnly: false,
      },
    });
  });

  test('says that a file may not be written, and opens it all the same', async () => {
    const readOnly: FileSystem = {
      ...DISK,
      mayWrite: () => Promise.reject(Object.assign(new Error('EACCES'), { code: 'EACCES' })),
    };
    const { calls, handle } = withFile('a.board.json', bareBoard('One'), readOnly);
    expect(await calls.open({ handle })).toMatchObject({ ok: true, value: { readOnly: true } });
  });

  test('of what is gone, and of a handle from before, says so', async () => {
    const { calls, handle } = withFile('a.board.json', null);
    expect(await calls.open({ handle })).toEqual({
      ok: false,
      problem: { code: 'not-found', name: 'a.board.json' },
    });
    expect(await calls.open({ handle: NOBODYS })).toEqual({
      ok: false,
      problem: { code: 'stale-handle', name: 'this file' },
    });
  });
});

describe('Saving', () => {
  test('gives the file as it is now, and notes it among those last worked on', async () => {
    const machine = withFile('a.board.json', null);
    const { calls, handle, home, path } = machine;
    const saved = await calls.save({ handle, document: bareSheet('One'), expected: null });
    const opened = await calls.open({ handle });
    if (!opened.ok) throw new Error(opened.problem.code);
    expect(saved).toEqual({
      ok: true,
      value: { handle, name: 'a.board.json', folder: home, stamp: opened.value.stamp, durable: true },
    });
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('One'));
    expect(await recentNames(machine)).toEqual(['a.board.json']);
  });

  test('that is refused notes nothing and keeps no version', async () => {
    const machine = withFile('a.board.json', bareBoard('Former'));
    const { calls, handle } = machine;
    const saved = await calls.save({ handle, document: bareSheet('One'), expected: '0-0-0-other' });
    expect(saved).toEqual({ ok: false, problem: { code: 'changed-outside', name: 'a.board.json' } });
    expect(await recentNames(machine)).toEqual([]);
    expect(await calls.listVersions({ handle })).toEqual([]);
  });

  test('of a handle from before is refused', async () => {
    const { calls } = withFile('a.board.json', null);
    expect(await calls.save({ handle: NOBODYS, document: bareSheet('One'), expected: null })).toEqual({
      ok: false,
      problem: { code: 'stale-handle', name: 'this file' },
    });
  });

  test('of what could not be opened again names the field and what was expected', async () => {
    const { calls, handle, path } = withFile('a.board.json', bareBoard('Former'));
    const unnamed = { ...bareSheet('x'), name: 7 };
    expect(await calls.save({ handle, document: unnamed, expected: null })).toMatchObject({
      problem: { code: 'invalid', name: 'a.board.json', path: 'name', expected: expect.stringMatching(/\S/) },
    });
    expect(await calls.save({ handle, document: '{', expected: null })).toEqual({
      ok: false,
      problem: {
        code: 'invalid',
        name: 'a.board.json',
        path: '',
        expected: 'a build, a board sheet or a case sheet that can be opened again',
      },
    });
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Former'));
  });

  test('keeps as a version what lay there, with the time at which it was written', async () => {
    const { calls, handle, path } = withFile('a.board.json', bareBoard('Of another'));
    const { mtimeMs } = await DISK.facts(path);
    await calls.save({ handle, document: bareSheet('One'), expected: null });
    const [, before] = await calls.listVersions({ handle });
    expect(before?.savedMs).toBe(Math.round(mtimeMs));
  });

  test('a file that cannot be read before it is written over is saved, without a version of it', async () => {
    const { calls, handle, path } = withFile('a.board.json', bareBoard('Former'));
    writeFileSync(path, Buffer.from([0xff, 0xfe]));
    expect(await calls.save({ handle, document: bareSheet('One'), expected: null })).toMatchObject({
      ok: true,
    });
    expect(await calls.listVersions({ handle })).toHaveLength(1);
  });
});

describe('Files last worked on', () => {
  test('are noted, marked when they are gone, and forgotten one by one or all', async () => {
    const machine = withFile('a.board.json', bareBoard('One'));
    const { calls, host, home, handle, path } = machine;
    const other = host.handles.give(join(home, 'b.board.json'));
    await calls.noteRecent({ handle });
    await calls.noteRecent({ handle: other });
    await calls.noteRecent({ handle: NOBODYS });
    expect(await calls.listRecent()).toMatchObject([
      { name: 'b.board.json', folder: home, missing: true },
      { name: 'a.board.json', folder: home, missing: false },
    ]);
    rmSync(path);
    await calls.forgetRecent({ handle: NOBODYS });
    expect(await calls.listRecent()).toMatchObject([{ missing: true }, { missing: true }]);
    await calls.forgetRecent({ handle: other });
    expect(await recentNames(machine)).toEqual(['a.board.json']);
    await calls.forgetRecent({ handle: null });
    expect(await recentNames(machine)).toEqual([]);
  });
});

test('A new file has the rights that the system gives new files', async () => {
  const folder = scratchFolder();
  chmodSync(folder, 0o777);
  const before = process.umask(0o022);
  try {
    const { calls, host } = makeMachine();
    const path = join(folder, 'new.board.json');
    await calls.save({ handle: host.handles.give(path), document: bareSheet('x'), expected: null });
    expect((await DISK.facts(path)).mode & 0o777).toBe(0o644);
  } finally {
    process.umask(before);
  }
});
