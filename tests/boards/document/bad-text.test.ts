import { describe, expect, it } from 'vitest';
import { BuildZ } from '../../../boards/document/build';
import { serialize } from '../../../boards/document/serialize';
import { faults, refused, soundBuild, spoilt, told } from './refused';

const NBSP = '\u00a0';

describe('a file that is no document of ours', () => {
  it('is told to be empty, also when it only has blanks or a byte order mark', () => {
    for (const text of ['', ' \n\t ', '\uFEFF', '\uFEFF\r\n']) {
      expect(told(text)).toEqual({
        title: '“desk.build.json” cannot be opened',
        lines: ['There is nothing in it.'],
        advice: 'Open an earlier copy of it, or begin a new build.',
      });
    }
  });

  it('is opened with a byte order mark before it, but not with one inside', () => {
    const text = serialize(soundBuild());
    expect(() => refused(`\uFEFF${text}`)).toThrow('It was opened');
    expect(refused(`\uFEFF\uFEFF${text}`)).toMatchObject({ code: 'not-json', line: 1, column: 1 });
  });

  it('is told where it stops being JSON, and what should stand there', () => {
    const places: readonly (readonly [string, number, number, string])[] = [
      ['parts list\n1 lead', 1, 1, 'a value was expected, and “p” stands there'],
      ['{\n  "id": "desk"\n  "name": "Desk"\n}', 3, 3, 'a comma or “}” was expected, and “"” stands there'],
      ['{\n  "id": "desk",\n}', 3, 1, 'a name in double quotes was expected, and “}” stands there'],
      ['{ id: 1 }', 1, 3, 'a name in double quotes was expected, and “i” stands there'],
      ['{ "id" 1 }', 1, 8, 'a colon was expected, and “1” stands there'],
      ['[1, 2', 1, 6, 'a comma or “]” was expected, and the text ends'],
      ['["desk', 1, 7, 'a closing quote was expected, and the text ends'],
      ['["desk\nlamp"]', 1, 7, 'a closing quote in the same line was expected, and “\\u000a” stands there'],
      [
        '["a\\qb"]',
        1,
        4,
        'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000 was expected, and “\\” stands there',
      ],
      ['{ "mm": 2.54. }', 1, 13, 'a comma or “}” was expected, and “.” stands there'],
      ['{ "mm": .5 }', 1, 9, 'a value was expected, and “.” stands there'],
      ['{ "mm": NaN }', 1, 9, 'a value was expected, and “N” stands there'],
      ['{} {}', 1, 4, 'the end of the file was expected, and “{” stands there'],
    ];
    for (const [text, line, column, detail] of places) {
      expect(refused(text)).toEqual({ code: 'not-json', line, column, detail });
      expect(told(text)).toEqual({
        title: '“desk.build.json” cannot be opened',
        lines: [`It is not JSON from line${NBSP}${line}, column${NBSP}${column} on: ${detail}.`],
        advice: 'Correct that line in a text editor, or open an earlier copy.',
      });
    }
  });

  it('is told to be of another format, or of none', () => {
    const found: readonly (readonly [string, string])[] = [
      ['{}', 'no “format”'],
      ['{ "format": "drawing" }', 'the format “drawing”'],
      ['{ "format": 3 }', 'the format 3'],
      ['{ "format": "Leadwright/build" }', 'the format “Leadwright/build”'],
      ['[1, 2, 3]', 'a list of 3'],
      ['"leadwright/build"', '“leadwright/build”'],
      ['null', 'null'],
    ];
    for (const [text, words] of found) {
      expect(told(text)).toEqual({
        title: '“desk.build.json” cannot be opened',
        lines: [
          `Expected “format” to be leadwright/build, leadwright/board or leadwright/case, found ${words}.`,
        ],
        advice: 'Choose a build, a board sheet or a case sheet.',
      });
    }
  });

  it('is told to be newer, by number, before anything else of it is looked at', () => {
    expect(told('{ "format": "leadwright/build", "version": 7, "holograms": [] }')).toEqual({
      title: '“desk.build.json” cannot be opened',
      lines: [
        `It has version${NBSP}7 of “leadwright/build”, and this Leadwright reads up to version${NBSP}1.`,
      ],
      advice: 'Open it with a newer Leadwright. The file was not changed.',
    });
  });

  it('is told when a sheet inside it is newer', () => {
    const problem = refused(JSON.stringify(spoilt('board.version', 2)));
    expect(problem).toEqual({ code: 'newer', format: 'leadwright/board', version: 2, known: 1 });
  });

  it('is told which version was expected when it names none', () => {
    expect(faults(spoilt('version', undefined))).toEqual(['version: expected the number 1, found nothing']);
    expect(faults(spoilt('version', 0))).toEqual(['version: expected the number 1, found 0']);
    expect(faults(spoilt('version', 1.5))).toEqual(['version: expected the number 1, found 1.5']);
    expect(faults(spoilt('case.version', '1'))).toEqual(['case.version: expected the number 1, found “1”']);
  });
});

