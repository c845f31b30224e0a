import { describe, expect, test } from 'vitest';
import { changesOf, isUnsaved, type OpenBuild } from '../../../renderer/store/editor';
import { bench, POWER_SWITCH, type TestBench } from '../stand-in';

const takeOff = { name: 'unseat-plug', args: POWER_SWITCH } as const;

function open({ editor }: TestBench): OpenBuild {
  const { open: now } = editor.getState();
  if (!now) throw new Error('Nothing is open');
  return now;
}

describe('the unsaved mark', () => {
  test('is off for a build as its file holds it', () => {
    const b = bench();
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([false, 0]);
  });

  test('counts the steps since the last save', () => {
    const b = bench();
    b.run(takeOff);
    b.run({ name: 'rename-build', args: { name: 'Study machine 4' } });
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([true, 2]);
  });

  test('goes off again when everything is undone', () => {
    const b = bench();
    b.run(takeOff);
    b.editor.getState().undo();
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([false, 0]);
  });

  test('comes back when one goes behind the saved step', () => {
    const b = bench();
    b.run(takeOff);
    b.editor.getState().markSaved(open(b).opening, b.build(), open(b).file);
    b.editor.getState().undo();
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([true, 1]);
  });

  test('stays on for what was edited while the file was being written', () => {
    const b = bench();
    b.run(takeOff);
    const written = b.build();
    b.run({ name: 'rename-build', args: { name: 'Study machine 4' } });
    b.editor.getState().markSaved(open(b).opening, written, open(b).file);
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([true, 1]);
  });

  test('counts one where every step is undone, and what was saved is in none of them any more', () => {
    const b = bench();
    b.run(takeOff);
    b.editor.getState().markSaved(open(b).opening, b.build(), open(b).file);
    b.editor.getState().undo();
    b.run({ name: 'rename-build', args: { name: 'Study machine 4' } });
    b.editor.getState().undo();
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([true, 1]);
  });

  test('is not touched by a save that ends when something else is open', () => {
    const b = bench();
    b.run(takeOff);
    const { opening, history, file } = open(b);
    const other = { ...file, handle: 'another-file-of-ours', name: 'other' };
    b.editor.getState().load(b.build(), other, null);
    b.editor.getState().markSaved(opening, history.present, file);
    expect([open(b).file.name, isUnsaved(open(b))]).toEqual(['other', true]);
  });

  test('is on for a recovery copy, though nothing was edited yet', () => {
    const b = bench();
    b.editor.getState().load(b.build(), open(b).file, null);
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([true, 0]);
  });
});

test('a command that is refused leaves the build and its steps as they are', () => {
  const b = bench();
  const before = open(b);
  const result = b.editor
    .getState()
    .run({ name: 'turn-plug', args: { lead: 'nobody', plug: 'plug', by: 90 } });
  expect(result).toMatchObject({ ok: false, problem: { code: 'unknown-lead' } });
  expect(open(b)).toBe(before);
});

describe('the steps between what is safe and what is on the screen', () => {
  const renamed = (b: TestBench, ...names: readonly string[]) => {
    for (const name of names) b.run({ name: 'rename-build', args: { name } });
  };
  const save = (b: TestBench) => b.editor.getState().markSaved(open(b).opening, b.build(), open(b).file);

  test('are none right after a save, however much was done before', () => {
    const b = bench();
    renamed(b, 'a', 'b');
    save(b);
    expect([isUnsaved(open(b)), changesOf(open(b))]).toEqual([false, 0]);
  });

  test('are counted behind a save as they are before it, and fewer when some are done again', () => {
    const b = bench();
    renamed(b, 'a', 'b', 'c');
    save(b);
    b.editor.getState().undo();
    b.editor.getState().undo();
    expect(changesOf(open(b))).toBe(2);
    b.editor.getState().redo();
    expect([b.build().name, changesOf(open(b))]).toEqual(['b', 1]);
    b.editor.getState().redo();
    expect(isUnsaved(open(b))).toBe(false);
  });

  test('are all there are where what was saved can no longer be gone back to', () => {
    const b = bench();
    renamed(b, 'a', 'b');
    save(b);
    b.editor.getState().undo();
    renamed(b, 'other');
    expect(changesOf(open(b))).toBe(2);
    b.editor.getState().load(b.build(), open(b).file, null);
    renamed(b, 'c');
    expect(changesOf(open(b))).toBe(1);
  });
});

test('a command that changes nothing makes no step, and the open build is the same', () => {
  const b = bench();
  const before = open(b);
  b.run({ name: 'rename-build', args: { name: b.build().name } });
  expect(open(b)).toBe(before);
});

test('where nothing is open, undo, redo and a save that ends do nothing, and a command is a bug', () => {
  const b = bench();
  const { opening, history, file } = open(b);
  const editor = b.editor.getState();
  editor.close();
  editor.undo();
  editor.redo();
  editor.markSaved(opening, history.present, file);
  expect(b.editor.getState().open).toBeNull();
  expect(() => editor.run(takeOff)).toThrow('Nothing is open for unseat-plug');
});
