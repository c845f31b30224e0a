import { describe, expect, it } from 'vitest';
import { faults, spoilt } from './refused';

describe('a field that is not as it should be', () => {
  it.each([
    ['case.leads.1.plugs.0.grid.rows', 0, 'a whole number from 1 to 64', '0'],
    ['case.leads.1.plugs.0.grid.rows', 2.5, 'a whole number from 1 to 64', '2.5'],
    ['case.leads.1.plugs.0.grid.rows', 'two', 'a whole number from 1 to 64', '“two”'],
    ['case.leads.1.plugs.0.grid.rows', undefined, 'a whole number from 1 to 64', 'nothing'],
    ['case.leads.0.name', '', 'one line of 1 to 200 plain characters', 'an empty text'],
    ['case.leads.0.name', ['x'], 'one line of 1 to 200 plain characters', 'a list of 1'],
    ['case.leads.0', null, 'an object in braces', 'null'],
    ['case.leads', {}, 'a list of at most 2,000 entries', 'an object'],
    ['case.leads.0.plugs', [], 'a list of 1 to 64 entries', 'an empty list'],
    ['case.leads.0.name', 'two\nlines', 'one line of 1 to 200 plain characters', '“two\\u000alines”'],
    ['case.leads.0.name', 'a\u202eb', 'one line of 1 to 200 plain characters', '“a\\u202eb”'],
    ['case.leads.0.plugs.0.print', '\u001b[2J', 'one line of at most 200 plain characters', '“\\u001b[2J”'],
    ['case.leads.0.notes', 'bell \u0007', 'a text of at most 10,000 plain characters', '“bell \\u0007”'],
    ['view.mirrored', 'yes', 'true or false', '“yes”'],
    ['view.turn', 45, 'one of 0, 90, 180, 270', '45'],
    ['seats.0.at', [1], 'a list of 2 entries', 'a list of 1'],
    ['board.outline.widthMm', 1_200, 'a finite number above 0, at most 1,000', '1200'],
    ['board.format', 'leadwright/case', 'leadwright/board', '“leadwright/case”'],
    [
      'case.leads.0.id',
      'Power Switch',
      'an id: up to 64 lower-case letters and digits, joined by single hyphens',
      '“Power Switch”',
    ],
    [
      'board.connectors.0.pins.0.pin',
      'pin one',
      'a pin or hole label: up to eight letters, digits, + or -',
      '“pin one”',
    ],
    ['case.leads.0.wires.0.from', 'plug', 'a wire end: "plug.hole" or "part.terminal"', '“plug”'],
  ])('%s = %j', (path, value, expected, found) => {
    const shown = path.replaceAll(/\.(\d+)/g, '[$1]');
    expect(faults(spoilt(path, value))).toEqual([`${shown}: expected ${expected}, found ${found}`]);
  });

  it('is answered with the word that was probably meant', () => {
    expect(faults(spoilt('case.leads.0.wires.0.colour', 'gray'))).toEqual([
      'case.leads[0].wires[0].colour: expected one of black, brown, red, orange, yellow, green, blue, violet, grey, white, pink, turquoise; perhaps “grey” is meant, found “gray”',
    ]);
    expect(faults(spoilt('board.connectors.0.pins.0.signal', 'drive-led-fed'))[0]).toMatch(
      /^board\.connectors\[0\]\.pins\[0\]\.signal: expected one of \d+ words: .+ and so on; perhaps “drive-led-feed” is meant, found “drive-led-fed”$/,
    );
    expect(faults(spoilt('board.connectors.0.grid.numbering.scheme', 'zigzag'))).toEqual([
      'board.connectors[0].grid.numbering.scheme: expected one of zig-zag, by-row, by-column, u-shaped, free; perhaps “zig-zag” is meant, found “zigzag”',
    ]);
  });

  it('is answered with the name that was probably meant, or with all there are', () => {
    expect(faults(spoilt('case.leads.0.nmae', 'x'))).toEqual([
      'case.leads[0].nmae: expected no such name here: perhaps “name” is meant, found “nmae”',
    ]);
    expect(faults(spoilt('view.zoom factor', 2))).toEqual([
      'view.“zoom factor”: expected no such name here: only turn, mirrored, found “zoom factor”',
    ]);
  });

  it('is told together with all others, in the order of the file', () => {
    const build = spoilt('name', 5);
    Reflect.set(Object(build), 'seats', [{ lead: 'switch', plug: 'plug', connector: 'panel', at: [0, 'x'] }]);
    expect(faults(build)).toEqual([
      'name: expected one line of 1 to 200 plain characters, found 5',
      'seats[0].at[1]: expected a whole number from -64 to 128, found “x”',
      'seats[0].turn: expected one of 0, 90, 180, 270, found nothing',
    ]);
  });
});
