import { describe, expect, test } from 'vitest';
import type { HostRequest } from '../../../boards/host';
import { answerRequests } from '../../../renderer/requests';
import type { Dialog } from '../../../renderer/store/dialog';
import { bench, POWER_SWITCH, type TestBench, wiredBuild, withHost } from '../stand-in';

const open = (b: TestBench, ...dialogs: readonly Dialog[]) => {
  for (const dialog of dialogs) b.session.getState().openDialog(dialog);
};
const kinds = (b: TestBench) => b.session.getState().dialogs.map(({ kind }) => kind);
const undo = (b: TestBench) => b.editor.getState().undo();

/** A connector that is not there before. */
function addConnector(b: TestBench): void {
  const [like] = b.build().board.connectors;
  if (like === undefined) throw new Error('The demo has no connector');
  b.run({ name: 'add-connector', args: { connector: { ...like, id: 'spare' } } });
}

describe('A dialog', () => {
  test.each(['meter', 'photo', 'pin-list', 'looks-like', 'number-connector', 'header-picture'] as const)(
    '(%s) of a connector closes when adding that is undone, and not before',
    (kind) => {
      const b = bench();
      addConnector(b);
      b.run({ name: 'rename-build', args: { name: 'Another name' } });
      open(b, { kind, connector: 'spare' });
      undo(b);
      expect(kinds(b)).toEqual([kind]);
      undo(b);
      expect(kinds(b)).toEqual([]);
    },
  );

  test('of a lead, or of nothing in particular, stays while that is there', () => {
    const b = bench();
    open(b, { kind: 'places', plug: POWER_SWITCH }, { kind: 'add-lead' }, { kind: 'library' });
    b.run({ name: 'rename-build', args: { name: 'Another name' } });
    undo(b);
    expect(kinds(b)).toEqual(['places', 'add-lead', 'library']);
  });
});

test('The system’s menu does nothing behind a dialog', async () => {
  const b = bench();
  let request: (request: HostRequest) => void = () => undefined;
  const onRequest = (take: (request: HostRequest) => void) => {
    request = take;
    return () => undefined;
  };
  answerRequests(withHost(b, { onRequest }));
  b.run({ name: 'rename-build', args: { name: 'Another name' } });
  open(b, { kind: 'add-lead' });
  request({ kind: 'action', id: 'edit.undo' });
  expect(b.build().name).toBe('Another name');
  b.session.setState({ dialogs: [] });
  request({ kind: 'action', id: 'edit.undo' });
  expect(b.build().name).toBe(wiredBuild().name);
});
