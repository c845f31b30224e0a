import { expect, test } from 'vitest';
import { makeTurns } from '../../../electron/host/turns';

const later = () => new Promise((resolve) => setTimeout(resolve, 1));

test('Work on one thing is done in the order it was asked for, work on another meanwhile', async () => {
  const turns = makeTurns();
  const log: string[] = [];
  const work = (name: string) => async () => {
    log.push(`${name} begins`);
    await later();
    log.push(`${name} ends`);
    return name;
  };
  const all = [turns.take('a', work('a1')), turns.take('a', work('a2')), turns.take('b', work('b1'))];
  expect(await Promise.all(all)).toEqual(['a1', 'a2', 'b1']);
  expect(log.indexOf('a2 begins')).toBeGreaterThan(log.indexOf('a1 ends'));
  expect(log.indexOf('b1 begins')).toBeLessThan(log.indexOf('a1 ends'));
});

test('Work that fails is told to whoever asked for it, and does not stop the next', async () => {
  const turns = makeTurns();
  const failing = turns.take('a', () => Promise.reject(new Error('broken')));
  const next = turns.take('a', async () => 'done');
  await expect(failing).rejects.toThrow('broken');
  expect(await next).toBe('done');
});

test('Work asked for while the last one ends still waits for the one before it', async () => {
  const turns = makeTurns();
  let inside = 0;
  const work = async () => {
    inside++;
    expect(inside).toBe(1);
    await later();
    inside--;
  };
  const first = turns.take('a', work);
  const second = turns.take('a', work);
  await first;
  // The first has gone; the second is still at work.
  await Promise.resolve();
  await Promise.resolve();
  await Promise.all([second, turns.take('a', work)]);
});
