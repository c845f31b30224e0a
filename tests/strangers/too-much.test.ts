import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildCommand, leadwright } from '../electron/cli/run-cli';
import { scratchFolder } from '../electron/scratch';
import { makeHuge, SMALL_HEAP, TOO_MUCH } from './too-much';

beforeAll(buildCommand, 60_000);

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
    makeHuge(path);
    const { code, err } = await leadwright(['check', path], { nodeOptions: SMALL_HEAP });
    expect(err).toMatch(/at most 32\sMB/);
    expect(code).toBe(2);
  });
});
