import type { Connector } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';

/** Rows and columns of a connector that is given room for more pins. */
export interface LargerShape {
  readonly rows: number;
  readonly cols: number;
}

/**
 * The shape in which a connector that counts its pins would have all of these labels, longer along its longer
 * side. Undefined where its labels are its own, where these are no numbers of pins, or where it would be too long.
 */
export function largerShape({ grid }: Connector, labels: readonly string[]): LargerShape | undefined {
  const numbers = labels.map(Number);
  if (grid.numbering.scheme === 'free' || !numbers.every((one) => Number.isInteger(one) && one > 0))
    return undefined;
  const last = Math.max(...numbers);
  const { rows, cols } = grid;
  const shape =
    cols >= rows ? { rows, cols: Math.ceil(last / rows) } : { rows: Math.ceil(last / cols), cols };
  return shape.rows <= LIMITS.gridSide && shape.cols <= LIMITS.gridSide ? shape : undefined;
}
