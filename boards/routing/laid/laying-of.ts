import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Run } from '../../document/cable';
import type { Lead } from '../../document/lead';
import { connectorOf, leadsOf, seatOf, unitsOf, unitWith } from '../../document/lookup';
import type { Tray } from '../../document/tray';
import { connectorBox } from '../../fit/geometry';
import { onTray } from '../case/board-on-tray';
import type { Cable, CableKind, Laying } from '../fill/laying';
import { frontSpots, type Spot } from './front-spots';
import { runId, socketId, stretchId } from './laying-ids';

/** Why a run of a cable cannot be laid: what has to be known or done first. */
export type NotLaid =
  /** A plug at one of its ends sits nowhere yet. */
  | { readonly code: 'not-plugged'; readonly plug: string }
  /** Nobody has said where the lead begins. */
  | { readonly code: 'no-start' }
  /** It begins at a place that the tray does not have. */
  | { readonly code: 'start-unknown'; readonly place: string }
  /** Nobody has said where the board lies. */
  | { readonly code: 'no-board-place' }
  /** Nobody has said where the unit sits, or its place is not on the tray. */
  | { readonly code: 'no-unit-place'; readonly unit: string }
  /** Both ends are at the same place. */
  | { readonly code: 'same-place' };

export interface RunToLay {
  readonly id: string;
  readonly lead: Lead;
  readonly run: Run;
}

/** The cables of a build on the tray of its case. */
export interface BuildLaying {
  readonly laying: Laying;
  /** Every run of every lead that has been measured, laid or not. */
  readonly runs: readonly RunToLay[];
  /** By the id of the run. */
  readonly notLaid: ReadonlyMap<string, NotLaid>;
}

/**
 * How many points near a connector a cable may go to from it, beside every opening and what it ends at: a tray
 * has few openings and may have thousands of points. Our own judgement: the ninth point is never the best.
 */
const NEAREST = 8;

/**
 * The tray of a build with the connectors of its board as places where cables end, and every measured run
 * as a cable. From a connector cables go on to the openings and the nearest points that the board leaves free,
 * across and down the board, as far as a ruler says: an estimate, where paths of the tray are measured.
 * Undefined for a case without a tray.
 */
export const layingOf = byIdentity(workOut, (build) => [
  build.board,
  build.case,
  build.extras,
  unitsOf(build),
  build.seats,
]);

function workOut(build: Build): BuildLaying | undefined {
  const { tray } = build.case;
  if (tray === undefined) return undefined;
  const runs = leadsOf(build)
    .filter(({ setAside }) => setAside === undefined)
    .flatMap((lead) =>
      (lead.cable?.runs ?? []).map((run) => ({ id: runId({ lead: lead.id, plug: run.to }), lead, run })),
    );
  const places = new Set(
    [...tray.points, ...tray.bays, ...(tray.supply ? [tray.supply] : [])].map(({ id }) => id),
  );
  const notLaid = new Map<string, NotLaid>();
  const cables: Cable[] = [];
  const kinds = new Map<string, CableKind>();
  for (const { id, lead, run } of runs) {
    const ends = endsOf(build, lead, run, places);
    if ('code' in ends) {
      notLaid.set(id, ends);
      continue;
    }
    const kind = kindOf(lead);
    kinds.set(kind.id, kind);
    cables.push({ id, kind: kind.id, ...ends, lengthMm: run.lengthMm });
  }
  const sockets = new Set(cables.flatMap(({ from, to }) => [from, to]).filter((end) => !places.has(end)));
  return { laying: withSockets(build, tray, sockets, cables, [...kinds.values()]), runs, notLaid };
}

/** Leads alike in make share a kind, so that searches know equal cables by it. */
function kindOf({ cable }: Lead): CableKind {
  const { diameterMm = 1, bendRadiusMm, slackMm = 0 } = cable ?? {};
  const id = [diameterMm, bendRadiusMm ?? '', slackMm].join(' ');
  return { id, diameterMm, ...(bendRadiusMm !== undefined && { bendRadiusMm }), slackMm };
}

