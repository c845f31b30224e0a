import { describe, expect, it } from 'vitest';
import { readHead } from '../../boards/pinout/photo/picture-head';
import { PICTURE_LIMITS } from '../../boards/pinout/photo/picture-problem';
import { pictureProblemWords } from '../../boards/pinout/photo/picture-words';
import { HARMFUL_PICTURES } from './harmful-pictures';

describe('pictures that were made to do harm', () => {
  it('are of two hundred kinds', () => {
    expect(HARMFUL_PICTURES.length).toBeGreaterThanOrEqual(200);
  });

  it('are never taken at more than may be decoded, and told in words where they are not taken', () => {
    for (const [what, bytes] of HARMFUL_PICTURES) {
      const read = readHead(bytes);
      if (read.ok) {
        const { widthPx, heightPx, type } = read.value;
        expect(widthPx * heightPx, what).toBeLessThanOrEqual(PICTURE_LIMITS.pixels);
        expect(Math.max(widthPx, heightPx), what).toBeLessThanOrEqual(PICTURE_LIMITS.sidePx);
        expect(['image/png', 'image/jpeg', 'image/webp'], what).toContain(type);
        continue;
      }
      const { title, lines, advice } = pictureProblemWords(read.problem, 'board.png');
      expect([title, ...lines, advice].join(' '), what).toMatch(/board\.png.* .{20}/);
    }
  });

  it('are not unpacked to be looked at: what a bomb holds never comes to be in memory', () => {
    const bombs = HARMFUL_PICTURES.filter(([, bytes]) => bytes.length > 90_000 && bytes.length < 1_000_000);
    expect(bombs.length).toBeGreaterThanOrEqual(3);
    const before = process.memoryUsage().arrayBuffers;
    for (const [, bytes] of bombs) readHead(bytes);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20 * 1024 * 1024);
  });
});
