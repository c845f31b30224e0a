import { expect, test } from 'vitest';
import { savePaper } from '../../../renderer/dialogs/print-pinout/save-paper';
import { saveBuildAs, saveSheetAs } from '../../../renderer/files/save-build';
import { saveList } from '../../../renderer/files/save-list';
import { bench, type TestBench, withHost } from '../stand-in';

/** Everything that is written to a file the system's dialog has named. */
const WRITERS = {
  'A build': saveBuildAs,
  'A sheet': (b: TestBench) => saveSheetAs(b, b.build().board),
  'A list': (b: TestBench) => saveList(b, 'from-to'),
  'A paper': (b: TestBench) => {
    const print = { kind: 'header', options: { turn: 0, mirrored: false, connector: 'panel' } } as const;
    const paper = { document: '{}', print, format: 'png', page: null, scale: 1 } as const;
    return savePaper(b, paper, 'panel', () => undefined);
  },
} as const;

const WHAT = ['A build', 'A sheet', 'A list', 'A paper'] as const;

/** A bench whose system's dialog names a file; `exists` where its ending was added, so that nobody was asked. */
function benchWith(exists: boolean): TestBench {
  return withHost(bench(), { chooseSave: async () => ({ handle: 'chosen', name: 'work.json', exists }) });
}

async function answer(b: TestBench, choice: string | null): Promise<string> {
  await new Promise((resolve) => setTimeout(resolve));
  const dialog = b.session.getState().dialogs.at(-1);
  if (dialog?.kind !== 'question') throw new Error('No question is open');
  dialog.answer(choice);
  return dialog.question.title;
}

test.each(WHAT)('%s replaces no file that the system’s dialog did not ask about', async (what) => {
  const b = benchWith(true);
  const left = WRITERS[what](b);
  expect(await answer(b, null)).toBe('Replace “work.json”?');
  await left;
  expect(b.host.asked).toEqual([]);
  const replaced = WRITERS[what](b);
  await answer(b, 'replace');
  await replaced;
  expect(b.host.asked).toEqual([expect.stringContaining('chosen')]);
});

test.each(WHAT)('%s is not asked about a second time', async (what) => {
  const b = benchWith(false);
  await WRITERS[what](b);
  expect(b.session.getState().dialogs).toEqual([]);
  expect(b.host.asked).toEqual([expect.stringContaining('chosen')]);
});
