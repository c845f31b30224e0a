import { closeSync, ftruncateSync, openSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { LIMITS } from '../../boards/document/limits';
import { buildCommand, leadwright } from '../electron/cli/run-cli';
import { bareSheet, scratchFolder } from '../electron/scratch';

beforeAll(buildCommand, 60_000);

/** A heap that a machine of ten years ago has to spare. */
const SMALL_HEAP = ['--max-old-space-size=400'];
const MANY = 1_000;

const bare = (name = 'Bare') => JSON.stringify(bareSheet(name));
const board = (field: string, value: string) => bare().replace('"connectors":[]', `"${field}":${value}`);
const list = (count: number, item: string) => `[${Array.from({ length: count }, () => item).join(',')}]`;

/** What holds a thousand times what a file may hold; and how its refusal begins. */
const TOO_MUCH: readonly (readonly [string, () => string, RegExp])[] = [
  ['levels', () => '['.repeat(MANY * LIMITS.depth), /levels deep/],
  ['letters of a name', () => bare('x'.repeat(MANY * LIMITS.textLength)), /name: expected/],
  [
    'letters of the notes',
    () => board('notes', JSON.stringify('x'.repeat(MANY * LIMITS.noteLength))),
    /notes: expected/,
  ],
  [
    'connectors',
    () => board('connectors', list(MANY * LIMITS.connectors, '{}')),
    /connectors: expected a list/,
  ],
  ['photos', () => board('photos', list(MANY * LIMITS.photos, '{}')), /photos: expected a list/],
  [
    'mistakes',
    () => board('connectors', list(LIMITS.connectors, '{"a":1,"b":2,"c":3,"d":4}')),
    /at least 980/,
  ],
  [
    'unknown names',
    () =>
      board('x', '1').replace('"x":1', Array.from({ length: 100_000 }, (_, at) => `"x${at}":1`).join(',')),
    /no such name/,
  ],
  ['digits', () => board('version', '9'.repeat(MANY * MANY)), /version/],
  [
    'holes',
    () => bare().replace('"depthMm":170', `"depthMm":170,"holes":${list(MANY * LIMITS.mountingHoles, '{}')}`),
    /holes: expected a list/,
  ],
];

describe('a thousand times what a file may hold', () => {
  it.each(TOO_MUCH)('of %s is refused in a small heap, in words', async (_, make, told) => {
    const path = join(scratchFolder(), 'much.board.json');
    writeFileSync(path, make());
    const { code, err } = await leadwright(['check', path], { nodeOptions: SMALL_HEAP });
    expect(err).toMatch(told);
    expect(err).not.toMatch(/heap|\n\s+at /);
    expect(code).toBe(2);
  });

  it('of bytes is refused by its size alone: 32 GB that nobody reads', async () => {
    const path = join(scratchFolder(), 'huge.board.json');
    const file = openSync(path, 'w');
    ftruncateSync(file, MANY * LIMITS.fileBytes);
    closeSync(file);
    const { code, err } = await leadwright(['check', path], { nodeOptions: SMALL_HEAP });
    expect(err).toMatch(/at most 32\sMB/);
    expect(code).toBe(2);
  });
});
