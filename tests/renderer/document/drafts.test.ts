import { expect, test } from 'vitest';
import { draftFor, keepDraft } from '../../../renderer/areas/document/pin-list/drafts';
import { bench, type TestBench } from '../stand-in';

const LIST = '1 PLED+\n2 HDD LED -';

/** Opens the same build anew, with the same ids throughout. */
function openAnother(b: TestBench): void {
  const { open, load } = b.editor.getState();
  if (!open) throw new Error('Nothing is open');
  load(b.build(), open.file, open.saved);
}

test('a list that was not filled in is there again for its connector, whatever was done meanwhile', () => {
  const b = bench();
  keepDraft(b, 'panel', LIST);
  b.run({ name: 'unseat-all', args: {} });
  expect([draftFor(b, 'panel'), draftFor(b, 'sysfan1')]).toEqual([LIST, '']);
});

test('a list that was filled in or emptied is gone', () => {
  const b = bench();
  keepDraft(b, 'panel', LIST);
  keepDraft(b, 'panel', '');
  expect(draftFor(b, 'panel')).toBe('');
});

test('a list for a connector of one build is not offered for that of the next with the same id', () => {
  const b = bench();
  keepDraft(b, 'panel', LIST);
  openAnother(b);
  expect(draftFor(b, 'panel')).toBe('');
});
