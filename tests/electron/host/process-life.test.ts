import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { uptime } from 'node:os';
import { describe, expect, onTestFinished, test } from 'vitest';
import { isAlive, LifeZ, ownLife } from '../../../electron/host/process-life';
import { asNobody } from '../scratch';

const onLinux = process.platform === 'linux';

test('We are alive, by our number and the time at which we began', () => {
  expect(ownLife().pid).toBe(process.pid);
  expect(isAlive(ownLife(), Date.now())).toBe(true);
  expect(isAlive({ pid: process.pid, started: null }, Date.now())).toBe(true);
});

test.skipIf(!onLinux)('Another that has our number, and began at another time, is not alive', () => {
  const { started } = ownLife();
  expect(started).toMatch(/^\d+$/);
  expect(isAlive({ pid: process.pid, started: `${Number(started) + 1}` }, Date.now())).toBe(false);
});

test.skipIf(!onLinux)(
  'A process that began after another has a later time, whatever it calls itself',
  async () => {
    const named = spawn(process.execPath, [
      '-e',
      'process.title = "a) b (c) 1 2"; console.log(1); setTimeout(() => {}, 60_000)',
    ]);
    onTestFinished(() => void named.kill('SIGKILL'));
    await once(named.stdout, 'data');
    const { started } = ownLife();
    const pid = named.pid ?? 0;
    // Clock ticks are hundredths of a second (proc(5), field 22); the machine began before us, and we before it.
    expect(isAlive({ pid, started }, Date.now())).toBe(false);
    expect(isAlive({ pid, started: null }, Date.now())).toBe(true);
    named.kill('SIGKILL');
    await once(named, 'exit');
    expect(isAlive({ pid, started: null }, Date.now())).toBe(false);
  },
);

test('A process of somebody else that may not be signalled is alive', async () => {
  expect(await asNobody(async () => isAlive({ pid: 1, started: null }, Date.now()))).toBe(true);
});

describe('Where the system does not tell when a run began', () => {
  const systemStartMs = Date.now() - uptime() * 1_000;
  const pid = process.pid;

  test('one that was last seen before the system started has ended, whoever has its number now', () => {
    for (const seenMs of [0, systemStartMs - 120_000])
      expect(isAlive({ pid, started: null }, seenMs)).toBe(false);
  });

  test('one that was seen since, or so little before that a clock may be wrong, may go on', () => {
    for (const seenMs of [systemStartMs - 30_000, systemStartMs + 1_000, Date.now()])
      expect(isAlive({ pid, started: null }, seenMs)).toBe(true);
  });

  test.skipIf(!onLinux)('where it does, it does not matter when it was seen', () => {
    expect(isAlive(ownLife(), 0)).toBe(true);
  });
});

test('Nobody has a number that is not above zero', () => {
  expect(LifeZ.safeParse({ pid: 0, started: null }).success).toBe(false);
  expect(LifeZ.safeParse({ pid: 1.5, started: null }).success).toBe(false);
  expect(LifeZ.safeParse({ pid: 1, started: null, more: 1 }).success).toBe(false);
  expect(LifeZ.safeParse({ pid: 1, started: '1' }).success).toBe(true);
});
