import fc from 'fast-check';
import { expect, test } from 'vitest';
import { roomWords } from '../../../boards/document/problem/room-words';

/** Bytes of a unit, by ISO 80000-13 (decimal prefixes). */
const BYTES = { kB: 1_000, MB: 1_000_000, GB: 1_000_000_000 } as const;

function bytesIn(said: string): number {
  const [, number, unit] = /^([\d.]+)\u00a0(kB|MB|GB)$/.exec(said) ?? [];
  return Number(number) * BYTES[unit as keyof typeof BYTES];
}

test.each([
  [
    { neededBytes: 20_480, freeBytes: 12_288 },
    { needed: '21\u00a0kB', free: '12\u00a0kB', missing: '9\u00a0kB' },
  ],
  [
    { neededBytes: 20_000, freeBytes: 12_000 },
    { needed: '20\u00a0kB', free: '12\u00a0kB', missing: '8\u00a0kB' },
  ],
  [
    { neededBytes: 8_192, freeBytes: 999 },
    { needed: '9\u00a0kB', free: null, missing: '9\u00a0kB' },
  ],
  [
    { neededBytes: 999_999, freeBytes: 0 },
    { needed: '1000\u00a0kB', free: null, missing: '1000\u00a0kB' },
  ],
  [
    { neededBytes: 1_000_000, freeBytes: 250_000 },
    { needed: '1.0\u00a0MB', free: '0.2\u00a0MB', missing: '0.8\u00a0MB' },
  ],
  [
    { neededBytes: 1_000_000_000, freeBytes: 999_999_999 },
    { needed: '1.0\u00a0GB', free: '0.9\u00a0GB', missing: '0.1\u00a0GB' },
  ],
])('Room is told in one unit, need rounded up and what is free down: %j', (room, words) => {
  expect(roomWords(room)).toEqual(words);
});

test('Whoever makes as much free as is said has made enough, and the sum on the screen comes out', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5e12 }),
      fc.double({ min: 0, max: 0.999, noNaN: true }),
      (need, part) => {
        const freeBytes = Math.floor(need * part);
        const { needed, free, missing } = roomWords({ neededBytes: need, freeBytes });
        expect(freeBytes + Math.round(bytesIn(missing))).toBeGreaterThanOrEqual(need);
        expect(bytesIn(needed) - (free === null ? 0 : bytesIn(free))).toBeCloseTo(bytesIn(missing), 0);
      },
    ),
  );
});
