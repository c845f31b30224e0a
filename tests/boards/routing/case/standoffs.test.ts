import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SIDES, type Side } from '../../../../boards/document/connector';
import type { FormFactor, Outline } from '../../../../boards/document/outline';
import type { Standoff, Tray } from '../../../../boards/document/tray';
import { formFactorEntry, formFactorOutline, resizedOutline } from '../../../../boards/library/form-factors';
import { STANDOFF_SOURCE, standoffWords } from '../../../../boards/routing/case/standoff-words';
import { type Standoffs, standoffsFor } from '../../../../boards/routing/case/standoffs';
import { PUBLISHED_HOLES_IN } from '../../fixtures/published-holes';

const CORNER = { xMm: 22, yMm: 14 };

/** The case stands: the rear is at the left, the corner that boards share at the top. */
function standoffAt(name: string, right: number, rear: number): Standoff {
  return { id: `at-${name}`, name, xMm: CORNER.xMm + rear * 25.4, yMm: CORNER.yMm + right * 25.4 };
}

const GRID = Object.entries(PUBLISHED_HOLES_IN).map(([name, [right, rear]]) => standoffAt(name, right, rear));

function trayWith(standoffs: Standoff[], over: Partial<Tray> = {}): Tray {
  const empty = { points: [], openings: [], bays: [], paths: [], cableKinds: [], cables: [] };
  return {
    widthMm: 420,
    heightMm: 440,
    ...empty,
    board: { ...CORNER, rear: 'left' },
    standoffs,
    ...over,
  };
}

function known(standoffs: Standoffs) {
  if (standoffs.kind === 'unknown') throw new Error(`Missing: ${standoffs.missing}`);
  return standoffs;
}

/** Letters by what their places are for the board. */
function uses(outline: Outline, tray: Tray = trayWith(GRID)): Readonly<Record<string, string>> {
  const said = known(standoffsFor(outline, tray));
  const letters = (kind: string) =>
    said.uses.flatMap((use) => (use.kind === kind ? [use.standoff.replace('at-', '')] : [])).join('');
  return {
    set: letters('set'),
    empty: letters('empty'),
    off: letters('off'),
    beside: letters('beside'),
    without: said.without.join('').toUpperCase(),
  };
}

/** The same tray, a quarter clockwise about its corner. */
function turned(tray: Tray, rear: Side): Tray {
  let { board, standoffs = [] } = tray;
  for (let quarter = 0; board !== undefined && board.rear !== rear; quarter++) {
    const next = SIDES[(SIDES.indexOf(board.rear) + 1) % 4] ?? 'top';
    board = { xMm: -board.yMm, yMm: board.xMm, rear: next };
    standoffs = standoffs.map((each) => ({ ...each, xMm: -each.yMm, yMm: each.xMm }));
    if (quarter > 4) throw new Error('Never there');
  }
  return { ...tray, ...(board && { board }), standoffs };
}

describe('the standoffs of a case with every published place', () => {
  it.each<[FormFactor, Record<string, string>]>([
    ['atx', { set: 'ACFGHJKLM', empty: 'B', off: '', beside: '', without: '' }],
    ['micro-atx', { set: 'BCFHJLM', empty: '', off: '', beside: 'AGK', without: 'RS' }],
    ['mini-itx', { set: 'CFHJ', empty: '', off: '', beside: 'ABGKLM', without: '' }],
  ])('stand under the holes of a board of size %s, whichever way it is drawn', (size, expected) => {
    for (const rear of SIDES) expect(uses(formFactorOutline(size, rear))).toEqual(expected);
  });

  it('leave the front row beside a board that is less deep than its size allows', () => {
    const full = formFactorOutline('atx', 'top');
    const shallow = { ...resizedOutline(full, { widthMm: 305, depthMm: 200 }) };
    const holes = shallow.holes?.filter(({ label = '' }) => !'KLM'.includes(label)) ?? [];
    expect(uses({ ...shallow, holes })).toMatchObject({ set: 'ACFGHJ', empty: 'B', beside: 'KLM' });
  });

  it('are the same for a tray that is turned together with its board', () => {
    const sizes = fc.constantFrom<FormFactor>('atx', 'micro-atx', 'mini-itx');
    fc.assert(
      fc.property(sizes, fc.constantFrom(...SIDES), fc.constantFrom(...SIDES), (size, rear, drawn) => {
        const upright = uses(formFactorOutline(size, 'top'));
        expect(uses(formFactorOutline(size, drawn), turned(trayWith(GRID), rear))).toEqual(upright);
      }),
    );
  });
});

