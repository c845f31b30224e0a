import { expect, test } from 'vitest';
import { cutStates } from './power/cut-states';
import { powerCuts } from './power/power-cuts';
import type { Deed } from './power/recorded-disk';

const bytes = (text: string) => new TextEncoder().encode(text);
const before = new Map([['/f/work', bytes('former')]]);
const write = { kind: 'write', file: 1, bytes: bytes('next') } as const;

function found(deeds: readonly Deed[]): readonly string[] {
  const texts = [...cutStates(before, deeds)].map((state) => {
    const held = state.get('/f/work');
    return held === undefined ? 'gone' : new TextDecoder().decode(held);
  });
  return [...new Set(texts)].sort();
}

// The lessons of ext4's delayed allocation and of ALICE: without a flush a rename may come before the content.
test('A rename without a flush of the content may leave an empty, a cut off or a blank file', () => {
  const deeds: Deed[] = [
    { kind: 'create', path: '/f/t', file: 1 },
    write,
    { kind: 'rename', from: '/f/t', to: '/f/work' },
  ];
  expect(found(deeds)).toEqual(['', '\0\0\0\0', 'former', 'ne', 'next']);
});

test('With it the file is the former or the next, and after a flush of the folder only the next', () => {
  const deeds: Deed[] = [
    { kind: 'create', path: '/f/t', file: 1 },
    write,
    { kind: 'sync', file: 1 },
    { kind: 'rename', from: '/f/t', to: '/f/work' },
  ];
  expect(found(deeds)).toEqual(['former', 'next']);
  expect(found([...deeds, { kind: 'sync folder', path: '/f' }])).toEqual(['next']);
});

test('To remove the old file first may leave none', () => {
  const deeds: Deed[] = [
    { kind: 'create', path: '/f/t', file: 1 },
    write,
    { kind: 'sync', file: 1 },
    { kind: 'remove', path: '/f/work' },
    { kind: 'rename', from: '/f/t', to: '/f/work' },
  ];
  expect(found(deeds)).toContain('gone');
});

test('Whatever state a power cut leaves, the file is whole, and what was said to be saved is there', async () => {
  const { tried, failures } = await powerCuts(3);
  expect(failures).toEqual([]);
  expect(tried).toBeGreaterThan(100);
});