describe('a file made to bring the program down', () => {
  it('is refused by its length alone when it is 50 MB', () => {
    expect(told('x'.repeat(50 * 1024 * 1024))).toEqual({
      title: '“desk.build.json” cannot be opened',
      lines: [`It is 50${NBSP}MB long, and a file can be at most 32${NBSP}MB.`],
      advice: 'Check that it is the file you meant.',
    });
  });

  it('is refused by its brackets alone when it is 100,000 levels deep', () => {
    const deep = `{\n "format": "leadwright/build",\n "version": 1,\n "board": ${'['.repeat(100_000)}`;
    expect(told(deep)).toEqual({
      title: '“desk.build.json” cannot be opened',
      lines: [`From line${NBSP}4 on, its brackets stand more than 64${NBSP}levels deep.`],
      advice: 'No build, board sheet or case sheet is like that: check that it is the file you meant.',
    });
  });

  it('is not taken for deep when brackets stand in a text', () => {
    const build = { ...soundBuild(), notes: `${'['.repeat(1_000)}\\"${'{'.repeat(1_000)}"` };
    expect(() => refused(serialize(build))).toThrow('It was opened');
  });

  it('is refused by the length of its list when it has a million leads', () => {
    const text = JSON.stringify(soundBuild()).replace('"leads":[', `"leads":[${'{},'.repeat(999_998)}`);
    expect(refused(text)).toEqual({
      code: 'invalid',
      fields: [
        { path: 'case.leads', expected: 'a list of at most 2,000 entries', found: 'a list of 1,000,000' },
      ],
      more: 0,
    });
    expect(told(text).lines).toEqual([
      'case.leads: expected a list of at most 2,000 entries, found a list of 1,000,000.',
    ]);
  });

  it('shows twenty faults of a million and stops counting at a thousand', () => {
    const lead = { wires: Array.from({ length: 1_000 }, () => ({})) };
    const text = JSON.stringify(
      spoilt(
        'case.leads',
        Array.from({ length: 1_000 }, () => lead),
      ),
    );
    const problem = refused(text);
    expect(problem).toMatchObject({ code: 'invalid', more: 980 });
    expect(problem.code === 'invalid' && problem.fields.length).toBe(20);
    expect(told(text).lines.at(-1)).toBe(`And at least 980${NBSP}more.`);
  });

  it('cannot bring in a __proto__: it is an unknown name like any other, wherever it stands', () => {
    const sound = JSON.stringify(soundBuild());
    const evil = '"__proto__":{"polluted":true},';
    const only = 'no such name here: only';
    expect(refused(sound.replace('{"format"', `{${evil}"format"`))).toMatchObject({
      fields: [
        {
          path: '__proto__',
          expected: `${only} ${Object.keys(BuildZ.shape).join(', ')}`,
          found: '“__proto__”',
        },
      ],
    });
    expect(refused(sound.replace('{"rows"', `{${evil}"rows"`))).toMatchObject({
      fields: [{ path: 'board.connectors[0].grid.__proto__', found: '“__proto__”' }],
    });
    expect(refused('{"__proto__":{"format":"leadwright/build","version":1}}')).toEqual({
      code: 'not-ours',
      found: 'no “format”',
    });
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });

  it('cannot bring in a number beyond all bounds', () => {
    const text = JSON.stringify(soundBuild()).replace('"pitchMm":2.54', '"pitchMm":1e999');
    expect(told(text).lines).toEqual([
      'board.connectors[0].grid.pitchMm: expected a finite number above 0, at most 50 (millimetres between neighbouring positions), found a number too large to hold.',
    ]);
    const whole = JSON.stringify(soundBuild()).replace('"rows":2', '"rows":-1e999');
    expect(told(whole).lines).toEqual([
      'board.connectors[0].grid.rows: expected a whole number from 1 to 64, found a number too large to hold.',
    ]);
  });

  it('cannot hide anything in the words about it', () => {
    const name = `a\u202eb\u0000${'c'.repeat(300)}`;
    const [line] = told(JSON.stringify(spoilt('name', name))).lines;
    expect(line).toBe(
      `name: expected one line of 1 to 200 plain characters, found “a\\u202eb\\u0000${'c'.repeat(36)}…” (304 characters).`,
    );
  });
});
