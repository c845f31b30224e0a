import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import type { Connector } from '../../../boards/document/connector';
import type { Grid } from '../../../boards/document/grid';
import { pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { PAPER_CAUTION } from '../../../boards/handover/caution-words';
import { MARGIN_MM, PAPER_IDS } from '../../../boards/handover/page/paper';
import { PLAIN_OPTIONS } from '../../../boards/handover/pinout/options';
import { pinoutPaper } from '../../../boards/handover/pinout/pinout-paper';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { arbitraryBoard } from '../arbitrary-build';
import { anywhere } from '../library/published';
import { ANY_LETTERS, boardWith, DAY, pinsOn, printed, seenOnPaper, textsOn, wordsOn } from './papers';

function header(rows: number, cols: number, changed: Partial<Connector> = {}): Connector {
  const grid: Grid = { rows, cols, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'bottom-left' } };
  const place = { xMm: 50, yMm: 50, turn: 0 as const };
  return { id: 'j1', print: 'J1', title: 'header', family: 'pin-header', grid, pins: [], place, ...changed };
}

describe('How a header lies on paper', () => {
  const panel = boardWith([anywhere('panel-2x5')]);
  const seen = (options: Parameters<typeof printed>[1]) => {
    const [page] = printed(panel, options).pages;
    return page ? seenOnPaper(pinsOn(page)) : [];
  };

  test('as the sheet has it: even pins above, odd pins below, pin 1 at the left', () => {
    expect(seen({})).toEqual(['2 4 6 8 10', '1 3 5 7 9']);
  });

  test('turned by half, it is read from the other side', () => {
    expect(seen({ turn: 180 })).toEqual(['9 7 5 3 1', '10 8 6 4 2']);
  });

  test('turned a quarter clockwise, what was at the left is at the top', () => {
    expect(seen({ turn: 90 })).toEqual(['1 2', '3 4', '5 6', '7 8', '9 10']);
  });

  test('mirrored, left and right are exchanged and the rows stay', () => {
    expect(seen({ mirrored: true })).toEqual(['10 8 6 4 2', '9 7 5 3 1']);
  });

  test('the words say it, and which way the top edge of the board lies', () => {
    const words = wordsOn(printed(panel, { turn: 90, mirrored: true })).join(' ');
    expect(words).toContain('Mirrored, then turned a quarter clockwise.');
    expect(words).toContain('The top edge of the board lies at the right.');
    expect(words).toContain('left and right are exchanged');
  });
});

describe('What stands on the pages', () => {
  test('a guess is marked in the drawing and in words, a gap by both, and another source is told', () => {
    const connector = header(1, 3, {
      pins: [
        { pin: '1', signal: 'case-open-input', name: 'CI', source: { kind: 'guessed' }, confidence: 0.4 },
        { pin: '2', missing: true },
        {
          pin: '3',
          signal: 'ground',
          source: { kind: 'manual', where: 'page 12' },
          confidence: 0.95,
          alternatives: [{ signal: 'case-open-input', source: { kind: 'print', where: 'beside J1' } }],
        },
      ],
    });
    const words = wordsOn(printed(boardWith([connector])));
    expect(words).toContain('?');
    expect(words).toContain('?\u00a0a guess');
    expect(words).toContain('no pin here');
    expect(words).toContain('Pin\u00a03: another source says case open (printed on the board\u00a0b).');
    expect(words).toContain('a\u00a0\u00a0manual: page 12');
  });

  test('the cautions and the number of the page stand at the foot of every page, and the day', () => {
    const paper = printed(boardWith(CONNECTOR_TYPES.map(({ id }) => ({ ...anywhere(id), id }))));
    expect(paper.pages.length).toBeGreaterThan(3);
    for (const [index, page] of paper.pages.entries()) {
      const words = textsOn(page).map(({ item }) => item.text);
      expect(words.join(' ')).toContain(PAPER_CAUTION);
      expect(words).toContain(`page\u00a0${index + 1} of\u00a0${paper.pages.length}`);
      expect(words.some((line) => line.includes(`printed ${DAY}`))).toBe(true);
    }
  });

  test('the list at the front names the page on which a connector is found', () => {
    const connectors = CONNECTOR_TYPES.map(({ id }) => ({ ...anywhere(id), id, print: `P-${id}` }));
    const paper = printed(boardWith(connectors));
    for (const { title, page } of paper.contents) {
      const there = paper.pages[page - 1];
      expect(there && textsOn(there).some(({ item }) => item.text === title)).toBe(true);
    }
    expect(paper.contents.map(({ title }) => title)).toEqual(connectors.map(({ print }) => print));
  });

  test('only the connectors that were chosen are drawn, in the order of the board', () => {
    const board = boardWith([header(1, 2, { id: 'a', print: 'A' }), header(1, 3, { id: 'b', print: 'B' })]);
    const paper = printed(board, { connectors: ['b'] });
    expect(paper.contents.map(({ title }) => title)).toEqual(['B']);
    expect(wordsOn(paper).join(' ')).toContain('1 of its 2\u00a0connectors');
  });

  test('an id that the board does not have is answered with the nearest that it has', () => {
    const board = boardWith([header(1, 2, { id: 'panel' })]);
    const paper = pinoutPaper(board, { ...PLAIN_OPTIONS, connectors: ['pannel'] }, DAY, ANY_LETTERS);
    expect(paper).toEqual({
      ok: false,
      problem: { code: 'no-such-connector', id: 'pannel', nearest: 'panel' },
    });
  });

  test('a board without connectors is a page that says so', () => {
    const paper = printed(boardWith([]));
    expect(paper.pages).toHaveLength(1);
    expect(wordsOn(paper).join(' ')).toContain('no connectors on this sheet yet');
  });

  test('more pages than are printed at once are refused by number', () => {
    const many = Array.from({ length: 900 }, (_, index) => header(2, 5, { id: `j${index}` }));
    const paper = pinoutPaper(boardWith(many), PLAIN_OPTIONS, DAY, ANY_LETTERS);
    expect(paper).toMatchObject({ ok: false, problem: { code: 'too-many-pages', limit: 200 } });
  });
});

