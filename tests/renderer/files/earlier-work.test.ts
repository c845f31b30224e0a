import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import type { HostApi } from '../../../boards/host';
import { openRecovered } from '../../../renderer/files/recovered';
import { saveBuild } from '../../../renderer/files/save-build';
import { openVersion, versionsOfOpen, versionWords } from '../../../renderer/files/versions';
import { isUnsaved } from '../../../renderer/store/editor';
import { bench, handleOf, POWER_SWITCH, type TestBench, withHost, withSlowDisk } from '../stand-in';

const takeOff = { name: 'unseat-plug', args: POWER_SWITCH } as const;
const SAVED_MS = new Date(2024, 2, 3, 9, 30).getTime();
const VERSION = { id: 'a-version', savedMs: SAVED_MS, bytes: 1 };
const OFFER = { id: 'a-copy', name: 'demo', folder: '/bench', savedMs: SAVED_MS, changes: 3 };

const openOf = ({ editor }: TestBench) => {
  const { open } = editor.getState();
  if (!open) throw new Error('Nothing is open');
  return open;
};

/** Answers the question that is open once everything that can go on has gone on. */
async function answer({ session }: TestBench, choice: string | null) {
  await new Promise((resolve) => setTimeout(resolve));
  const dialog = session.getState().dialogs.at(-1);
  if (dialog?.kind !== 'question') throw new Error('No question is open');
  dialog.answer(choice);
}

function never(): never {
  throw new Error('There is no such copy');
}

const messageIn = ({ session }: TestBench) => session.getState().dialogs.at(-1);

/** A bench on which a version, or a recovery copy, holds some text. */
function holding(text: string): TestBench {
  const b = bench();
  b.host.versions.set(VERSION.id, text);
  b.host.copies.set(OFFER.id, {
    session: OFFER.id,
    page: 'page-that-broke-off',
    handle: handleOf('demo'),
    stamp: 'stamp-5',
    name: 'demo',
    text,
    changes: 3,
  });
  return b;
}

const older = (b: TestBench) => serialize({ ...b.build(), name: 'As it was' });

/** Opens the version, or the recovery copy. */
const WAYS: readonly (readonly [string, (b: TestBench) => Promise<void>])[] = [
  ['A version', (b) => openVersion(b, VERSION)],
  ['A recovery copy', (b) => openRecovered(b, OFFER)],
];

describe.each(WAYS)('%s', (_, openIt) => {
  test('becomes the open work, unsaved, with nothing to undo', async () => {
    const b = holding(older(bench()));
    await openIt(b);
    expect(b.build().name).toBe('As it was');
    expect(isUnsaved(openOf(b))).toBe(true);
    expect(openOf(b).history.past).toEqual([]);
    expect(openOf(b).file).toMatchObject({ handle: handleOf('demo'), name: 'demo', folder: '/bench' });
    expect(messageIn(b)).toBeUndefined();
  });

  test('is not opened over work that is not to be left', async () => {
    const b = holding(older(bench()));
    b.run(takeOff);
    const before = openOf(b);
    const opening = openIt(b);
    await answer(b, null);
    await opening;
    expect(openOf(b)).toBe(before);
  });

  test('is opened over unsaved work that may go', async () => {
    const b = holding(older(bench()));
    b.run(takeOff);
    const opening = openIt(b);
    await answer(b, 'discard');
    await opening;
    expect(b.build().name).toBe('As it was');
  });

  test('that is not there is said, and what is open stays', async () => {
    const b = bench();
    const before = openOf(b);
    await openIt(b);
    expect(messageIn(b)).toMatchObject({
      kind: 'message',
      message: { title: expect.stringContaining('is not there') },
    });
    expect(openOf(b)).toBe(before);
  });

  test.each([
    ['is broken', '{"format":'],
    ['holds a board sheet', serialize(bench().build().board)],
  ])('that %s is said with the name of the file, and what is open stays', async (__, text) => {
    const b = holding(text);
    const before = openOf(b);
    await openIt(b);
    expect(messageIn(b)).toMatchObject({
      kind: 'message',
      message: {
        title: expect.stringContaining('demo'),
        advice: expect.stringMatching(/What you have open stays as it is\.$/),
      },
    });
    expect(openOf(b)).toBe(before);
  });
});

test('A second recovery copy that is asked for while one is read is left where it is', async () => {
  const b = holding(older(bench()));
  b.host.copies.set('another', { ...(b.host.copies.get(OFFER.id) ?? never()), session: 'another' });
  await Promise.all([
    openRecovered(b, OFFER),
    openRecovered(b, { ...OFFER, id: 'another' }),
    openRecovered(b, OFFER),
  ]);
  expect(b.build().name).toBe('As it was');
  expect([...b.host.copies.keys()]).toEqual([OFFER.id, 'another']);
  // And not for ever.
  const next = openRecovered(b, { ...OFFER, id: 'another' });
  await answer(b, 'discard');
  await next;
  expect([...b.host.copies.keys()]).toEqual(['another']);
});

