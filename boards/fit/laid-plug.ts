import type { Landing } from './fit';
import { type Box, plugBox } from './geometry';
import { landingsOf } from './landing';
import type { SeatedPlug } from './seated-plug';

/** A seated plug as it lies: what is under its holes, and the rectangle of its body on the board. */
export interface LaidPlug extends SeatedPlug {
  readonly landings: readonly Landing[];
  readonly body: Box;
}

export function layDown(seated: SeatedPlug): LaidPlug {
  const { plug, connector, seat } = seated;
  return { ...seated, landings: landingsOf(seated), body: plugBox(plug, connector, seat) };
}

/** The holes that lie past the connector's edge. */
export function overhangOf({ landings, connector }: LaidPlug): readonly string[] {
  const { rows, cols } = connector.grid;
  return landings
    .filter(({ cell: [row, col] }) => row < 0 || col < 0 || row >= rows || col >= cols)
    .map(({ hole }) => hole);
}
