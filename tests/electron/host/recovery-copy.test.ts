import { describe, expect, test } from 'vitest';
import { decodeCopy, encodeCopy, type RecoveryNote } from '../../../electron/host/recovery-copy';
import { sha256 } from '../../../electron/host/stamp';

const NOTE: RecoveryNote = {
  owner: { pid: 7, started: '100' },
  serial: 3,
  path: '/bench/work.build.json',
  stamp: 'as-it-was',
  name: 'Bench three',
  savedMs: 5,
  changes: 2,
};
const TEXT = 'the work Ω\nin two lines\n';

/** A copy of which some fields of the head are others. */
function headed(fields: object, text = TEXT): string {
  const [head = '', ...body] = encodeCopy(NOTE, text).split('\n');
  return [JSON.stringify({ ...JSON.parse(head), ...fields }), ...body].join('\n');
}

test('A copy is one line of head and the work as it would be saved, and gives both back', () => {
  const content = encodeCopy(NOTE, TEXT);
  const [head = '', ...body] = content.split('\n');
  expect(body.join('\n')).toBe(TEXT);
  // UTF-8 (RFC 3629): an omega takes two bytes.
  expect(JSON.parse(head)).toEqual({
    format: 'leadwright/recovery',
    version: 1,
    ...NOTE,
    bytes: TEXT.length + 1,
    sha256: sha256(TEXT),
  });
  expect(decodeCopy(content)).toEqual({ header: JSON.parse(head), text: TEXT });
});

test('Work that was never saved, and work without a letter, are kept too', () => {
  expect(decodeCopy(headed({ path: null, stamp: null }))).toMatchObject({ header: { path: null } });
  expect(decodeCopy(encodeCopy(NOTE, ''))).toMatchObject({ text: '' });
});

describe('A copy is broken', () => {
  test.each([
    ['without a line of head', 'nothing'],
    ['with a head that is no JSON', '{\nwork'],
    ['with a head that is none of ours', '{}\nwork'],
    ['with a letter changed', encodeCopy(NOTE, TEXT).replace('two', 'six')],
    ['cut off', encodeCopy(NOTE, TEXT).slice(0, -1)],
    ['with something behind it', `${encodeCopy(NOTE, TEXT)}x`],
    ['whose length is not what its head says', headed({ bytes: 1 })],
    ['whose hash is cut short', headed({ sha256: sha256(TEXT).slice(1) })],
    ['with a serial below zero', headed({ serial: -1 })],
    ['with changes below zero', headed({ changes: -1 })],
    ['with a length below zero', headed({ bytes: -1 })],
    ['without a name', headed({ name: '' })],
    ['with a name longer than names of files are', headed({ name: 'n'.repeat(256) })],
    ['with a field that nobody knows', headed({ more: 1 })],
    ['of a version before the first', headed({ version: 0 })],
    ['of a newer version of something else', headed({ version: 2, format: 'other' })],
  ])('%s', (_, content) => {
    expect(decodeCopy(content)).toBe('broken');
  });
});

test('The bounds of a head are within it', () => {
  expect(decodeCopy(headed({ serial: 0, changes: 0, name: 'n'.repeat(255) }))).toMatchObject({ text: TEXT });
  expect(decodeCopy(headed({ name: 'n' }))).toMatchObject({ text: TEXT });
});

test('A copy of a newer program is told from a broken one, whatever else it holds', () => {
  expect(decodeCopy(headed({ version: 2 }))).toBe('newer');
  expect(decodeCopy('{"format":"leadwright/recovery","version":3,"more":[]}\n')).toBe('newer');
});
