import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { ownLife } from '../../../electron/host/process-life';
import { openRecovery } from '../../../electron/host/recovery';
import { bareBoard, scratchFolder } from '../scratch';
import { type Machine, makeMachine } from './machine';

const SESSION = 'session-of-the-page';
const PAGE = 'page-of-the-window';

async function keep({ calls }: Machine, text: string, changes: number, page = PAGE) {
  const copy = { session: SESSION, page, handle: null, stamp: null, name: 'Bench three', text, changes };
  return CHANNELS.keepRecovery.output.parse(await calls.keepRecovery(copy));
}

/** A copy as some other process left it. */
async function keptBy(machine: Machine, owner: { readonly pid: number; readonly started: string | null }) {
  await keep(machine, bareBoard('Unsaved'), 3);
  const path = copyIn(machine);
  const [header = '', ...body] = readFileSync(path, 'utf8').split('\n');
  writeFileSync(path, [JSON.stringify({ ...JSON.parse(header), owner }), ...body].join('\n'));
}

/** Of two copies the first lies in a, the second in b. */
const copyIn = ({ data }: Machine, slot = 'a') => join(data, 'recovery', `${SESSION}.${slot}.copy`);

async function offersAfterRestart(machine: Machine) {
  const next = makeMachine({ like: machine });
  await next.calls.about({ page: 'page-after-restart' });
  return CHANNELS.listRecovery.output.parse(await next.calls.listRecovery());
}

async function textAfterRestart(machine: Machine): Promise<string | null> {
  const read = await makeMachine({ like: machine }).calls.takeRecovery({
    id: SESSION,
    page: 'page-after-restart',
  });
  return read.ok ? read.value.text : null;
}

function longProcess(): ChildProcess {
  const child = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60_000)']);
  onTestFinished(() => void child.kill('SIGKILL'));
  return child;
}

test('Work that was not saved is offered at the next start, with its name, its changes and its file', async () => {
  const machine = makeMachine();
  const path = join(machine.home, 'b.build.json');
  const handle = machine.host.handles.give(path);
  const text = bareBoard('Unsaved Ω');
  await machine.calls.keepRecovery({
    session: SESSION,
    page: PAGE,
    handle,
    stamp: 'as-it-was',
    name: 'Bench three',
    text,
    changes: 7,
  });
  const [offer] = await offersAfterRestart(machine);
  expect(offer).toMatchObject({ id: SESSION, name: 'Bench three', folder: machine.home, changes: 7 });
  const next = makeMachine({ like: machine });
  const read = CHANNELS.takeRecovery.output.parse(
    await next.calls.takeRecovery({ id: SESSION, page: 'page-after-restart' }),
  );
  if (!read.ok) throw new Error(read.problem.code);
  expect(read.value).toMatchObject({ text, name: 'Bench three', stamp: 'as-it-was' });
  expect(next.host.handles.pathOf(read.value.handle ?? '')).toBe(path);
});

test('Work that was saved, and its copy dropped, is not offered', async () => {
  const machine = makeMachine();
  await keep(machine, bareBoard('One'), 1);
  await keep(machine, bareBoard('Two'), 2);
  await machine.calls.dropRecovery({ id: SESSION, page: PAGE });
  expect(await offersAfterRestart(machine)).toEqual([]);
  expect(readdirSync(join(machine.data, 'recovery'))).toEqual([]);
});

describe('A session that goes on is not taken for one that broke off', () => {
  test('the page’s own, and that of another window of the same program', async () => {
    const machine = makeMachine();
    await machine.calls.about({ page: PAGE });
    await keep(machine, bareBoard('x'), 1);
    await machine.calls.about({ page: 'page-in-another-tab' });
    expect(await machine.calls.listRecovery()).toEqual([]);
    const other = { id: SESSION, page: 'page-in-another-tab' };
    expect(await machine.calls.takeRecovery(other)).toMatchObject({ problem: { code: 'open-elsewhere' } });
    await machine.calls.dropRecovery(other);
    machine.host.recovery.endPage(PAGE);
    expect(await machine.calls.listRecovery()).toHaveLength(1);
  });

  test('but the one the shell’s page had before it was loaded again is offered', async () => {
    const machine = makeMachine({ door: { kind: 'electron' } });
    await machine.calls.about({ page: PAGE });
    await keep(machine, bareBoard('x'), 1);
    await machine.calls.about({ page: 'page-loaded-again' });
    expect(await machine.calls.listRecovery()).toHaveLength(1);
  });

  test('what one window has taken up again is not offered to the next', async () => {
    const machine = makeMachine();
    await keep(machine, bareBoard('Unsaved'), 3);
    const [one, two] = [makeMachine({ like: machine }), makeMachine({ like: machine })];
    await one.calls.about({ page: 'page-one-of-two' });
    await two.calls.about({ page: 'page-two-of-two' });
    expect(await one.calls.takeRecovery({ id: SESSION, page: 'page-one-of-two' })).toMatchObject({
      ok: true,
    });
    // Two hosts in this one process count as one program, so only their owner tells them from another's.
    expect(JSON.parse(readFileSync(copyIn(machine, 'b'), 'utf8').split('\n')[0] ?? '')).toMatchObject({
      owner: ownLife(),
      changes: 3,
      serial: 2,
    });
  });

  test('that of another program which runs', async () => {
    const machine = makeMachine();
    await keptBy(machine, { pid: longProcess().pid ?? 0, started: null });
    expect(await offersAfterRestart(machine)).toEqual([]);
  });

  test('but that of one which has ended is offered', async () => {
    const machine = makeMachine();
    const child = longProcess();
    child.kill('SIGKILL');
    await once(child, 'exit');
    await keptBy(machine, { pid: child.pid ?? 0, started: null });
    expect(await offersAfterRestart(machine)).toHaveLength(1);
  });

  test.skipIf(ownLife().started === null)(
    'and so is one whose number another program has by now',
    async () => {
      const machine = makeMachine();
      await keptBy(machine, { pid: longProcess().pid ?? 0, started: '1' });
      expect(await offersAfterRestart(machine)).toHaveLength(1);
    },
  );
});

