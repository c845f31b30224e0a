import { describe, expect, test } from 'vitest';
import { closeBuild } from '../../../renderer/files/leave-build';
import { openHandle } from '../../../renderer/files/open-document';
import type { Dialog } from '../../../renderer/store/dialog';
import { bench, handleOf, type TestBench } from '../stand-in';

const LIST = { kind: 'pin-list', connector: 'panel' } as const;
const LIBRARY = { kind: 'library' } as const;

const opened = (b: TestBench) => b.session.getState().dialogs.map(({ kind }) => kind);

function withOpen(...dialogs: readonly Dialog[]): TestBench {
  const b = bench();
  for (const dialog of dialogs) b.session.getState().openDialog(dialog);
  return b;
}

describe('a window about the open build', () => {
  test('is closed when another one is opened, which may have connectors of the same ids', async () => {
    const b = withOpen(LIBRARY, LIST, { kind: 'meter', connector: 'panel' });
    await b.host.save({ handle: handleOf('other'), document: b.build(), expected: null });
    await openHandle(b, handleOf('other'));
    expect(b.editor.getState().open?.file.handle).toBe(handleOf('other'));
    expect(opened(b)).toEqual(['library']);
  });

  test('is closed with it, since it can show nothing without one', async () => {
    const b = withOpen({ kind: 'print-pinout' }, LIBRARY);
    await closeBuild(b);
    expect([b.editor.getState().open, opened(b)]).toEqual([null, ['library']]);
  });

  test('stays when the person stays', async () => {
    const b = withOpen(LIST);
    b.run({ name: 'unseat-all', args: {} });
    const closing = closeBuild(b);
    await new Promise((resolve) => setTimeout(resolve));
    const question = b.session.getState().dialogs.at(-1);
    if (question?.kind !== 'question') throw new Error('No question is open');
    question.answer(null);
    await closing;
    expect(opened(b)).toEqual(['pin-list']);
  });
});