describe('Large headers', () => {
  test.each([
    [64, 64],
    [2, 40],
    [1, 64],
    [64, 1],
    [2, 17],
  ])('%i by %i: every pin is drawn once, with its number, and none on another', (rows, cols) => {
    const connector = header(rows, cols);
    const paper = printed(boardWith([connector]));
    const drawn = paper.pages.flatMap((page) => [...pinsOn(page).keys()]);
    const all = gridIndex(connector.grid).positions.map(({ label }) => label);
    expect(drawn.toSorted()).toEqual(all.toSorted());
    for (const page of paper.pages) {
      const places = [...pinsOn(page).values()].map(({ x, y }) => `${Math.round(x)} ${Math.round(y)}`);
      expect(new Set(places).size).toBe(places.length);
    }
  });
});

test('On any board, in any turn, all text lies between the margins, and every pin is in the table with its name', () => {
  fc.assert(
    fc.property(
      arbitraryBoard,
      fc.constantFrom(...TURNS),
      fc.boolean(),
      fc.constantFrom(...PAPER_IDS),
      (board, turn, mirrored, paper) => {
        const made = printed(board, { turn, mirrored, paper });
        const { widthMm, heightMm } = made.size;
        for (const page of made.pages)
          for (const { item, at, scale } of textsOn(page)) {
            const { x, y } = at(item.at);
            const wide = item.widthMm * scale;
            const from = { start: 0, middle: 0.5, end: 1 }[item.anchor] * wide;
            const [left, right] = item.upright ? [x - item.sizeMm * scale, x] : [x - from, x - from + wide];
            const [top, bottom] = item.upright ? [y + from - wide, y + from] : [y - item.sizeMm * scale, y];
            const slack = MARGIN_MM * 0.6;
            const inside =
              left >= slack && right <= widthMm - slack && top >= slack && bottom <= heightMm - slack;
            expect(inside ? 'inside' : `${item.text} at ${left} ${top} ${right} ${bottom}`).toBe('inside');
          }
        const words = wordsOn(made).join('').replace(/\s/g, '');
        for (const connector of board.connectors)
          for (const { label } of gridIndex(connector.grid).positions) {
            const name = pinOf(connector, label).name ?? '';
            expect(words.includes(name.normalize('NFC').replace(/\s/g, ''))).toBe(true);
          }
      },
    ),
    { numRuns: 60 },
  );
});

test('Where a connector goes on on another page, its name stands above what goes on', () => {
  const paper = printed(boardWith([header(2, 40)]));
  const [, second] = paper.pages;
  expect(second && textsOn(second)[0]?.item.text).toBe('1\u00a0\u00a0J1, continued');
});

test('Of a large connector the pins of which nothing is known are counted, not listed', () => {
  const pins = [{ pin: '7', signal: 'ground' as const, name: 'GND' }];
  const words = wordsOn(printed(boardWith([header(20, 20, { pins })])));
  expect(words).toContain('Nothing is known yet of 399 pins: they are not in the table.');
  expect(words).toContain('GND');
});
