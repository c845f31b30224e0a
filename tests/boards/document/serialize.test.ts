import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { prettyJson } from '../../../boards/document/pretty-json';
import { serialize } from '../../../boards/document/serialize';
import { soundBuild } from './refused';

describe('a saved file', () => {
  it('reads as a person would write it', () => {
    const { board } = soundBuild();
    expect(serialize(board)).toBe(`{
  "format": "leadwright/board",
  "version": 1,
  "id": "board",
  "name": "Board",
  "outline": { "widthMm": 200, "depthMm": 200 },
  "connectors": [
    {
      "id": "panel",
      "print": "PANEL",
      "title": "panel",
      "family": "pin-header",
      "grid": {
        "rows": 2,
        "cols": 5,
        "pitchMm": 2.54,
        "numbering": { "scheme": "by-row", "from": "top-left" }
      },
      "pins": [
        { "pin": "1", "signal": "drive-led-feed" },
        { "pin": "2", "signal": "power-led-feed" },
        { "pin": "3", "signal": "drive-led-sink" }
      ],
      "place": { "xMm": 0, "yMm": 0, "turn": 0 }
    }
  ]
}
`);
  });

  it('names its schema first, where it named one before', () => {
    const board = { ...soundBuild().board, $schema: '../schemas/board.schema.json' };
    const text = serialize(board);
    expect(text.split('\n').slice(0, 3)).toEqual([
      '{',
      '  "$schema": "../schemas/board.schema.json",',
      '  "format": "leadwright/board",',
    ]);
    expect(parseDocument(text)).toEqual({ ok: true, value: board });
  });

  it('does not depend on the order in which the build was put together', () => {
    const build = soundBuild();
    const backwards = Object.fromEntries(Object.entries(build).reverse());
    const opened = parseDocument(JSON.stringify(backwards));
    expect(opened.ok && serialize(opened.value)).toBe(serialize(build));
  });

  it('leaves out what is there and says nothing', () => {
    expect(prettyJson({ name: 'Desk', notes: undefined })).toBe('{ "name": "Desk" }');
  });

  it('is never written from a build that could not be opened again', () => {
    expect(() => serialize({ ...soundBuild(), name: '' })).toThrow();
  });
});

describe('a line of a saved file', () => {
  it('holds what fits in a hundred letters with its name and its comma, and no more', () => {
    const fits = (letters: number) => prettyJson({ first: ['x'.repeat(letters)], second: 0 }).split('\n');
    const fixed = '  "first": [""],'.length;
    expect(fits(100 - fixed)[1]).toHaveLength(100);
    expect(fits(101 - fixed)[1]).toBe('  "first": [');
  });

  it('has a list or an object that is empty as two brackets', () => {
    expect(prettyJson({ a: [], b: {} })).toBe('{ "a": [], "b": {} }');
  });

  it.each([
    [{ a: [1, [2, { b: null }]], 'c"d': 'e\nf', g: true }],
    [Array.from({ length: 40 }, (_, n) => ({ n, of: [n, n + 1] }))],
    ['text'],
    [-0.5],
  ])('reads back as what was written: %j', (value) => {
    expect(JSON.parse(prettyJson(value))).toEqual(value);
  });
});
