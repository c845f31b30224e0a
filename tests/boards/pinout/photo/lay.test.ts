import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Grid } from '../../../../boards/document/grid';
import { gridIndex } from '../../../../boards/document/numbering';
import { accuracyMm, type Lay, layOf, pinSpots } from '../../../../boards/pinout/photo/lay';
import { doubtWords, layProblemWords } from '../../../../boards/pinout/photo/lay-problem';
import { mapped, type PlanePoint } from '../../../../boards/pinout/photo/matrix3';
import { cellPlace, type PinPoint, pinsToPointAt } from '../../../../boards/pinout/photo/pointed';
import { arbitrarySeed } from '../../arbitrary-build';
import { Dice } from '../../dice';
import { anyCamera, between, type Camera, middleOf, shaken, TYPICAL, truePoints } from './camera';

function header(rows: number, cols: number, pitchMm = 2.54): Grid {
  return { rows, cols, pitchMm, numbering: { scheme: 'zig-zag', from: 'top-left' } };
}

const PANEL = header(2, 5);
const PICTURE = { widthPx: TYPICAL.widthPx, heightPx: TYPICAL.heightPx };

function pointsFor(grid: Grid, camera: Camera, pins: readonly string[]): readonly PinPoint[] {
  const all = truePoints(grid, camera);
  return pins.map((pin) => all.find((point) => point.pin === pin) ?? { pin, xPx: -1, yPx: -1 });
}

function laid(grid: Grid, points: readonly PinPoint[]): Lay {
  const lay = layOf(grid, points, PICTURE);
  if (!lay.ok) throw new Error(JSON.stringify(lay.problem));
  return lay.value;
}

/** How far each pin of a lay is from where the camera sees it, measured in the connector's plane, in millimetres. */
function errorsMm(grid: Grid, lay: Lay, camera: Camera): readonly number[] {
  const truth = truePoints(grid, camera);
  return truth.map(({ pin, xPx, yPx }) => {
    const there = mapped(lay.toMm, { x: xPx, y: yPx });
    const place: PlanePoint = cellPlace(grid, gridIndex(grid).cellOf(pin) ?? [0, 0]);
    return Math.hypot(there.x - place.x, there.y - place.y);
  });
}

function told(grid: Grid, points: readonly PinPoint[]): string {
  const lay = layOf(grid, points, PICTURE);
  if (!lay.ok) return layProblemWords(lay.problem).replaceAll('\u00a0', ' ');
  return lay.value.doubt === null ? 'laid' : doubtWords(lay.value.doubt).replaceAll('\u00a0', ' ');
}

function moved(points: readonly PinPoint[], pin: string, dx: number, dy: number): readonly PinPoint[] {
  return points.map((point) =>
    point.pin === pin ? { pin, xPx: point.xPx + dx, yPx: point.yPx + dy } : point,
  );
}

describe('the pins that are asked for', () => {
  it('are the corners first, then pins between them, and in the end all', () => {
    expect(pinsToPointAt(PANEL)).toEqual(['1', '9', '10', '2', '5', '6', '3', '4', '7', '8']);
    expect(pinsToPointAt(header(1, 4))).toEqual(['1', '4', '3', '2']);
  });

  it('leave out the key, and take the pin beside it', () => {
    expect(pinsToPointAt(PANEL, new Set(['10'])).slice(0, 4)).toEqual(['1', '9', '8', '2']);
  });

  it('are all pins of any grid, each once', () => {
    const side = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(side, side, (rows, cols) => {
        const grid = header(rows, cols);
        const labels = gridIndex(grid).positions.map(({ label }) => label);
        expect(pinsToPointAt(grid).toSorted()).toEqual(labels.toSorted());
      }),
    );
  });
});

