import { expect, test } from 'vitest';
import { COMMANDS } from '../../../boards/edit/commands';
import { anySequence } from './any-sequence';
import { MAKERS } from './command-makers';

/** On every push all that is promised are tried. */
const SEQUENCES = Number(process.env.LEADWRIGHT_SEQUENCES ?? 2_000);

test('Sequences are drawn from every command there is', () => {
  expect(Object.keys(MAKERS).sort()).toEqual(COMMANDS.map(({ name }) => name).sort());
});

test('Any sequence of commands keeps the build sound, saves and opens as the same, and is undone and redone to the byte', () => {
  const { tried, failures } = anySequence(SEQUENCES, 20_260_301);
  expect(failures).toEqual([]);
  expect(tried).toBe(SEQUENCES);
}, 1_800_000);