test('Work that was begun while a recovery copy is read is asked about', async () => {
  const b = holding(older(bench()));
  const takeRecovery: HostApi['takeRecovery'] = async (input) => {
    b.run(takeOff);
    return b.host.takeRecovery(input);
  };
  const opening = openRecovered(withHost(b, { takeRecovery }), OFFER);
  await answer(b, null);
  await opening;
  expect(openOf(b).history.past).toHaveLength(1);
  expect([...b.host.copies.keys()]).toContain(OFFER.id);
});

test('A recovery copy is worked on in the Wire area, and that it was opened is said to those who do not see', async () => {
  const b = holding(older(bench()));
  b.session.getState().goTo('document');
  await openRecovered(b, OFFER);
  expect(b.session.getState().area).toBe('wire');
  expect(b.session.getState().announcement.text).toBe('Opened the recovery copy of As it was.');
});

describe('Versions of a file', () => {
  test('are those of the file that is open', async () => {
    const b = holding('x');
    expect(await versionsOfOpen(b)).toMatchObject([{ id: VERSION.id, bytes: 1 }]);
  });

  test('there are none of a build that was never saved, and none where nothing is open', async () => {
    const b = holding(older(bench()));
    b.editor.getState().load(b.build(), { ...openOf(b).file, handle: null }, null);
    const before = openOf(b);
    expect(await versionsOfOpen(b)).toEqual([]);
    expect(await versionWords(b, VERSION)).toBe('');
    await openVersion(b, VERSION);
    expect(openOf(b)).toBe(before);
    b.editor.getState().close();
    expect(await versionsOfOpen(b)).toEqual([]);
    expect(await versionWords(b, VERSION)).toBe('');
    await openVersion(b, VERSION);
    expect(b.editor.getState().open).toBeNull();
  });

  test('are asked for by the file’s own handle', async () => {
    const b = holding('x');
    const asked: unknown[] = [];
    const watched = withHost(b, {
      listVersions: async (input) => {
        asked.push(input);
        return [];
      },
      readVersion: async (input) => {
        asked.push(input);
        return { ok: false, problem: { code: 'not-found', name: 'demo' } };
      },
    });
    await versionsOfOpen(watched);
    await versionWords(watched, VERSION);
    await openVersion(watched, VERSION);
    const one = { handle: handleOf('demo'), id: VERSION.id };
    expect(asked).toEqual([{ handle: handleOf('demo') }, one, one]);
  });

  test('are told by what stands in them', async () => {
    const now = holding('');
    now.host.versions.set('now', serialize(now.build()));
    expect(await versionWords(now, { ...VERSION, id: 'now' })).toBe('as it is on the screen');
    expect(await versionWords(now, { ...VERSION, id: 'gone' })).toBe('no longer whole');
    expect(await versionWords(holding('{"format":'), VERSION)).toBe('not a build');
    expect(await versionWords(holding(serialize(now.build().board)), VERSION)).toBe('not a build');
    const b = holding(older(now));
    const { board, case: sheet, seats } = b.build();
    expect(await versionWords(b, VERSION)).toBe(
      `${board.connectors.length}\u00a0connectors, ${sheet.leads.length}\u00a0leads, ${seats.length}\u00a0plugs seated`,
    );
  });

  test('are not opened over an edit that was made while they were read', async () => {
    const b = holding(older(bench()));
    const readVersion: HostApi['readVersion'] = async (input) => {
      b.run(takeOff);
      return b.host.readVersion(input);
    };
    const opening = openVersion(withHost(b, { readVersion }), VERSION);
    await answer(b, null);
    await opening;
    expect([b.build().name, isUnsaved(openOf(b))]).toEqual(['Study machine 3', true]);
  });

  test('opened while the file is being saved, are saved over what it then holds', async () => {
    const b = holding(older(bench()));
    const { slow, write } = withSlowDisk(b);
    const saving = saveBuild(slow);
    const opening = openVersion(b, VERSION);
    await new Promise((resolve) => setTimeout(resolve));
    write();
    await opening;
    expect([await saving, openOf(b).file.stamp]).toEqual([true, 'stamp-1']);
  });

  test('opened, say when they were saved, and that only saving keeps them', async () => {
    const b = holding(older(bench()));
    await openVersion(b, VERSION);
    expect(b.said()).toBe('This is demo as it was saved 3 March 2024 at 09:30. Save to keep it so.');
  });
});