describe('a grid laid over a photo', () => {
  it('by four pins pointed at exactly lies on every pin', () => {
    const lay = laid(PANEL, pointsFor(PANEL, TYPICAL, ['1', '2', '9', '10']));
    for (const [at, spot] of pinSpots(PANEL, lay).entries()) {
      const true_ = truePoints(PANEL, TYPICAL)[at];
      expect(spot.pin).toBe(true_?.pin);
      expect(Math.hypot(spot.xPx - (true_?.xPx ?? 0), spot.yPx - (true_?.yPx ?? 0))).toBeLessThan(1e-6);
    }
    expect(lay).toMatchObject({ doubt: null, mirrored: false, oneRow: false });
  });

  it('is the same whatever the order of the points', () => {
    fc.assert(
      fc.property(
        arbitrarySeed,
        fc.shuffledSubarray(['1', '2', '3', '5', '6', '8', '9', '10'], { minLength: 8 }),
        (seed, order) => {
          const points = shaken(pointsFor(PANEL, TYPICAL, order), new Dice(seed), 0.5);
          const [one, other] = [
            laid(PANEL, points),
            laid(
              PANEL,
              points.toSorted((a, b) => a.xPx - b.xPx),
            ),
          ];
          for (const [at, spot] of pinSpots(PANEL, one).entries()) {
            const twin = pinSpots(PANEL, other)[at];
            expect(spot.xPx).toBeCloseTo(twin?.xPx ?? 0, 5);
            expect(spot.yPx).toBeCloseTo(twin?.yPx ?? 0, 5);
          }
        },
      ),
      { seed: 20_260_406 },
    );
  });

  it('says that the photo shows it as in a mirror: taken from behind, or counted from another corner', () => {
    const points = pointsFor(PANEL, TYPICAL, ['1', '2', '9', '10']).map(({ pin, xPx, yPx }) => ({
      pin,
      xPx: PICTURE.widthPx - xPx,
      yPx,
    }));
    expect(laid(PANEL, points)).toMatchObject({ mirrored: true, doubt: null });
  });

  it('of one row is held by three pins and follows the perspective along the row', () => {
    for (const grid of [header(1, 4), header(9, 1)]) {
      for (let seed = 1; seed <= 200; seed++) {
        const camera = { ...anyCamera(new Dice(seed)), awayMm: 150 };
        const pins = pinsToPointAt(grid).slice(0, 3);
        const lay = laid(grid, pointsFor(grid, camera, pins));
        expect(Math.max(...errorsMm(grid, lay, camera))).toBeLessThan(1e-6);
        expect(lay.oneRow).toBe(true);
      }
    }
  });
});

const PHOTOS = 400;

describe('accuracy, when every point is off by 0.5 px', () => {
  /** Median and 95th percentile of the distance of a pin from the truth, in millimetres, over many photos. */
  function spread(grid: Grid, pins: number, camera: (dice: Dice) => Camera) {
    const errors: number[] = [];
    let within = 0;
    for (let seed = 1; seed <= PHOTOS; seed++) {
      const dice = new Dice(seed);
      const held = camera(dice);
      const points = shaken(pointsFor(grid, held, pinsToPointAt(grid).slice(0, pins)), dice, 0.5);
      const lay = laid(grid, points);
      const all = errorsMm(grid, lay, held);
      errors.push(...all);
      if (Math.max(...all) <= accuracyMm(grid, lay)) within += 1;
    }
    errors.sort((a, b) => a - b);
    return {
      median: errors[Math.floor(errors.length / 2)] ?? 0,
      most: errors[Math.floor(errors.length * 0.95)] ?? 0,
      within: within / PHOTOS,
    };
  }
  // 120 mm away is about as near as a telephone's main camera focuses (common practice, no source).
  const held = (dice: Dice): Camera => ({
    ...TYPICAL,
    tiltDeg: between(dice, 0, 35),
    towardsDeg: between(dice, 0, 360),
    rollDeg: between(dice, 0, 360),
  });

  it.each([
    ['2 × 5 by four pins', PANEL, 4, 0.065, 0.16],
    ['2 × 5 by six pins', PANEL, 6, 0.045, 0.1],
    ['2 × 5 by eight pins', PANEL, 8, 0.04, 0.09],
    ['2 × 10 by six pins', header(2, 10), 6, 0.045, 0.1],
    ['2 × 17 at 1.27 mm by eight pins', header(2, 17, 1.27), 8, 0.04, 0.09],
  ] as const)(
    '%s: half of the pins lie within the first bound, nineteen of twenty within the second',
    (_, grid, pins, half, most) => {
      const found = spread(grid, pins, held);
      expect(found.median).toBeLessThan(half);
      expect(found.most).toBeLessThan(most);
      // What the window promises holds for the worst pin in at least 95 % of the photos.
      expect(found.within).toBeGreaterThanOrEqual(0.95);
    },
  );
});

