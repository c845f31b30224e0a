import { byIdentity } from '../../base/by-identity';
import { pinAt } from '../../document/lookup';
import type { Layout } from './known-layout';
import { cellIn, ORIENTATIONS, type Orientation, type Shape, shapeIn } from './orientation';
import { type PinCode, pinCode } from './pin-code';

/** The codes of a layout's places row by row, as it is drawn unturned. */
export interface Drawn extends Shape {
  readonly codes: readonly PinCode[];
}

/** A layout as it lies in one orientation. */
export interface Face extends Shape {
  readonly orientation: Orientation;
  /** As it lies, row by row. */
  readonly codes: readonly PinCode[];
  /** The same for faces that cannot be told apart, ports aside. */
  readonly key: string;
}

/**
 * The faces of a layout that can be told apart, the likeliest orientation of each. A layout that looks the
 * same turned by half has fewer than eight.
 */
export const facesOf: (layout: Layout) => readonly Face[] = byIdentity((layout) => {
  const asDrawn = drawn(layout);
  const faces = new Map<string, Face>();
  for (const { orientation, shape, from } of waysToLie(asDrawn)) {
    const codes = from.flatMap((at) => asDrawn.codes[at] ?? []);
    const key = keyOf(shape, codes);
    if (!faces.has(key)) faces.set(key, { ...shape, orientation, codes, key });
  }
  return [...faces.values()];
});

/** The codes of a connector as it is drawn unturned. */
export const drawn: (layout: Layout) => Drawn = byIdentity((layout) => {
  const { rows, cols } = layout.grid;
  const codes = Array.from({ length: rows * cols }, (_, at) =>
    pinCode(pinAt(layout, [Math.floor(at / cols), at % cols])),
  );
  return { rows, cols, codes };
});

interface WayToLie {
  readonly orientation: Orientation;
  readonly shape: Shape;
  /** For each place as it lies, the place as drawn. */
  readonly from: readonly number[];
}

/** The eight ways to lie of a shape. */
function waysToLie({ rows, cols }: Shape): readonly WayToLie[] {
  return ORIENTATIONS.map((orientation) => {
    const shape = shapeIn(orientation, { rows, cols });
    const from = new Array<number>(rows * cols);
    for (let at = 0; at < rows * cols; at++) {
      const [row, col] = cellIn(orientation, { rows, cols }, [Math.floor(at / cols), at % cols]);
      from[row * shape.cols + col] = at;
    }
    return { orientation, shape, from };
  });
}

/** One letter a place: comparing a text is what the engine does fastest. */
function keyOf({ rows, cols }: Shape, codes: readonly PinCode[]): string {
  return `${rows}x${cols} ${String.fromCharCode(...codes.map(({ signal, job }) => signal + 256 * job))}`;
}
