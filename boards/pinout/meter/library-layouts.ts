import { TURNS, type Turn } from '../../base/units';
import type { Connector } from '../../document/connector';
import type { Cell, Grid } from '../../document/grid';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import type { ConnectorType } from '../../library/connector-type';
import { CONNECTOR_TYPES } from '../../library/connectors/index';
import { type SignalId, signalOf } from '../../signals/signals';
import type { LayoutOrigin } from './identification';
import { cellKey, type Post } from './posts';

/** A whole layout that the posts could have: a signal for each post, in the order of the posts. */
export interface Layout {
  readonly signals: readonly SignalId[];
  readonly weight: number;
  readonly origin: LayoutOrigin;
  /** For each post, the other signals that it has in layouts that no reading tells from this one. */
  readonly alike?: readonly ReadonlySet<SignalId>[];
}

/**
 * How probable it is, before any reading, that a sheet shows a library connector otherwise than it is drawn
 * there, each beside "just so" (common practice, no source).
 */
const OTHERWISE = {
  /** Pin 1 was taken to be at the other end. */
  turned: 0.5,
  /** Drawn from below, or from a mirrored picture. */
  mirrored: 0.15,
  /** A post stands where the key should be. */
  keyFilled: 0.02,
  /** A post is gone that leads nowhere anyway. */
  spareGone: 0.1,
  /** A post is gone that something should sit on. */
  postGone: 0.003,
  /** The pitch is another. */
  pitch: 0.05,
} as const;

/** Every connector of the library that has this shape, in every turn and mirror that maps it onto the grid. */
export function libraryLayouts(connector: Connector, posts: readonly Post[]): readonly Layout[] {
  const kin = CONNECTOR_TYPES.filter(({ connector: { family } }) => family === connector.family);
  return kin.flatMap((type) => placementsOf(type, connector.grid, posts));
}

function placementsOf(type: ConnectorType, grid: Grid, posts: readonly Post[]): readonly Layout[] {
  const best = new Map<string, Layout>();
  for (const turn of TURNS)
    for (const mirrored of [false, true]) {
      const layout = placed(type, grid, posts, turn, mirrored);
      if (layout === undefined) continue;
      const key = layout.signals.join();
      if ((best.get(key)?.weight ?? 0) < layout.weight) best.set(key, layout);
    }
  return [...best.values()];
}

function placed(
  { id, title, connector }: ConnectorType,
  grid: Grid,
  posts: readonly Post[],
  turn: Turn,
  mirrored: boolean,
): Layout | undefined {
  const { rows, cols } = connector.grid;
  const across = turn === 90 || turn === 270;
  if ((across ? cols : rows) !== grid.rows || (across ? rows : cols) !== grid.cols) return undefined;
  const signals = new Map<string, SignalId | 'gone'>();
  for (const { label, cell } of gridIndex(connector.grid).positions) {
    const pin = pinOf(connector, label);
    const [row, col] = turnedCell(cell, connector.grid, turn);
    signals.set(
      cellKey([row, mirrored ? grid.cols - 1 - col : col]),
      pin.missing ? 'gone' : (pin.signal ?? 'unknown'),
    );
  }
  let weight = turn === 0 ? 1 : OTHERWISE.turned;
  if (mirrored) weight *= OTHERWISE.mirrored;
  if (Math.abs(connector.grid.pitchMm - grid.pitchMm) > 0.1) weight *= OTHERWISE.pitch;
  const here = posts.map(({ cell }): SignalId => {
    const signal = signals.get(cellKey(cell)) ?? 'gone';
    signals.delete(cellKey(cell));
    if (signal !== 'gone') return signal;
    weight *= OTHERWISE.keyFilled;
    return 'no-connection';
  });
  for (const gone of signals.values())
    if (gone !== 'gone')
      weight *= signalOf(gone).nature === 'open' ? OTHERWISE.spareGone : OTHERWISE.postGone;
  return { signals: here, weight, origin: { kind: 'library', type: id, title, turn, mirrored } };
}

/** Where a cell comes to lie when its grid is turned clockwise. */
function turnedCell([row, col]: Cell, { rows, cols }: Grid, turn: Turn): Cell {
  switch (turn) {
    case 0:
      return [row, col];
    case 90:
      return [col, rows - 1 - row];
    case 180:
      return [rows - 1 - row, cols - 1 - col];
    case 270:
      return [cols - 1 - col, row];
  }
}