describe('one bad point', () => {
  const EIGHT = pinsToPointAt(PANEL).slice(0, 8);
  const SIX = pinsToPointAt(PANEL).slice(0, 6);

  it('of eight is named and left out, whichever it is and wherever it lies, with 0.5 px noise', () => {
    for (let seed = 1; seed <= PHOTOS; seed++) {
      const dice = new Dice(seed);
      const camera = { ...TYPICAL, tiltDeg: between(dice, 0, 35), towardsDeg: between(dice, 0, 360) };
      const bad = EIGHT[dice.below(8)] ?? '';
      const angle = between(dice, 0, 2 * Math.PI);
      const off = between(dice, 20, 60);
      const points = moved(
        shaken(pointsFor(PANEL, camera, EIGHT), dice, 0.5),
        bad,
        off * Math.cos(angle),
        off * Math.sin(angle),
      );
      const lay = laid(PANEL, points);
      expect(lay.doubt, `seed ${seed}`).toMatchObject({ kind: 'one', pin: bad });
      expect(Math.max(...errorsMm(PANEL, lay, camera))).toBeLessThan(0.5);
      expect(lay.residuals.toSorted((a, b) => b.px - a.px)[0]?.pin).toBe(bad);
    }
  });

  it('that lies on another pin is told so', () => {
    const pins = ['1', '3', '7', '9', '2', '4', '8', '10'];
    const five = truePoints(PANEL, TYPICAL).find(({ pin }) => pin === '5');
    const points = pointsFor(PANEL, TYPICAL, pins).map((point) =>
      point.pin === '7' ? { pin: '7', xPx: five?.xPx ?? 0, yPx: five?.yPx ?? 0 } : point,
    );
    expect(told(PANEL, points)).toBe(
      'The point for pin 7 lies on pin 5 and was left out. Move it, or count again.',
    );
  });

  it('of six is named when it lies beside its row', () => {
    for (const bad of SIX) {
      const points = moved(pointsFor(PANEL, { ...TYPICAL, rollDeg: 0, towardsDeg: 0 }, SIX), bad, 9, 14);
      expect(laid(PANEL, points).doubt, bad).toMatchObject({ kind: 'one', pin: bad });
    }
  });

  it('of three in a row, moved along it, cannot be told from the other two, and that is said', () => {
    // Along a row a perspective has one value to spare for three points: the misfit is shared by all three.
    const camera = { ...TYPICAL, tiltDeg: 25, towardsDeg: 0, rollDeg: 0 };
    const points = moved(pointsFor(PANEL, camera, SIX), '5', 25, 0);
    const { doubt } = laid(PANEL, points);
    expect(doubt).toMatchObject({ kind: 'one-of', pins: ['1', '9', '5'] });
  });

  it('of five is seen, and not guessed at', () => {
    const points = moved(pointsFor(PANEL, TYPICAL, EIGHT.slice(0, 5)), '9', 0, 40);
    expect(laid(PANEL, points).doubt).toMatchObject({ kind: 'one-of' });
  });

  it('is not made up: hundreds of steady hands are never accused', () => {
    for (let seed = 1; seed <= PHOTOS; seed++) {
      const dice = new Dice(seed);
      const pins = pinsToPointAt(PANEL).slice(0, 5 + dice.below(6));
      const points = shaken(pointsFor(PANEL, TYPICAL, pins), dice, 0.5);
      expect(laid(PANEL, points).doubt).toBeNull();
    }
  });

  it('and another: it is said that they do not agree', () => {
    const points = moved(moved(pointsFor(PANEL, TYPICAL, EIGHT), '1', 60, 10), '10', -20, 80);
    expect(told(PANEL, points)).toBe(
      'The points do not agree with the grid. Compare rows, columns and pitch with the picture, then the pin numbers.',
    );
  });
});

