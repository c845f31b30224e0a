import { expect, it } from 'vitest';
import { BenchWindow } from '../soak/undo/bench-window';
import { drawSequence, play } from '../soak/undo/sequence';
import { firstBuild } from '../soak/undo/undo-robot';
import { workplaceFor } from './workplace';

const workplace = workplaceFor('all tests');

/** The full size is the row R10 of `npm run soak`. */
const GESTURES = 20;
const SEEDS = [20_261_126, 20_261_127, 20_261_128];

let window: BenchWindow | undefined;

it.each(SEEDS)(
  'the gestures drawn from %i are undone and redone to the byte, and half of them opens as it was saved',
  async (seed) => {
    window ??= new BenchWindow(await workplace.open(), workplace.home);
    const played = await play({
      window,
      first: firstBuild(seed),
      drawn: drawSequence(seed, GESTURES),
      gestures: GESTURES,
      seed,
      // The workplace holds each test to there being none.
      complaints: () => [],
    });
    expect(played.failures, played.done.map(({ said }) => said).join('\n')).toEqual([]);
    expect(played.done).toHaveLength(GESTURES);
    expect(played.steps).toBeGreaterThan(GESTURES / 3);
  },
  300_000,
);
