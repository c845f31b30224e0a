import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK } from '../../../electron/host/file-system';
import { fileVersions, type Held, type Versions } from '../../../electron/host/versions';
import { bareBoard, bareSheet, scratchFolder } from '../scratch';
import { makeMachine } from './machine';

const MINUTE_MS = 60_000;
const PATH = '/bench/work.build.json';
const OTHER = '/bench/other.build.json';

const at = (minute: number, text: string): Held => ({ text, savedMs: minute * MINUTE_MS });

const heldTexts = async (versions: Versions, path = PATH) =>
  Promise.all((await versions.list(path)).map(({ id }) => versions.read(path, id)));

const minutes = async (versions: Versions) =>
  (await versions.list(PATH)).map(({ savedMs }) => savedMs / MINUTE_MS);

test('What another program wrote is there after it was replaced, also by one save right after the other', async () => {
  const { calls, home, host } = makeMachine();
  const path = join(home, 'work.board.json');
  const handle = host.handles.give(path);
  const save = (name: string) => calls.save({ handle, document: bareSheet(name), expected: null });
  await save('Mine A');
  writeFileSync(path, bareBoard('Theirs'));
  for (const name of ['Mine B', 'Mine C', 'Mine D', 'Mine E']) await save(name);
  const listed = await calls.listVersions({ handle });
  const texts = await Promise.all(listed.map(({ id }) => calls.readVersion({ handle, id })));
  expect(texts.map((read) => read.ok && JSON.parse(read.value.text).name).toSorted()).toEqual([
    'Mine A',
    'Mine D',
    'Mine E',
    'Theirs',
  ]);
});

test('What the file held when an earlier version was saved again is a version itself, and stays one', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(0, 'A'), null);
  await versions.keep(PATH, at(2, 'B'), at(0, 'A'));
  await versions.keep(PATH, at(2.1, 'A'), at(2, 'B'));
  expect(await heldTexts(versions)).toEqual(['A', 'B', 'A']);
  await versions.keep(PATH, at(2.2, 'C'), at(2.1, 'A'));
  await versions.keep(PATH, at(2.3, 'D'), at(2.2, 'C'));
  expect(await heldTexts(versions)).toEqual(['D', 'C', 'B', 'A']);
});

test('What another program put there twice stays as well', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(0, 'A'), null);
  await versions.keep(PATH, at(1, 'B'), at(0.5, 'Theirs'));
  await versions.keep(PATH, at(2, 'C'), at(1.5, 'Theirs'));
  await versions.keep(PATH, at(3, 'D'), at(2, 'C'));
  expect(await heldTexts(versions)).toEqual(['D', 'C', 'B', 'Theirs', 'A']);
});

test('A step on the way that another program brought back is none any more', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(0, 'A'), null);
  await versions.keep(PATH, at(1, 'B'), at(0, 'A'));
  await versions.keep(PATH, at(2, 'C'), at(1, 'B'));
  await versions.keep(PATH, at(3, 'D'), at(2.5, 'B'));
  await versions.keep(PATH, at(4, 'E'), at(3, 'D'));
  expect(await heldTexts(versions)).toEqual(['E', 'D', 'C', 'B', 'A']);
});

test('What a save has just replaced is there until the next save, however near they are', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(0, 'A'), null);
  await versions.keep(PATH, at(1, 'B'), at(0, 'A'));
  await versions.keep(PATH, at(2, 'C'), at(1, 'B'));
  expect(await heldTexts(versions)).toEqual(['C', 'B', 'A']);
});

test('Saves of one text over and over push nothing out', async () => {
  const versions = fileVersions(DISK, scratchFolder());
  await versions.keep(PATH, at(0, 'A'), null);
  await versions.keep(PATH, at(1, 'B'), at(0, 'A'));
  for (let step = 1; step < 60; step++)
    await versions.keep(PATH, at(1 + step / 30, 'B'), at(1 + (step - 1) / 30, 'B'));
  expect(await heldTexts(versions)).toEqual(['B', 'B', 'A']);
});

