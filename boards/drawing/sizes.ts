import type { Mm } from '../base/units';

/** The drawing's own measures. Everything is in millimetres, so nothing depends on the zoom. */
export const SIZES = {
  name: 0.5,
  nameLeast: 0.38,
  nameSmallest: 0.3,
  lineHeight: 1.15,
  /** Between the shell and the names. */
  nameGap: 0.35,
  /** As far as a name may reach out from its pin. */
  nameReach: 4.6,
  title: 0.72,
  subtitle: 0.5,
  flagText: 0.5,
  flagHeight: 0.95,
  flagWidest: 7.5,
  /** Thickness of the bar that gathers wires beside a tall block. */
  flagBar: 0.3,
  flagPad: 0.28,
  /** Room kept in every flag for a severity sign, so that nothing moves when one comes. */
  flagSign: 0.78,
  /** Between neighbouring flags, and between the names and the nearest flag. */
  flagGap: 0.3,
  firstFlag: 0.7,
  wire: 0.2,
  wireSpacing: 0.3,
  sleeve: 0.8,
  /** Of the shell round its outermost cells, so that it shows under a plug. */
  rim: 0.22,
  wall: 0.9,
  plugInset: 0.09,
} as const satisfies Record<string, Mm>;

/** Side of a pin's square. */
export function pinSize(pitchX: Mm, pitchY: Mm): Mm {
  return Math.min(1.6, 0.44 * Math.min(pitchX, pitchY));
}

/** Width of the lane at a cell's edge that is kept clear of names, for wires. */
export function laneWidth(pitch: Mm): Mm {
  return Math.min(0.62, 0.25 * pitch);
}
