import { describe, expect, it } from 'vitest';
import { freezeDeep } from '../../../boards/base/freeze';
import type { Build } from '../../../boards/document/build';
import { LIMITS } from '../../../boards/document/limits';
import { parseDocument } from '../../../boards/document/parse';
import type { Photo } from '../../../boards/document/photo';
import { openProblemWords } from '../../../boards/document/problem/problem-words';
import { serialize } from '../../../boards/document/serialize';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const PHOTO: Photo = {
  id: 'near',
  title: 'From near by',
  type: 'image/jpeg',
  widthPx: 800,
  heightPx: 600,
  data: '/9j/4A==',
  points: [],
};
const FOUR = [
  { pin: '1', xPx: 100, yPx: 100 },
  { pin: '5', xPx: 500, yPx: 110 },
  { pin: '10', xPx: 510, yPx: 210 },
  { pin: '6', xPx: 105, yPx: 205.25 },
];
const BARE: Build = freezeDeep(bench([posts('panel', grid(2, 5)), posts('fan', grid(1, 4))], []));

const withPhoto = done(BARE, { name: 'add-photo', args: { photo: PHOTO } });
const pointed = done(withPhoto, {
  name: 'point-photo',
  args: { photo: 'near', connector: 'panel', points: FOUR },
});

function pointsOf(build: Build) {
  return build.board.photos?.flatMap(({ points }) =>
    points.map(({ connector, pin }) => `${connector} ${pin}`),
  );
}

describe('a photo of the board', () => {
  it('is kept in the sheet and comes out of the file the same', () => {
    const opened = parseDocument(serialize(pointed));
    expect(opened).toEqual({ ok: true, value: pointed });
    expect(pointed.board.photos).toEqual([
      { ...PHOTO, points: FOUR.map((point) => ({ connector: 'panel', ...point })) },
    ]);
  });

  it('is taken out without a trace', () => {
    expect(done(pointed, { name: 'remove-photo', args: { photo: 'near' } })).toEqual(BARE);
  });

  it('is pointed at for one connector without moving the points of another', () => {
    const both = done(pointed, {
      name: 'point-photo',
      args: { photo: 'near', connector: 'fan', points: [{ pin: '2', xPx: 9, yPx: 9 }] },
    });
    expect(pointsOf(both)).toEqual(['panel 1', 'panel 5', 'panel 10', 'panel 6', 'fan 2']);
    const less = done(both, {
      name: 'point-photo',
      args: { photo: 'near', connector: 'panel', points: [] },
    });
    expect(pointsOf(less)).toEqual(['fan 2']);
  });

  it('of another kind, twice, or on a connector that is not there is refused in words', () => {
    expect(toldNo(withPhoto, { name: 'add-photo', args: { photo: PHOTO } })).toBe(
      'There is a photo “near” already. Choose another id.',
    );
    expect(toldNo(BARE, { name: 'remove-photo', args: { photo: 'near' } })).toBe(
      'There is no photo “near” on this board.',
    );
    const point = (over: object): Command => ({
      name: 'point-photo',
      args: { photo: 'near', connector: 'panel', points: FOUR, ...over },
    });
    expect(toldNo(withPhoto, point({ photo: 'far' }))).toBe('There is no photo “far” on this board.');
    expect(toldNo(withPhoto, point({ connector: 'aux' }))).toBe('There is no connector “aux” on this board.');
    expect(toldNo(withPhoto, point({ connector: 'fan' }))).toBe('FAN has no position\u00a05.');
    expect(toldNo(withPhoto, point({ points: [...FOUR, { pin: '1', xPx: 3, yPx: 3 }] }))).toBe(
      '“board.photos[0].points[4].pin” cannot be kept: it has to be a pin that is not at board.photos[0].points[0].pin already, and is “panel / 1”.',
    );
    expect(toldNo(withPhoto, point({ points: [{ pin: '1', xPx: 801, yPx: 3 }] }))).toBe(
      '“board.photos[0].points[0]” cannot be kept: it has to be a place in the picture of 800 × 600 pixels, and is 801, 3.',
    );
    let full = BARE;
    for (let at = 0; at < LIMITS.photos; at++)
      full = done(full, { name: 'add-photo', args: { photo: { ...PHOTO, id: `photo-${at}` } } });
    expect(toldNo(full, { name: 'add-photo', args: { photo: PHOTO } })).toBe(
      'A board can hold no more than 8\u00a0photos.',
    );
  });
});

describe('what was pointed at follows the connectors', () => {
  it('goes with a connector that is removed', () => {
    const without = done(pointed, { name: 'remove-connector', args: { connector: 'panel' } });
    expect(pointsOf(without)).toEqual([]);
    expect(parseDocument(serialize(without))).toEqual({ ok: true, value: without });
  });

  it('stays on its position when that is counted another way', () => {
    const zigzag = done(pointed, {
      name: 'number-connector',
      args: { connector: 'panel', numbering: { scheme: 'zig-zag', from: 'bottom-left' } },
    });
    // The corners: top left, top right, bottom right, bottom left.
    expect(pointsOf(zigzag)).toEqual(['panel 2', 'panel 10', 'panel 9', 'panel 1']);
    expect(zigzag.board.photos?.[0]?.points[0]).toMatchObject({ xPx: 100, yPx: 100 });
  });

  it('goes with a position that is no more', () => {
    const labels = [
      [null, 'A', 'B', 'C', 'D'],
      ['E', 'F', 'G', 'H', 'I'],
    ];
    const free = done(pointed, {
      name: 'number-connector',
      args: { connector: 'panel', numbering: { scheme: 'free', labels } },
    });
    expect(pointsOf(free)).toEqual(['panel D', 'panel I', 'panel E']);
  });

  it('comes with a board that is put in, as that board has it', () => {
    const other = { ...pointed.board, id: 'other', connectors: pointed.board.connectors.slice(0, 1) };
    const replaced = done(withPhoto, { name: 'replace-board', args: { board: other } });
    expect(pointsOf(replaced)).toHaveLength(4);
  });
});

describe('a file that points at what is not there', () => {
  it('is not opened, and every place is told', () => {
    const [photo = PHOTO] = pointed.board.photos ?? [];
    const wrong = {
      ...pointed.board,
      photos: [
        {
          ...photo,
          points: [
            { connector: 'panell', pin: '1', xPx: 1, yPx: 1 },
            { connector: 'panel', pin: '11', xPx: 1, yPx: 1 },
            { connector: 'panel', pin: '2', xPx: 1, yPx: 601 },
          ],
        },
        photo,
      ],
    };
    const opened = parseDocument(JSON.stringify(wrong));
    if (opened.ok) throw new Error('Opened');
    expect(openProblemWords(opened.problem, 'x.board.json').lines).toEqual([
      'photos[0].points[0].connector: expected a connector of the board that is there, found “panell”.',
      'photos[0].points[1].pin: expected a label that the grid of “panel” counts, found “11”.',
      'photos[0].points[2]: expected a place in the picture of 800 × 600 pixels, found 1, 601.',
      'photos[1].id: expected an id that is not at photos[0].id already, found “near”.',
    ]);
  });

  it('or has data that are no picture data is not opened either', () => {
    for (const data of ['', 'AAA', 'data:image/png;base64,AAAA', 'AA=A']) {
      const opened = parseDocument(JSON.stringify({ ...pointed.board, photos: [{ ...PHOTO, data }] }));
      expect(opened, data).toMatchObject({
        ok: false,
        problem: { code: 'invalid', fields: [{ path: 'photos[0].data' }] },
      });
    }
  });
});