describe('A copy that is not whole', () => {
  test.each([0, 10, 100, 400])('cut off after %d bytes, the one before it is offered', async (bytes) => {
    const machine = makeMachine();
    await keep(machine, bareBoard('Before'), 1);
    await keep(machine, bareBoard('Last'), 2);
    truncateSync(copyIn(machine, 'b'), bytes);
    expect(await textAfterRestart(machine)).toBe(bareBoard('Before'));
    expect(readdirSync(join(machine.data, 'recovery'))).toContain(`${SESSION}.b.copy.broken`);
  });

  test('with a letter changed, it is set aside and nothing is offered in its place', async () => {
    const machine = makeMachine();
    await keep(machine, bareBoard('Last'), 2);
    const content = readFileSync(copyIn(machine), 'utf8');
    writeFileSync(copyIn(machine), content.replace('Last', 'Lost'));
    expect(await offersAfterRestart(machine)).toEqual([]);
    expect(readFileSync(`${copyIn(machine)}.broken`, 'utf8')).toContain('Lost');
  });

  test('but of a newer program is left alone', async () => {
    const machine = makeMachine();
    await keep(machine, bareBoard('Last'), 2);
    const newer = '{"format":"leadwright/recovery","version":2,"more":true}\nwork';
    writeFileSync(copyIn(machine), newer);
    expect(await offersAfterRestart(machine)).toEqual([]);
    expect(readFileSync(copyIn(machine), 'utf8')).toBe(newer);
  });
});

test('A broken copy is never what the next one takes the place of a whole one for', async () => {
  const machine = makeMachine();
  await keep(machine, bareBoard('Before'), 1);
  await keep(machine, bareBoard('Last'), 2);
  truncateSync(copyIn(machine, 'b'), 100);
  const next = makeMachine({ like: machine, fs: fullWhenCopying() });
  expect(await keep(next, bareBoard('Next'), 3)).toMatchObject({ ok: false });
  expect(await textAfterRestart(machine)).toBe(bareBoard('Before'));
});

function fullWhenCopying(): FileSystem {
  const full = Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
  return { ...DISK, createNew: () => Promise.reject(full) };
}

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

describe('The calls of the window', () => {
  const id = { id: 'nothing-of-that-name', page: PAGE };

  test('say what is not there, and what is open elsewhere', async () => {
    const machine = makeMachine();
    expect(await machine.calls.takeRecovery(id)).toEqual({
      ok: false,
      problem: { code: 'not-found', name: 'recovery copy' },
    });
    await machine.calls.about({ page: PAGE });
    await keep(machine, bareBoard('x'), 1);
    await machine.calls.about({ page: BESIDE });
    expect(await machine.calls.takeRecovery({ id: SESSION, page: BESIDE })).toEqual({
      ok: false,
      problem: { code: 'open-elsewhere', name: 'recovery copy' },
    });
  });

  test('name the work, and not the file it is kept in, where it cannot be kept', async () => {
    const failing: FileSystem = {
      ...DISK,
      makeFolder: () => Promise.reject(Object.assign(new Error('EROFS'), { code: 'EROFS' })),
    };
    expect(await keep(makeMachine({ fs: failing }), bareBoard('x'), 1)).toEqual({
      ok: false,
      problem: { code: 'read-only-disk', name: 'Bench three' },
    });
    expect(await keep(makeMachine({ fs: fullWhenCopying() }), bareBoard('x'), 1)).toMatchObject({
      problem: { code: 'no-space', name: 'Bench three' },
    });
  });

  test('give back work that was never saved without a file', async () => {
    const machine = makeMachine();
    await keep(machine, bareBoard('x'), 4);
    expect(await offersAfterRestart(machine)).toMatchObject([
      { id: SESSION, name: 'Bench three', folder: null, changes: 4, savedMs: expect.any(Number) },
    ]);
    const read = await makeMachine({ like: machine }).calls.takeRecovery({ id: SESSION, page: BESIDE });
    expect(read).toEqual({
      ok: true,
      value: { text: bareBoard('x'), name: 'Bench three', stamp: null, handle: null },
    });
  });
});
