import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { jsonMistake } from '../../../boards/document/problem/json-mistake';
import { openProblemWords } from '../../../boards/document/problem/problem-words';
import { serialize } from '../../../boards/document/serialize';
import { arbitraryBuild, arbitrarySeed } from '../arbitrary-build';
import { Dice } from '../dice';

const LETTERS = [
  '{',
  '}',
  '[',
  ']',
  '"',
  ',',
  ':',
  '\\',
  '-',
  '.',
  '0',
  'e',
  'n',
  '\n',
  '\u0000',
  '\uFEFF',
  ' ',
];
const VALUES: readonly unknown[] = [
  null,
  true,
  -1,
  0.5,
  1e9,
  '',
  'x',
  'panel',
  [],
  {},
  [[[]]],
  { __proto__: 1 },
];

/** The text with a few letters put in, left out, or said twice. */
function scratched(text: string, dice: Dice): string {
  let scratch = text;
  for (let times = 1 + dice.below(3); times > 0; times--) {
    const at = dice.below(scratch.length);
    const end = at + dice.below(6);
    const put = dice.oneIn(3) ? scratch.slice(at, end).repeat(2) : (dice.pick(LETTERS) ?? '');
    scratch = scratch.slice(0, at) + put + scratch.slice(dice.oneIn(2) ? at : end);
  }
  return scratch;
}

/** The data with one place, at any depth, put out, given another value or another name. */
function bent(document: unknown, dice: Dice): unknown {
  const root: unknown = structuredClone(document);
  let at = root;
  for (;;) {
    const key = dice.pick(Object.keys(Object(at)));
    if (key === undefined) return root;
    const inner: unknown = Reflect.get(Object(at), key);
    if (typeof inner === 'object' && !dice.oneIn(4)) {
      at = inner;
      continue;
    }
    if (dice.oneIn(3)) Reflect.deleteProperty(Object(at), key);
    else if (dice.oneIn(4)) Reflect.set(Object(at), `${key}x`, inner);
    else Reflect.set(Object(at), key, dice.pick(VALUES));
    return root;
  }
}

/** Opens a text; a refusal has to say something fit to be read, and a document has to be one. */
function opensOrSaysWhy(text: string): string {
  const result = parseDocument(text);
  if (result.ok) {
    expect(parseDocument(serialize(result.value))).toEqual(result);
    return 'opened';
  }
  const { title, lines, advice } = openProblemWords(result.problem, 'desk.build.json');
  expect(title).toContain('desk.build.json');
  expect(advice.length).toBeGreaterThan(20);
  expect(lines.length).toBeGreaterThan(0);
  for (const line of lines) {
    expect(line).not.toMatch(/undefined|NaN|\[object|[\p{Cc}\p{Cf}]/u);
    if (result.problem.code === 'invalid') expect(line).toMatch(/^\S.*: expected \S.*, found \S/);
  }
  return result.problem.code;
}

describe('a file that was damaged', () => {
  it('in its letters is opened or says why, and is never too much for the program', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(arbitraryBuild, arbitrarySeed, (build, seed) => {
        const outcome = opensOrSaysWhy(scratched(serialize(build), new Dice(seed)));
        seen.set(outcome, (seen.get(outcome) ?? 0) + 1);
      }),
      { seed: 4_711, numRuns: 1_500 },
    );
    for (const outcome of ['opened', 'not-json', 'invalid']) expect(seen.get(outcome)).toBeGreaterThan(50);
  });

  it('in its data is opened or says where', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(arbitraryBuild, arbitrarySeed, (build, seed) => {
        const outcome = opensOrSaysWhy(JSON.stringify(bent(build, new Dice(seed))));
        seen.set(outcome, (seen.get(outcome) ?? 0) + 1);
      }),
      { seed: 1_919, numRuns: 1_500 },
    );
    for (const outcome of ['opened', 'invalid']) expect(seen.get(outcome)).toBeGreaterThan(50);
  });
});

describe('the first mistake in a text', () => {
  it('is found in every text that the engine refuses, and in no other', () => {
    const text = fc.tuple(fc.json({ maxDepth: 4 }), arbitrarySeed).map(([json, seed]) => {
      const dice = new Dice(seed);
      return dice.oneIn(4) ? json : scratched(json, dice);
    });
    let refused = 0;
    fc.assert(
      fc.property(text, (given) => {
        const mistake = jsonMistake(given);
        if (accepts(given)) {
          expect(mistake).toBeUndefined();
          return;
        }
        refused += 1;
        expect(mistake?.detail).toMatch(/^\S.* was expected, and /);
        // What stands before the mistake is right: left alone, the text is only unfinished there.
        expect(jsonMistake(given.slice(0, mistake?.at))?.at ?? mistake?.at).toBe(mistake?.at);
      }),
      { seed: 8_259, numRuns: 5_000 },
    );
    expect(refused).toBeGreaterThan(1_000);
  });
});

function accepts(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
