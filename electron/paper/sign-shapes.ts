/** A closed line through points of the em square, 1,000 units wide; y goes up. Clockwise is ink. */
export type Contour = readonly (readonly [x: number, y: number])[];

export interface SignShape {
  readonly codePoints: readonly number[];
  readonly advance: number;
  readonly contours: readonly Contour[];
}

const CAPITAL = 668;
const SMALL = 496;
/** Steps of a round stroke: finer than a printer at any size in which text is set. */
const STEPS = 28;

/** The signs of the trade that the page's fonts lack, drawn to go with them. `stem` is how thick a stroke is. */
export function signShapes(stem: number): readonly SignShape[] {
  return [
    { codePoints: [0x3a9, 0x2126], advance: 740, contours: ohm(stem) },
    { codePoints: [0xb5, 0x3bc], advance: 580, contours: micro(stem) },
    { codePoints: [0x2192], advance: 760, contours: arrow(stem) },
    { codePoints: [0x2190], advance: 760, contours: arrow(stem).map((line) => mirrored(line, 760)) },
    { codePoints: [0x2265], advance: 620, contours: atLeast(stem) },
    { codePoints: [0x2264], advance: 620, contours: atLeast(stem).map((line) => mirrored(line, 620)) },
    { codePoints: [0x2260], advance: 620, contours: unequal(stem) },
    { codePoints: [0x25af], advance: 560, contours: emptyBox(stem) },
    { codePoints: [0x2011], advance: 362, contours: [box(40, 222, 322, 222 + stem)] },
    { codePoints: [0x202f], advance: 180, contours: [] },
  ];
}

function ohm(stem: number): readonly Contour[] {
  const [x, y, rx, ry] = [370, 372, 290, 306];
  const from = -57;
  const end = x + (rx - stem / 2) * Math.cos((from * Math.PI) / 180);
  const foot = [box(end - stem / 2, 0, end + stem / 2, 150), box(end - stem / 2, 0, 690, stem)];
  return [arc(x, y, rx, ry, stem, from, 180 - from), ...foot, ...foot.map((line) => mirrored(line, 2 * x))];
}

function micro(stem: number): readonly Contour[] {
  const [left, right] = [75, 490];
  return [
    box(left, -190, left + stem, SMALL),
    box(right - stem, 0, right, SMALL),
    arc((left + right) / 2, 205, (right - left) / 2, 215, stem, 180, 360),
  ];
}

function arrow(stem: number): readonly Contour[] {
  const middle = CAPITAL / 2;
  const head = 175;
  return [
    box(50, middle - stem / 2, 640, middle + stem / 2),
    stroke(
      [
        [710 - head, middle + head],
        [700, middle],
      ],
      stem,
    ),
    stroke(
      [
        [710 - head, middle - head],
        [700, middle],
      ],
      stem,
    ),
  ];
}

function atLeast(stem: number): readonly Contour[] {
  return [
    stroke(
      [
        [80, 560],
        [530, 370],
      ],
      stem,
    ),
    stroke(
      [
        [530, 370],
        [80, 180],
      ],
      stem,
    ),
    box(70, 30, 550, 30 + stem),
  ];
}

function unequal(stem: number): readonly Contour[] {
  return [
    box(70, 210, 550, 210 + stem),
    box(70, 400, 550, 400 + stem),
    stroke(
      [
        [200, 80],
        [420, 610],
      ],
      stem,
    ),
  ];
}

function emptyBox(stem: number): readonly Contour[] {
  const thin = stem * 0.7;
  const inside = clockwise(box(80 + thin, thin, 480 - thin, CAPITAL - thin));
  return [box(80, 0, 480, CAPITAL), inside.toReversed()];
}

function box(left: number, bottom: number, right: number, top: number): Contour {
  return clockwise([
    [left, bottom],
    [left, top],
    [right, top],
    [right, bottom],
  ]);
}

/** A straight stroke with square ends that reach half a stem past both points. */
function stroke(
  [[x1, y1], [x2, y2]]: readonly [readonly [number, number], readonly [number, number]],
  stem: number,
) {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [((x2 - x1) / length) * (stem / 2), ((y2 - y1) / length) * (stem / 2)];
  return clockwise([
    [x1 - ux - uy, y1 - uy + ux],
    [x2 + ux - uy, y2 + uy + ux],
    [x2 + ux + uy, y2 + uy - ux],
    [x1 - ux + uy, y1 - uy - ux],
  ]);
}

/** A band along an ellipse whose outer edge has these half axes, from one angle to another, in degrees. */
function arc(x: number, y: number, rx: number, ry: number, stem: number, from: number, to: number): Contour {
  const edge = (a: number, b: number): Contour =>
    Array.from({ length: STEPS + 1 }, (_, step) => {
      const angle = ((from + ((to - from) * step) / STEPS) * Math.PI) / 180;
      return [x + a * Math.cos(angle), y + b * Math.sin(angle)] as const;
    });
  return clockwise([...edge(rx, ry), ...edge(rx - stem, ry - stem).toReversed()]);
}

function mirrored(line: Contour, width: number): Contour {
  return line.map(([x, y]) => [width - x, y] as const).toReversed();
}

function clockwise(line: Contour): Contour {
  const area = line.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = line[(index + 1) % line.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return area > 0 ? line.toReversed() : line;
}
