import type { Build, Seat } from '../../boards/document/build';
import { rowPitchOf } from '../../boards/document/grid';
import { connectorOf, type PlugRef, plugOf } from '../../boards/document/lookup';
import { type Point, type Rect, rectAbout } from '../../boards/drawing/geometry';
import { oriented, turned } from '../../boards/drawing/orientation';
import { type PlugShape, plugShapeOf } from '../../boards/drawing/plug-shape';
import type { Fit } from '../../boards/fit/fit';
import { fitSeat } from '../../boards/fit/fit-seat';
import { plugCentre } from '../../boards/fit/geometry';
import { placesOf } from '../../boards/fit/places';
import { seatedPlug } from '../../boards/fit/seated-plug';
import type { Placing } from '../store/session';
import type { Scene } from './scene/scene';

/** The middles of all places where a plug fits, turned as it is held. */
export function anchorsOf(scene: Scene, places: readonly Seat[], turn: Seat['turn']): readonly Point[] {
  return places.flatMap((seat) => {
    const plug = plugOf(scene.build, seat);
    const connector = connectorOf(scene.build.board, seat.connector);
    if (seat.turn !== turn || !plug || !connector) return [];
    const { xMm, yMm } = plugCentre(plug, connector, seat);
    return [oriented(scene.orientation, { x: xMm, y: yMm })];
  });
}

const places = new WeakMap<Build, { readonly plug: PlugRef; readonly seats: readonly Seat[] }>();

/** Everywhere a plug fits on this build; remembered, for it is asked at every turn of the plug. */
export function placesFor(build: Build, plug: PlugRef): readonly Seat[] {
  const known = places.get(build);
  if (known && known.plug.lead === plug.lead && known.plug.plug === plug.plug) return known.seats;
  const seats = placesOf(build, plug);
  places.set(build, { plug, seats });
  return seats;
}

/** The plug on its candidate, and whether it fits there. */
export interface Ghost {
  readonly shape: PlugShape;
  readonly fit: Fit;
  /** The connector's shell and names, which a label about the plug may not cover. */
  readonly around: Rect;
}

export function ghostOf(scene: Scene, candidate: Seat | null): Ghost | null {
  if (!candidate) return null;
  const block = scene.blocks.find(({ connector }) => connector.id === candidate.connector);
  if (!block) return null;
  const shape = plugShapeOf(seatedPlug(scene.build, candidate), block);
  return { shape, fit: fitSeat(scene.build, candidate), around: block.bounds };
}

/** The outline of a plug about a point, when it is over nothing. */
export function looseOutline(scene: Scene, { plug: ref, turn }: Placing, at: Point): Rect | null {
  const plug = plugOf(scene.build, ref);
  if (!plug) return null;
  const { rows, cols, pitchMm } = plug.grid;
  const size = { x: cols * pitchMm, y: rows * rowPitchOf(plug.grid) };
  const lying = oriented(scene.orientation, oriented(turned(turn), size));
  return rectAbout(at, Math.abs(lying.x), Math.abs(lying.y));
}
