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