/** The places that a run leads from and to. */
function endsOf(
  build: Build,
  lead: Lead,
  run: Run,
  places: ReadonlySet<string>,
): Pick<Cable, 'from' | 'to'> | NotLaid {
  const from = run.from === undefined ? startOf(lead, places) : endOf(build, lead, run.from, places);
  if (typeof from !== 'string') return from;
  const to = endOf(build, lead, run.to, places);
  if (typeof to !== 'string') return to;
  return from === to ? { code: 'same-place' } : { from, to };
}

function startOf({ cable }: Lead, places: ReadonlySet<string>): string | NotLaid {
  const { start } = cable ?? {};
  if (start === undefined) return { code: 'no-start' };
  return places.has(start) ? start : { code: 'start-unknown', place: start };
}

function endOf(build: Build, lead: Lead, plug: string, places: ReadonlySet<string>): string | NotLaid {
  const seat = seatOf(build, { lead: lead.id, plug });
  if (seat === undefined) return { code: 'not-plugged', plug };
  const unit = unitWith(build, seat.connector);
  if (unit === undefined)
    return build.case.tray?.board === undefined ? { code: 'no-board-place' } : socketId(seat.connector);
  return unit.at !== undefined && places.has(unit.at) ? unit.at : { code: 'no-unit-place', unit: unit.id };
}

function withSockets(
  build: Build,
  tray: Tray,
  sockets: ReadonlySet<string>,
  cables: readonly Cable[],
  cableKinds: readonly CableKind[],
): Laying {
  const laid = build.board.connectors.flatMap(({ id }) =>
    sockets.has(socketId(id)) ? (socketSpot(build, tray, id) ?? []) : [],
  );
  const ends = new Set(cables.flatMap(({ from, to }) => [from, to]));
  const { openings, points } = frontSpots(build, tray, ends);
  const spots = new Map([...points, ...laid].map((spot) => [spot.id, spot]));
  const stretches = [
    ...laid.flatMap((spot) => [...openings, ...nearest(points, spot)].map((place) => stretch(spot, place))),
    // What a cable ends at is never too far, lest points that are drawn near the board take its way away.
    ...cables.flatMap(({ from, to }) => {
      const [socket, end] = sockets.has(from) ? [from, to] : [to, from];
      const [one, other] = [spots.get(socket), spots.get(end)];
      return one && other && sockets.has(socket) ? [stretch(one, other)] : [];
    }),
  ];
  return {
    ...tray,
    // Cables end at a connector, and none runs on through it.
    bays: [...tray.bays, ...laid.map((spot) => ({ ...spot, widthMm: 1, heightMm: 1 }))],
    paths: [...tray.paths, ...new Map(stretches.map((path) => [path.id, path])).values()],
    cableKinds,
    cables,
  };
}

function nearest(points: readonly Spot[], spot: Spot): readonly Spot[] {
  return points
    .map((point) => ({ point, lengthMm: acrossAndDown(spot, point) }))
    .toSorted((a, b) => a.lengthMm - b.lengthMm)
    .slice(0, NEAREST)
    .map(({ point }) => point);
}

function stretch(one: Spot, other: Spot): Tray['paths'][number] {
  const lengthMm = Math.max(1, acrossAndDown(one, other));
  return { id: stretchId(one.id, other.id), from: one.id, to: other.id, lengthMm, side: 'front' };
}

/** Cables lie along edges, not aslant. */
function acrossAndDown(one: Spot, other: Spot): Mm {
  return Math.abs(one.xMm - other.xMm) + Math.abs(one.yMm - other.yMm);
}

/** Where the middle of a connector of the board lies on the tray. */
export function socketSpot(build: Build, tray: Tray, connector: string): Spot | undefined {
  const found = connectorOf(build.board, connector);
  if (found === undefined || tray.board === undefined) return undefined;
  const box = connectorBox(found);
  const middle = { xMm: (box.leftMm + box.rightMm) / 2, yMm: (box.topMm + box.bottomMm) / 2 };
  return { id: socketId(connector), ...onTray(middle, tray.board, build.board.outline) };
}
