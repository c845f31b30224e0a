import { expect, test } from 'vitest';
import { bareBoard } from '../scratch';
import { FAULTS, faultyDisk } from './faulty-disk';
import { type Machine, makeMachine } from './machine';

const SESSION = 'session-of-the-page';
const PAGE = 'page-of-the-window';

const keep = ({ calls }: Machine, text: string, changes: number) =>
  calls.keepRecovery({
    session: SESSION,
    page: PAGE,
    handle: null,
    stamp: null,
    name: 'Bench three',
    text,
    changes,
  });

async function textAfterRestart(machine: Machine): Promise<string | null> {
  const read = await makeMachine({ like: machine }).calls.takeRecovery({
    id: SESSION,
    page: 'page-after-restart',
  });
  return read.ok ? read.value.text : null;
}

test('A disk that fails while a copy is kept never takes the copy before it away', {
  timeout: 60_000,
}, async () => {
  const calm = faultyDisk({ at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false });
  await keep(makeMachine({ fs: calm }), bareBoard('x'), 1);
  let cases = 0;
  for (const fault of FAULTS) {
    for (let at = 0; at < calm.log.length; at++) {
      const machine = makeMachine();
      await keep(machine, bareBoard('Before'), 1);
      const kept = await keep(
        makeMachine({ like: machine, fs: faultyDisk({ at, fault, lasting: true }) }),
        bareBoard('Last'),
        2,
      );
      expect(await textAfterRestart(machine)).toBe(bareBoard(kept.ok ? 'Last' : 'Before'));
      cases++;
    }
  }
  expect(cases).toBeGreaterThan(80);
});
