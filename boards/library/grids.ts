import type { Mm } from '../base/units';
import type { Grid } from '../document/grid';

/** 0.1 in: the open post headers of the panel, USB 2.0, audio, 1394, serial and fans. */
const HEADER_PITCH: Mm = 2.54;
/** The 19-pin USB 3 header. */
export const FINE_PITCH: Mm = 2;
/** 0.05 in: SATA contacts and the panel blocks of some ready-made machines. */
export const HALF_PITCH: Mm = 1.27;
/** Supply plugs for boards and cards, along and across. */
export const POWER_PITCH: Mm = 4.2;

/** 0.2 in: the four-way plugs of older drives (from memory). */
export const PERIPHERAL_PITCH: Mm = 5.08;

/** One row, counted from the left. */
export function singleRow(cols: number, pitchMm: Mm = HEADER_PITCH): Grid {
  return { rows: 1, cols, pitchMm, numbering: { scheme: 'by-row', from: 'top-left' } };
}

/**
 * Two rows counted odd and even. Seen from above with pin 1 at the left, pin 2 lies above it
 * (Front Panel I/O Connectivity Design Guide v1.3, Figure 3), so counting begins at the bottom.
 */
export function zigZag(cols: number, pitchMm: Mm = HEADER_PITCH): Grid {
  return { rows: 2, cols, pitchMm, numbering: { scheme: 'zig-zag', from: 'bottom-left' } };
}

/** Two rows, the first counted to its end before the second begins again below pin 1. */
export function rowAfterRow(cols: number, pitchMm: Mm = POWER_PITCH): Grid {
  return { rows: 2, cols, pitchMm, numbering: { scheme: 'by-row', from: 'top-left' } };
}

/** Two rows counted out along one and back along the other, against the clock as seen from above. */
export function thereAndBack(cols: number, pitchMm: Mm = FINE_PITCH): Grid {
  return { rows: 2, cols, pitchMm, numbering: { scheme: 'u-shaped', from: 'bottom-left' } };
}

/**
 * Positions with labels of their own, row by row as seen from above: "A1 A2 . A4". A dot stands where
 * the grid has no position at all. Every row has as many words as the first.
 */
export function labelled(rows: readonly string[], pitchMm: Mm = HEADER_PITCH): Grid {
  const labels = rows.map((row) =>
    row
      .trim()
      .split(/\s+/)
      .map((label) => (label === '.' ? null : label)),
  );
  return {
    rows: labels.length,
    cols: labels[0]?.length ?? 0,
    pitchMm,
    numbering: { scheme: 'free', labels },
  };
}