describe('points that hold no grid are told in words', () => {
  const four = pointsFor(PANEL, TYPICAL, ['1', '2', '9', '10']);

  it.each<readonly [string, Grid, readonly PinPoint[], string]>([
    ['none', PANEL, [], 'Point at 4 more pins: 4 hold the grid.'],
    ['three', PANEL, four.slice(1), 'Point at one more pin: 4 hold the grid.'],
    [
      'two of a single row',
      header(1, 4),
      pointsFor(header(1, 4), TYPICAL, ['1', '4']),
      'Point at one more pin: 3 hold the grid.',
    ],
    [
      'a pin that the connector has not',
      PANEL,
      [...four, { pin: '11', xPx: 5, yPx: 5 }],
      'The connector has no position 11. Take that point away.',
    ],
    [
      'one pin twice',
      PANEL,
      [...four, { pin: '1', xPx: 5, yPx: 5 }],
      'Pin 1 is pointed at twice. Take one of the two points away.',
    ],
    [
      'two pins in one place',
      PANEL,
      [...four, { pin: '3', xPx: (four[0]?.xPx ?? 0) + 0.4, yPx: four[0]?.yPx ?? 0 }],
      'Pins 1 and 3 are pointed at in one place. Move one of the two points.',
    ],
    [
      'a point beside the picture',
      PANEL,
      moved(four, '9', 5_000, 0),
      'The point for pin 9 lies outside the picture. Move it onto the pin.',
    ],
    [
      'a point that is no number',
      PANEL,
      moved(four, '9', Number.NaN, 0),
      'The point for pin 9 lies outside the picture. Move it onto the pin.',
    ],
    [
      'three of four in a line on the grid',
      PANEL,
      pointsFor(PANEL, TYPICAL, ['1', '3', '9', '10']),
      'Pins 1, 3 and 9 lie in a line. Point at a pin beside that line: four that make a quadrangle hold the grid.',
    ],
    [
      'all in one row',
      PANEL,
      pointsFor(PANEL, TYPICAL, ['1', '3', '5', '7', '9']),
      'Pins 1, 3, 5, 7 and 9 lie in a line. Point at a pin beside that line: four that make a quadrangle hold the grid.',
    ],
    [
      'three of four in a line in the picture',
      PANEL,
      [
        { pin: '1', xPx: 100, yPx: 100 },
        { pin: '9', xPx: 500, yPx: 100.5 },
        { pin: '10', xPx: 900, yPx: 101 },
        { pin: '2', xPx: 300, yPx: 900 },
      ],
      'Pins 1, 9 and 10 lie in a line. Point at a pin beside that line: four that make a quadrangle hold the grid.',
    ],
    [
      'two corners exchanged',
      PANEL,
      four.map(({ pin, ...place }) => ({ pin: pin === '1' ? '9' : pin === '9' ? '1' : pin, ...place })),
      'The grid would be twisted. Two points may be exchanged: compare the pin numbers with the picture.',
    ],
  ])('%s', (_, grid, points, words) => {
    expect(told(grid, points)).toBe(words);
  });

  it('any points at all bring an answer and never a throw', () => {
    const seen = new Set<string>();
    const value = fc.oneof(fc.constantFrom(0, 1, 100, 101, 2_000), fc.double({ min: -100, max: 2_100 }));
    const anywhere = fc.record({
      pin: fc.constantFrom('1', '2', '3', '4', '9', '10', '11'),
      xPx: value,
      yPx: value,
    });
    const onPin = fc.constantFrom(...truePoints(PANEL, TYPICAL));
    const points = fc.oneof(
      fc.array(anywhere, { maxLength: 8 }),
      fc.array(fc.oneof({ weight: 20, arbitrary: onPin }, anywhere), { maxLength: 8 }),
    );
    fc.assert(
      fc.property(fc.constantFrom(PANEL, header(1, 10), header(3, 4)), points, (grid, given) => {
        const lay = layOf(grid, given, PICTURE);
        seen.add(lay.ok ? 'laid' : lay.problem.code);
        if (lay.ok) for (const { xPx, yPx } of pinSpots(grid, lay.value)) expect(xPx + yPx).not.toBeNaN();
      }),
      { seed: 20_260_407, numRuns: 5_000 },
    );
    expect([...seen].sort()).toEqual(
      ['crossed', 'in-line', 'laid', 'outside', 'pin-twice', 'same-place', 'too-few', 'unknown-pin'].sort(),
    );
  });
});

it('the middle of the grid is what the camera of these tests looks at', () => {
  const { x, y } = middleOf(PANEL);
  const lay = laid(PANEL, pointsFor(PANEL, TYPICAL, ['1', '2', '9', '10']));
  const there = mapped(lay.toPx, { x, y });
  expect(there.x).toBeCloseTo(1_000, 6);
  expect(there.y).toBeCloseTo(750, 6);
});
