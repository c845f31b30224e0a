import type { PlaceCompared } from '../../../../boards/pinout/looks-like/compare';

/** The rows and columns that two headers laid over each other take up together. */
export interface Frame {
  readonly top: number;
  readonly left: number;
  readonly rows: number;
  readonly cols: number;
}

/** The frame of compared places; of one cell when there is none. */
export function frameOf(places: readonly PlaceCompared[]): Frame {
  const rows = places.map(({ cell }) => cell[0]);
  const cols = places.map(({ cell }) => cell[1]);
  const top = Math.min(...rows, 0);
  const left = Math.min(...cols, 0);
  return { top, left, rows: Math.max(...rows, 0) - top + 1, cols: Math.max(...cols, 0) - left + 1 };
}