describe('what is said of standoffs', () => {
  const outline = formFactorOutline('atx', 'left');

  const withB = (over: Partial<Standoff>) =>
    trayWith(GRID.map((each) => (each.name === 'B' ? { ...each, ...over } : each)));

  it('is to look whether a place that has no hole above it is empty, while nobody has', () => {
    const tray = withB({});
    const [first] = known(standoffsFor(outline, tray)).findings;
    expect(first).toEqual({ code: 'short', level: 'doubt', standoff: 'at-B', fixed: false });
    expect(first && standoffWords(first, outline, tray)).toBe(
      'No hole of the board lies over standoff\u00a0B. Look that nothing is in that place: metal there would touch the underside of the board and short it.',
    );
  });

  it('is a danger once a standoff was seen there, first of all, and nothing once the place was seen empty', () => {
    const tray = withB({ seen: 'set' });
    const [first] = known(standoffsFor(outline, tray)).findings;
    expect(first).toEqual({ code: 'short', level: 'danger', standoff: 'at-B', fixed: false });
    expect(first && standoffWords(first, outline, tray)).toBe(
      'No hole of the board lies over standoff\u00a0B: its metal would touch the underside and short it. Take the standoff out before the board goes in.',
    );
    expect(STANDOFF_SOURCE).toContain('page 10');
    const empty = known(standoffsFor(outline, withB({ seen: 'empty' })));
    expect(empty.findings).toEqual([]);
    expect(empty.uses).toContainEqual({ kind: 'empty', standoff: 'at-B' });
  });

  it('is that the board does not go in where such a one cannot be taken out', () => {
    const tray = withB({ fixed: true });
    const [first] = known(standoffsFor(outline, tray)).findings;
    expect(first).toMatchObject({ code: 'short', level: 'danger', fixed: true });
    expect(first && standoffWords(first, outline, tray)).toContain('this board does not go into this case');
  });

  it('is to measure again where one is near a hole and not under it', () => {
    const tray = trayWith(GRID.map((each) => (each.name === 'H' ? { ...each, xMm: each.xMm + 4 } : each)));
    const said = known(standoffsFor(outline, tray));
    const off = said.findings.find(({ code }) => code === 'off');
    expect(off).toMatchObject({ level: 'doubt', standoff: 'at-H', hole: 'h' });
    expect(off && standoffWords(off, outline, tray)).toMatch(
      /^Standoff\u00a0H is 4\.0\u00a0mm away from hole\u00a0H\./,
    );
    expect(said.without).toEqual(['h']);
    const bare = { ...tray, standoffs: tray.standoffs?.map((each) => ({ ...each, seen: 'empty' as const })) };
    expect(known(standoffsFor(outline, bare)).findings.map(({ code }) => code)).toEqual(['unsupported']);
  });

  it('is to look through a hole whose place no two accounts agree on, and to mind one with nothing below', () => {
    const micro = formFactorOutline('micro-atx', 'left');
    const tray = trayWith([...GRID, standoffAt('S', 8.25, 6.5)]);
    const unsure = formFactorEntry('micro-atx').doubtful.map((letter) => letter.toLowerCase());
    expect(
      known(standoffsFor(micro, tray, unsure)).findings.map((each) => standoffWords(each, micro, tray)),
    ).toEqual([
      'Published accounts do not agree on hole\u00a0S. Look through the hole of the board itself before standoff\u00a0S is screwed in.',
      'Hole\u00a0R has no standoff under it. The board may bend there when a plug is pushed on; hold it from below, and put nothing of metal there.',
    ]);
  });

  it('is what is missing, where nothing can be told', () => {
    const { board: _board, ...unplaced } = trayWith(GRID);
    const { holes: _holes, ...bare } = outline;
    expect(standoffsFor(bare, trayWith(GRID))).toEqual({ kind: 'unknown', missing: 'holes' });
    expect(standoffsFor(outline, trayWith([]))).toEqual({ kind: 'unknown', missing: 'standoffs' });
    expect(standoffsFor(outline, unplaced)).toEqual({ kind: 'unknown', missing: 'board-place' });
  });
});

describe('standoffs anywhere', () => {
  const place = fc.record({ xMm: fc.integer({ min: 0, max: 420 }), yMm: fc.integer({ min: 0, max: 440 }) });

  it('hold each hole at most once, and every hole is either held or left without', () => {
    const outline = formFactorOutline('atx', 'left');
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 40 }), (places) => {
        const standoffs = [...GRID, ...places.map((each, at) => ({ id: `free-${at}`, ...each }))];
        const { uses: all, without, findings } = known(standoffsFor(outline, trayWith(standoffs)));
        const held = all.flatMap((use) => (use.kind === 'set' ? [use.hole] : []));
        expect([...held, ...without].sort()).toEqual(outline.holes?.map(({ id }) => id).sort());
        const empty = all.flatMap((use) => (use.kind === 'empty' ? [use.standoff] : []));
        expect(findings.flatMap((each) => (each.code === 'short' ? [each.standoff] : []))).toEqual(empty);
      }),
    );
  });
});
