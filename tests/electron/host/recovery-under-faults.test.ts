import { expect, test } from 'vitest';
import { bareBoard } from '../scratch';
import { FAULTS, faultyDisk } from './faulty-disk';
import { makeMachine } from './machine';
import { keep, takenUp } from './unsaved-work';

test('A disk that fails while a copy is kept never takes the copy before it away', {
  timeout: 60_000,
}, async () => {
  const calm = faultyDisk({ at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
  await keep(makeMachine({ fs: calm }).calls, bareBoard('x'), 1);
  let cases = 0;
  for (const fault of FAULTS) {
    for (let at = 0; at < calm.log.length; at++) {
      const machine = makeMachine();
      await keep(machine.calls, bareBoard('Before'), 1);
      const kept = await keep(
        makeMachine({ like: machine, fs: faultyDisk({ at, fault, lasting: true }) }).calls,
        bareBoard('Last'),
        2,
      );
      expect(await takenUp(makeMachine({ like: machine }).calls)).toBe(
        bareBoard(kept.ok ? 'Last' : 'Before'),
      );
      cases++;
    }
  }
  expect(cases).toBeGreaterThan(80);
});
