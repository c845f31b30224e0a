import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { uptime } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { DISK, type FileSystem } from '../../../electron/host/file-system';
import { type Life, ownLife } from '../../../electron/host/process-life';
import { bareBoard } from '../scratch';
import { type Machine, makeMachine } from './machine';
import { keep, PAGE, SESSION, takenUp } from './unsaved-work';

/** A copy as some other process left it. */
async function keptBy(machine: Machine, owner: Life, more: { readonly savedMs?: number } = {}) {
  await keep(machine.calls, bareBoard('Unsaved'), 3);
  const path = copyIn(machine);
  const [header = '', ...body] = readFileSync(path, 'utf8').split('\n');
  writeFileSync(path, [JSON.stringify({ ...JSON.parse(header), owner, ...more }), ...body].join('\n'));
}

/** Of two copies the first lies in a, the second in b. */
const copyIn = ({ data }: Machine, slot = 'a') => join(data, 'recovery', `${SESSION}.${slot}.copy`);

async function offersAfterRestart(machine: Machine) {
  const next = makeMachine({ like: machine });
  await next.calls.about({ page: 'page-after-restart' });
  return CHANNELS.listRecovery.output.parse(await next.calls.listRecovery());
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
  await keep(machine.calls, bareBoard('One'), 1);
  await keep(machine.calls, bareBoard('Two'), 2);
  await machine.calls.dropRecovery({ id: SESSION, page: PAGE });
  expect(await offersAfterRestart(machine)).toEqual([]);
  expect(readdirSync(join(machine.data, 'recovery'))).toEqual([]);
});

describe('A session that goes on is not taken for one that broke off', () => {
  test('the page’s own, and that of another window of the same program', async () => {
    const machine = makeMachine();
    await machine.calls.about({ page: PAGE });
    await keep(machine.calls, bareBoard('x'), 1);
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
    await keep(machine.calls, bareBoard('x'), 1);
    await machine.calls.about({ page: 'page-loaded-again' });
    expect(await machine.calls.listRecovery()).toHaveLength(1);
  });

  test('what one window has taken up again is not offered to the next', async () => {
    const machine = makeMachine();
    await keep(machine.calls, bareBoard('Unsaved'), 3);
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

  test('and so is one from before the system started, whoever has its number since', async () => {
    const machine = makeMachine();
    const savedMs = Date.now() - uptime() * 1_000 - 3_600_000;
    await keptBy(machine, { pid: longProcess().pid ?? 0, started: null }, { savedMs });
    expect(await offersAfterRestart(machine)).toMatchObject([{ id: SESSION, savedMs }]);
    expect(await takenUp(makeMachine({ like: machine }).calls)).toBe(bareBoard('Unsaved'));
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
    await keep(machine.calls, bareBoard('Before'), 1);
    await keep(machine.calls, bareBoard('Last'), 2);
    truncateSync(copyIn(machine, 'b'), bytes);
    expect(await takenUp(makeMachine({ like: machine }).calls)).toBe(bareBoard('Before'));
    expect(readdirSync(join(machine.data, 'recovery'))).toContain(`${SESSION}.b.copy.broken`);
  });

  test('with a letter changed, it is set aside and nothing is offered in its place', async () => {
    const machine = makeMachine();
    await keep(machine.calls, bareBoard('Last'), 2);
    const content = readFileSync(copyIn(machine), 'utf8');
    writeFileSync(copyIn(machine), content.replace('Last', 'Lost'));
    expect(await offersAfterRestart(machine)).toEqual([]);
    expect(readFileSync(`${copyIn(machine)}.broken`, 'utf8')).toContain('Lost');
  });

  test('but of a newer program is left alone', async () => {
    const machine = makeMachine();
    await keep(machine.calls, bareBoard('Last'), 2);
    const newer = '{"format":"leadwright/recovery","version":2,"more":true}\nwork';
    writeFileSync(copyIn(machine), newer);
    expect(await offersAfterRestart(machine)).toEqual([]);
    expect(readFileSync(copyIn(machine), 'utf8')).toBe(newer);
  });
});

test('A broken copy is never what the next one takes the place of a whole one for', async () => {
  const machine = makeMachine();
  await keep(machine.calls, bareBoard('Before'), 1);
  await keep(machine.calls, bareBoard('Last'), 2);
  truncateSync(copyIn(machine, 'b'), 100);
  const next = makeMachine({ like: machine, fs: fullWhenCopying() });
  expect(await keep(next.calls, bareBoard('Next'), 3)).toMatchObject({ ok: false });
  expect(await takenUp(makeMachine({ like: machine }).calls)).toBe(bareBoard('Before'));
});

function fullWhenCopying(): FileSystem {
  const full = Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' });
  return { ...DISK, createNew: () => Promise.reject(full) };
}

const BESIDE = 'page-of-another-window';

describe('The calls of the window', () => {
  const id = { id: 'nothing-of-that-name', page: PAGE };

  test('say what is not there, and what is open elsewhere', async () => {
    const machine = makeMachine();
    expect(await machine.calls.takeRecovery(id)).toEqual({
      ok: false,
      problem: { code: 'not-found', name: 'recovery copy' },
    });
    await machine.calls.about({ page: PAGE });
    await keep(machine.calls, bareBoard('x'), 1);
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
    expect(await keep(makeMachine({ fs: failing }).calls, bareBoard('x'), 1)).toEqual({
      ok: false,
      problem: { code: 'read-only-disk', name: 'Bench three' },
    });
    expect(await keep(makeMachine({ fs: fullWhenCopying() }).calls, bareBoard('x'), 1)).toMatchObject({
      problem: { code: 'no-space', name: 'Bench three' },
    });
  });

  test('give back work that was never saved without a file', async () => {
    const machine = makeMachine();
    await keep(machine.calls, bareBoard('x'), 4);
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