test('A program started anew takes out nothing that it has not replaced itself', async () => {
  const folder = scratchFolder();
  const before = fileVersions(DISK, folder);
  await before.keep(PATH, at(0, 'A'), null);
  await before.keep(PATH, at(1, 'B'), at(0, 'A'));
  await before.keep(PATH, at(2, 'C'), at(1, 'B'));
  const anew = fileVersions(DISK, folder);
  await anew.keep(PATH, at(3, 'D'), at(2, 'C'));
  expect(await heldTexts(anew)).toEqual(['D', 'C', 'B', 'A']);
});

describe('What nobody had kept', () => {
  test('has the time that its file has, where there is no version yet', async () => {
    const versions = fileVersions(DISK, scratchFolder());
    await versions.keep(PATH, at(90, 'now'), at(7, 'Theirs'));
    expect(await minutes(versions)).toEqual([90, 7]);
  });

  test('came after the newest version and before now, whatever its file says', async () => {
    const early = fileVersions(DISK, scratchFolder());
    await early.keep(PATH, at(50, 'A'), null);
    await early.keep(PATH, at(90, 'B'), at(7, 'Theirs'));
    expect((await early.list(PATH)).map(({ savedMs }) => savedMs)).toEqual([
      90 * MINUTE_MS,
      50 * MINUTE_MS + 1,
      50 * MINUTE_MS,
    ]);
    expect(await heldTexts(early)).toEqual(['B', 'Theirs', 'A']);
    const late = fileVersions(DISK, scratchFolder());
    await late.keep(PATH, at(90, 'B'), at(900, 'Theirs'));
    expect((await late.list(PATH)).map(({ savedMs }) => savedMs)).toEqual([
      90 * MINUTE_MS,
      90 * MINUTE_MS - 1,
    ]);
  });

  test('does not go as the oldest where there are as many versions as may be', async () => {
    const limits = { perFile: 3, bytes: 1_000, apartMs: 0 };
    const versions = fileVersions(DISK, scratchFolder(), limits);
    for (const minute of [10, 20, 30]) await versions.keep(PATH, at(minute, `at ${minute}`), null);
    await versions.keep(PATH, at(40, 'at 40'), at(1, 'Theirs'));
    expect(await heldTexts(versions)).toEqual(['at 40', 'Theirs', 'at 30']);
    await versions.keep(PATH, at(50, 'at 50'), at(40, 'at 40'));
    expect(await heldTexts(versions)).toEqual(['at 50', 'at 40', 'Theirs']);
  });

  test('is there after its save also where a clock was set back', async () => {
    const limits = { perFile: 2, bytes: 1_000, apartMs: 0 };
    const versions = fileVersions(DISK, scratchFolder(), limits);
    for (const minute of [80, 90]) await versions.keep(PATH, at(minute, `at ${minute}`), null);
    await versions.keep(PATH, at(10, 'at 10'), at(5, 'Theirs'));
    expect(await heldTexts(versions)).toEqual(['at 10', 'Theirs']);
  });

  test('does not go for the newest versions of other files', async () => {
    const limits = { perFile: 9, bytes: 25, apartMs: 0 };
    const versions = fileVersions(DISK, scratchFolder(), limits);
    await versions.keep(OTHER, at(80, 'o'.repeat(10)), null);
    await versions.keep(PATH, at(90, 'now'.padEnd(10)), at(1, 'Theirs'.padEnd(10)));
    expect(await heldTexts(versions)).toEqual(['now'.padEnd(10), 'Theirs'.padEnd(10)]);
    expect(await heldTexts(versions, OTHER)).toEqual([]);
  });
});

test('Of all files that goes first which was replaced longest ago, not what had been written longest ago', async () => {
  const limits = { perFile: 9, bytes: 40, apartMs: 0 };
  const versions = fileVersions(DISK, scratchFolder(), limits);
  await versions.keep(OTHER, at(50, 'one'.padEnd(10)), null);
  await versions.keep(OTHER, at(60, 'two'.padEnd(10)), at(50, 'one'.padEnd(10)));
  await versions.keep(PATH, at(70, 'now'.padEnd(10)), at(1, 'Theirs'.padEnd(10)));
  await versions.keep(PATH, at(80, 'next'.padEnd(10)), at(70, 'now'.padEnd(10)));
  expect(await heldTexts(versions)).toEqual(['next', 'now', 'Theirs'].map((text) => text.padEnd(10)));
  expect(await heldTexts(versions, OTHER)).toEqual(['two'.padEnd(10)]);
});
