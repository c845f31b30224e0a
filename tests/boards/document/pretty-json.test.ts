import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prettyJson } from '../../../boards/document/pretty-json';

const WIDTH = 100;
/** Without brackets, so that those of lists and objects are found in the text. */
const word = fc.stringMatching(/^[a-z ]{0,60}$/);
const { tree: value } = fc.letrec<{ tree: unknown }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 5 },
    word,
    fc.integer(),
    fc.boolean(),
    fc.array(tie('tree'), { maxLength: 6 }),
    fc.dictionary(word, tie('tree'), { maxKeys: 5 }),
  ),
}));

/** Every list and object that stands on several lines: how it would be in one, and how far in it begins. */
function broken(text: string): readonly { readonly line: string; readonly indent: number }[] {
  const lines = text.split('\n');
  const indentOf = (line: string) => line.length - line.trimStart().length;
  return lines.flatMap((line, at) => {
    if (!/[[{]$/.test(line)) return [];
    const indent = indentOf(line);
    const end = lines.findIndex((other, index) => index > at && indentOf(other) === indent);
    const joined = lines
      .slice(at, end + 1)
      .map((each) => each.trim())
      .join(' ');
    return [{ line: joined.replaceAll('[ ', '[').replaceAll(' ]', ']').replace(/,$/, ''), indent }];
  });
}

describe('JSON for people', () => {
  it('is the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (any) => {
        // By way of the language's own writer, which knows no minus nought.
        expect(JSON.stringify(JSON.parse(prettyJson(any)))).toBe(JSON.stringify(any));
      }),
      { seed: 100, numRuns: 500 },
    );
  });

  it('stands on several lines only where it does not fit in one of a hundred letters', () => {
    let several = 0;
    fc.assert(
      fc.property(value, (any) => {
        for (const { line, indent } of broken(prettyJson(any))) {
          several += 1;
          // A comma may follow anything but the whole.
          expect(indent + line.length + (indent === 0 ? 0 : 1)).toBeGreaterThan(WIDTH);
        }
      }),
      { seed: 100, numRuns: 1_000 },
    );
    expect(several).toBeGreaterThan(100);
  });

  it('is no longer than a hundred letters where it stands on one line', () => {
    fc.assert(
      fc.property(value, (any) => {
        for (const line of prettyJson(any).split('\n'))
          if (/[[{]/.test(line.slice(0, -1))) expect(line.length).toBeLessThanOrEqual(WIDTH);
      }),
      { seed: 101, numRuns: 1_000 },
    );
  });
});
