import { describe, expect, test } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import { serialize } from '../../../boards/document/serialize';
import { sheetSections } from '../../../renderer/dialogs/library/sheet-rows';
import { duplicateSheet, keepSheet, removeSheet } from '../../../renderer/files/library-work';
import { countRead, type ReadLibrary, readLibrary, twinIn } from '../../../renderer/files/read-library';
import { bench, type TestBench } from '../stand-in';

const never = () => false;
const nothing = () => undefined;

async function whole(b: TestBench): Promise<ReadLibrary> {
  const read = await readLibrary(b.host, nothing, never);
  if (!read.ok) throw new Error(read.problem.code);
  return read.value;
}

/** Puts a sheet into the library as if it had always been there. */
function put(b: TestBench, sheet: BoardSheet, name = `${sheet.id}.board.json`): string {
  const handle = `handle-of-the-sheet-${sheet.id}-${b.host.sheets.size}`;
  const text = serialize(sheet);
  b.host.sheets.set(handle, { name, text });
  b.host.files.set(handle, { handle, name, folder: '/sheets', text, stamp: 'stamp-1', readOnly: false });
  return handle;
}

const named = (b: TestBench, id: string, name = id): BoardSheet => ({ ...b.build().board, id, name });

/** The topmost question, answered. */
async function answer(b: TestBench, choice: string | null): Promise<string> {
  await new Promise((resolve) => setTimeout(resolve));
  const open = b.session.getState().dialogs.at(-1);
  if (open?.kind !== 'question') throw new Error('No question is open');
  open.answer(choice);
  return open.question.title;
}

describe('reading the library', () => {
  test('goes on in steps, and tells how far it has come', async () => {
    const b = bench();
    for (let at = 0; at < 45; at++) put(b, named(b, `sheet-${at}`));
    const told: number[] = [];
    await readLibrary(b.host, (library) => told.push(countRead(library)), never);
    expect(told).toEqual([0, 20, 40]);
    expect(countRead(await whole(b))).toBe(45);
  });

  test('stops where it is told to, with what it has', async () => {
    const b = bench();
    for (let at = 0; at < 45; at++) put(b, named(b, `sheet-${at}`));
    let steps = 0;
    const read = await readLibrary(b.host, nothing, () => ++steps > 1);
    expect(read.ok && [countRead(read.value), read.value.sheets.length]).toEqual([20, 45]);
  });
});

describe('the list of sheets', () => {
  test('has boards first, then cases, in the order of their names, and what cannot be used last', async () => {
    const b = bench();
    for (const name of ['Board 10', 'Board 2']) put(b, named(b, name.toLowerCase().replace(' ', '-'), name));
    b.host.sheets.set('handle-of-something-broken', { name: 'broken.board.json', text: '{' });
    const text = serialize(b.build().case);
    b.host.sheets.set('handle-of-the-only-case', { name: 'x.case.json', text });
    const sections = sheetSections((await whole(b)).sheets, '');
    expect(sections.map(({ heading, rows }) => [heading, ...rows.map(({ title }) => title)])).toEqual([
      ['Boards', 'Board 2', 'Board 10'],
      ['Cases', b.build().case.name],
      ['Cannot be used', 'broken.board.json'],
    ]);
    expect(sheetSections((await whole(b)).sheets, 'reset board 10').map(({ id }) => id)).toEqual(['board']);
  });
});

test('two sheets of one id, copied outside of the program, are said to be that', async () => {
  const b = bench();
  put(b, named(b, 'twin', 'First'), 'a.board.json');
  put(b, named(b, 'twin', 'Second'), 'b.board.json');
  put(b, named(b, 'other'));
  const words = sheetSections((await whole(b)).sheets, '').flatMap(({ rows }) =>
    rows.map((row) => row.words),
  );
  expect(words.map((each) => each.endsWith('same id as another'))).toEqual([true, false, true]);
});

describe('keeping a sheet', () => {
  test('whose id nobody has makes a file of its own', async () => {
    const b = bench();
    expect(await keepSheet(b, await whole(b), named(b, 'new'))).not.toBeNull();
    expect(b.host.asked).toEqual(['keep new.board.json']);
    expect(twinIn(await whole(b), 'board', 'new')?.head.title).toBe('new');
  });

  test('that is there word for word changes nothing', async () => {
    const b = bench();
    const handle = put(b, named(b, 'known'));
    expect(await keepSheet(b, await whole(b), named(b, 'known'))).toBe(handle);
    expect([b.host.asked, b.said()]).toEqual([[], '“known” is in the library already, word for word.']);
  });

  test('of an id that is there asks first, and keeps both under two ids', async () => {
    const b = bench();
    put(b, named(b, 'twin', 'First'));
    const keeping = keepSheet(b, await whole(b), named(b, 'twin', 'Second'));
    expect(await answer(b, 'both')).toBe('The library has a board sheet “twin” already');
    expect(await keeping).not.toBeNull();
    const library = await whole(b);
    expect(
      [twinIn(library, 'board', 'twin'), twinIn(library, 'board', 'twin-2')].map((each) => each?.head.title),
    ).toEqual(['First', 'Second']);
  });

  test('of an id that is there can take its place, or be compared with it, or be left', async () => {
    const b = bench();
    const handle = put(b, named(b, 'twin', 'First'));
    const second = named(b, 'twin', 'Second');
    const left = keepSheet(b, await whole(b), second);
    await answer(b, null);
    expect([await left, b.host.asked]).toEqual([null, []]);
    const compared = keepSheet(b, await whole(b), second);
    await answer(b, 'compare');
    expect([await compared, b.host.asked]).toEqual([null, []]);
    expect(b.session.getState().dialogs.at(-1)).toMatchObject({ kind: 'compare', mine: second });
    const replaced = keepSheet(b, await whole(b), second);
    await answer(b, 'replace');
    expect([await replaced, b.host.asked]).toEqual([handle, [`keep over ${handle}`]]);
  });

  test('of a case is not asked about for a board of the same id', async () => {
    const b = bench();
    put(b, named(b, b.build().case.id));
    expect(await keepSheet(b, await whole(b), b.build().case)).not.toBeNull();
  });

  test('that the disk does not take says why, and that the library is as it was', async () => {
    const b = bench();
    b.host.refusal = { code: 'no-space', name: 'new.board.json', room: null };
    expect(await keepSheet(b, await whole(b), named(b, 'new'))).toBeNull();
    expect(b.session.getState().dialogs.at(-1)).toMatchObject({
      kind: 'message',
      message: {
        title: '“new.board.json” was not saved',
        lines: [expect.anything(), 'The library is as it was.'],
      },
    });
  });
});

test('a duplicate has an id and a name of its own, and says the same', async () => {
  const b = bench();
  const sheet = named(b, 'first', 'First');
  const handle = put(b, sheet);
  await duplicateSheet(b, await whole(b), { handle, sheet, stamp: 'stamp-1' });
  expect(twinIn(await whole(b), 'board', 'first-copy')?.head).toMatchObject({
    title: 'First, copy',
    count: sheet.connectors.length,
  });
});

test('a sheet is removed after asking only', async () => {
  const b = bench();
  const sheet = named(b, 'first');
  const first = { handle: put(b, sheet), sheet, stamp: 'stamp-1' };
  const kept = removeSheet(b, first);
  await answer(b, null);
  expect([await kept, b.host.sheets.size]).toEqual([false, 1]);
  const removed = removeSheet(b, first);
  await answer(b, 'remove');
  expect([await removed, b.host.sheets.size]).toEqual([true, 0]);
});
