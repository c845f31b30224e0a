import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Dice } from '../boards/dice';
import { bentText } from './damage/tree';
import { guided } from './guided.mjs';
import { judge } from './judges';
import { mutants } from './mutants.mjs';
import { KINDS } from './originals';

/** `npm run trust` and `npm run soak` ask for more, and for other seeds. */
const COUNT = Number(process.env.LEADWRIGHT_MUTANTS ?? 100_000);
const SEED = Number(process.env.LEADWRIGHT_MUTANT_SEED ?? 1);

describe('files from strangers', () => {
  it('damaged in any way are opened or refused in words, none hangs, and what was opened can be worked with', async () => {
    const { outcomes, failures, hung, used } = await mutants({ count: COUNT, seed: SEED });
    expect(failures.map(({ number, kind, reason }) => `${number} ${kind}: ${reason}`)).toEqual([]);
    expect(hung).toBeNull();
    expect(Object.keys(outcomes).sort()).toEqual([...KINDS].sort());
    const many = Object.values(outcomes).flatMap((ofKind) => Object.values(ofKind));
    expect(many.reduce((sum, each) => sum + each, 0)).toBe(COUNT);
    // The damage is of all degrees: some of every kind is still taken, and some is not.
    for (const [kind, ofKind] of Object.entries(outcomes))
      expect(Object.keys(ofKind).length, kind).toBeGreaterThan(1);
    const documents = ['build', 'board', 'case'].map((kind) => outcomes[kind] ?? {});
    for (const outcome of ['opened', 'invalid', 'not-json', 'not-text', 'not-ours', 'newer', 'too-deep']) {
      const some = documents.reduce((sum, ofKind) => sum + (ofKind[outcome] ?? 0), 0);
      expect(some, outcome).toBeGreaterThan(COUNT / 10_000);
    }
    expect(used).toBeGreaterThan(COUNT / 400);
  }, 3_600_000);

  it('led by the places of the code that they reach get further than sound ones, and still do no harm', async () => {
    const { failures, hung, kept, reachedAtFirst, reached } = await guided({ seed: SEED, minutes: 0.1 });
    expect(failures.map(({ number, kind, reason }) => `${number} ${kind}: ${reason}`)).toEqual([]);
    expect(hung).toBeNull();
    expect(kept).not.toEqual([]);
    expect(reached).toBeGreaterThan(reachedAtFirst);
  }, 600_000);
});

describe('the damage itself', () => {
  it('is the same of a seed, whatever was damaged before: so a failure is met again by its number', () => {
    // Small, so that damage falls into what damage put there.
    const text = '{"seats":[{"at":[1,2]}]}';
    const bent = () => Array.from({ length: 4_000 }, (_, seed) => bentText(text, text, new Dice(seed)));
    expect(bent()).toEqual(bent());
  });
});

/** What failed once. Each was written down by `mutants.mjs` in out/strangers, and moved here when it was mended. */
describe('a file that the program failed at before', () => {
  const folder = join(import.meta.dirname, 'kept');
  it.each(readdirSync(folder))('%s', async (name) => {
    const kind = KINDS.find((each) => name.startsWith(`${each.replaceAll(' ', '-')}.`));
    if (kind === undefined) throw new Error(`${name} does not begin with a kind`);
    await expect(judge(kind, readFileSync(join(folder, name)), true)).resolves.toMatch(/^[a-z-]+$/);
  });
});
