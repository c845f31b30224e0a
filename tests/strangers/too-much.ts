import { closeSync, ftruncateSync, openSync } from 'node:fs';
import { LIMITS } from '../../boards/document/limits';
import { bareSheet } from '../electron/scratch';

/** A heap that a machine of ten years ago has to spare. */
export const SMALL_HEAP = ['--max-old-space-size=400'];
const MANY = 1_000;

const bare = (name = 'Bare') => JSON.stringify(bareSheet(name));
const board = (field: string, value: string) => bare().replace('"connectors":[]', `"${field}":${value}`);
const list = (count: number, item: string) => `[${Array.from({ length: count }, () => item).join(',')}]`;

/** What holds a thousand times what a file may hold; and how its refusal begins. */
export const TOO_MUCH: readonly (readonly [string, () => string, RegExp])[] = [
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

/** A file of 32 GB, which takes no room on the disk. */
export function makeHuge(path: string): void {
  const file = openSync(path, 'w');
  ftruncateSync(file, MANY * LIMITS.fileBytes);
  closeSync(file);
}
