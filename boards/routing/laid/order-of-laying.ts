import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import { seatOf, unitsOf } from '../../document/lookup';
import type { BoardPlace, Tray } from '../../document/tray';
import { type Box, boardBox } from '../case/board-on-tray';
import type { Route } from '../search/reach';
import { asLaid, type LaidRun } from './as-laid';
import { type CableFamily, cableFamilyOf } from './cable-family';
import { socketSpot } from './laying-of';
import { wayStepsOf } from './way-steps';

/** When a cable has to be in at the latest. */
const LAYING_STAGES = ['before-board', 'before-card', 'before-panel', 'last'] as const;
export type LayingStage = (typeof LAYING_STAGES)[number];

/** Why a cable has its place in the order: worked out from where things lie, or a habit of the trade. */
export type LayingReason =
  | { readonly code: 'under-board'; readonly place: string }
  /** The board leaves some of the opening free. */
  | { readonly code: 'partly-under-board'; readonly place: string }
  /** The opening lies in a strip between the board and the edge of the tray that no hand gets into. */
  | { readonly code: 'narrow-strip'; readonly opening: string; readonly stripMm: Mm }
  /** It ends at the edge of the board along such a strip. */
  | { readonly code: 'at-narrow-edge'; readonly connector: string; readonly stripMm: Mm }
  | { readonly code: 'cpu-power' }
  | { readonly code: 'beside-card'; readonly connector: string; readonly card: string }
  | { readonly code: 'behind-tray' }
  | { readonly code: 'in-sight' };

/** One cable in the order of the work. */
interface LayingTurn {
  readonly run: LaidRun;
  readonly reason: LayingReason;
}

export interface StageOfLaying {
  readonly stage: LayingStage;
  readonly turns: readonly LayingTurn[];
}

/** What a hand needs to get in beside a board. Our own judgement. */
const HAND_MM: Mm = 50;

/** How far from the edge of the board a connector still is at that edge. Our own judgement. */
const EDGE_MM: Mm = 30;

/** A card as thick as two slots of 20.32 mm (from memory), and a finger: that far to either side. */
const CARD_REACH_MM: Mm = 45;

/**
 * The runs that have a way, in the order in which they are laid: before the board goes in, before the
 * graphics card, before the side panel, and last. Within each first what is stiff and feeds the most
 * (common practice, no source). Undefined for a case without a tray.
 */
export const layingOrder = byIdentity(
  (build: Build): readonly StageOfLaying[] | undefined => {
    const laid = asLaid(build);
    const { tray } = build.case;
    if (laid === undefined || tray === undefined) return undefined;
    const turns = laid.runs.flatMap((run) => {
      const { state, cable } = run;
      if (state.kind !== 'laid' || cable === undefined) return [];
      const steps = wayStepsOf(laid.laying, cable, state.route);
      const places = steps.flatMap((step) =>
        step.kind === 'along' && step.side === 'front' ? [step.from, step.to] : [],
      );
      return [{ run, ...turnOf(build, tray, run, state.route, places) }];
    });
    const order = turns.toSorted(
      (a, b) => rankOf(build, a.run) - rankOf(build, b.run) || stiffer(a.run, b.run),
    );
    return LAYING_STAGES.map((stage) => ({
      stage,
      turns: order.filter((each) => each.stage === stage).map(({ run, reason }) => ({ run, reason })),
    })).filter((each) => each.turns.length > 0);
  },
  (build) => [asLaid(build) ?? build.case, build.board, build.seats, unitsOf(build)],
);

function turnOf(
  build: Build,
  tray: Tray,
  run: LaidRun,
  { openings, paths }: Route,
  frontPlaces: readonly string[],
): { readonly stage: LayingStage; readonly reason: LayingReason } {
  const before = tray.board && beforeBoard(build, tray, tray.board, run, openings, frontPlaces);
  if (before !== undefined) return { stage: 'before-board', reason: before };
  const card = besideCard(build, tray, run);
  if (card !== undefined) return { stage: 'before-card', reason: card };
  const behind = tray.paths.some(({ id, side }) => side === 'back' && paths.includes(id));
  return behind
    ? { stage: 'before-panel', reason: { code: 'behind-tray' } }
    : { stage: 'last', reason: { code: 'in-sight' } };
}

function boxOf(tray: Tray, id: string): Box | undefined {
  const point = tray.points.find((each) => each.id === id);
  if (point) return { left: point.xMm, right: point.xMm, top: point.yMm, bottom: point.yMm };
  const area = tray.openings.find((each) => each.id === id);
  return (
    area && {
      left: area.xMm,
      right: area.xMm + area.widthMm,
      top: area.yMm,
      bottom: area.yMm + area.heightMm,
    }
  );
}

function meet(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

function within(one: Box, other: Box): boolean {
  return (
    one.left >= other.left && one.right <= other.right && one.top >= other.top && one.bottom <= other.bottom
  );
}

/** The strips between the board and the edges of the tray that a hand does not get into. */
function narrowStrips(tray: Tray, board: Box): readonly (Box & { readonly wideMm: Mm })[] {
  const { left, top, right, bottom } = board;
  return [
    { left, right, top: 0, bottom: top, wideMm: top },
    { left, right, top: bottom, bottom: tray.heightMm, wideMm: tray.heightMm - bottom },
    { left: 0, right: left, top, bottom, wideMm: left },
    { left: right, right: tray.widthMm, top, bottom, wideMm: tray.widthMm - right },
  ].filter(({ wideMm }) => wideMm > 0 && wideMm < HAND_MM);
}

function beforeBoard(
  build: Build,
  tray: Tray,
  place: BoardPlace,
  { lead, run }: LaidRun,
  openings: readonly string[],
  frontPlaces: readonly string[],
): LayingReason | undefined {
  const board = boardBox(build.board.outline, place);
  // Where a cable ends over the board, such as at a card, nothing covers it.
  const ends = new Set(tray.points.filter(({ kind }) => kind === 'end').map(({ id }) => id));
  for (const place of frontPlaces) {
    const box = ends.has(place) ? undefined : boxOf(tray, place);
    if (box !== undefined && meet(box, board))
      return { code: within(box, board) ? 'under-board' : 'partly-under-board', place };
  }
  const strips = narrowStrips(tray, board);
  for (const opening of openings) {
    const box = boxOf(tray, opening);
    const strip = box && strips.find((each) => meet(each, box));
    if (strip !== undefined) return { code: 'narrow-strip', opening, stripMm: strip.wideMm };
  }
  if (lead.plugs.some(({ family }) => family === 'cpu-power')) return { code: 'cpu-power' };
  const connector = seatOf(build, { lead: lead.id, plug: run.to })?.connector;
  const spot = connector === undefined ? undefined : socketSpot(build, tray, connector);
  if (connector === undefined || spot === undefined) return undefined;
  const near: Box = {
    left: spot.xMm - EDGE_MM,
    right: spot.xMm + EDGE_MM,
    top: spot.yMm - EDGE_MM,
    bottom: spot.yMm + EDGE_MM,
  };
  // The rear edge has its sockets there, and nothing of the case is laid along it.
  const strip = strips.find((each) => meet(each, near) && !isRear(each, board, place));
  return strip && { code: 'at-narrow-edge', connector, stripMm: strip.wideMm };
}

function isRear(strip: Box, board: Box, { rear }: BoardPlace): boolean {
  switch (rear) {
    case 'left':
      return strip.right === board.left;
    case 'right':
      return strip.left === board.right;
    case 'top':
      return strip.bottom === board.top;
    case 'bottom':
      return strip.top === board.bottom;
  }
}

/** A card stands across the board from its rear edge up to its place on the tray. */
function besideCard(build: Build, tray: Tray, { lead, run }: LaidRun): LayingReason | undefined {
  const connector = seatOf(build, { lead: lead.id, plug: run.to })?.connector;
  const spot = connector === undefined ? undefined : socketSpot(build, tray, connector);
  const { board } = tray;
  if (connector === undefined || spot === undefined || board === undefined) return undefined;
  for (const card of unitsOf(build)) {
    const at = card.kind === 'card' ? tray.points.find(({ id }) => id === card.at) : undefined;
    if (at === undefined) continue;
    const upright = board.rear === 'top' || board.rear === 'bottom';
    const aside = upright ? Math.abs(spot.xMm - at.xMm) : Math.abs(spot.yMm - at.yMm);
    const [here, end, rear] = upright ? [spot.yMm, at.yMm, board.yMm] : [spot.xMm, at.xMm, board.xMm];
    const along = here >= Math.min(end, rear) && here <= Math.max(end, rear);
    if (along && aside <= CARD_REACH_MM) return { code: 'beside-card', connector, card: card.id };
  }
  return undefined;
}

/** Supply of the processor, of the board, of a card; drives; panel, ports and sound; fans. */
const FAMILY_RANK: Readonly<Record<CableFamily, number>> = {
  supply: 3,
  data: 4,
  panel: 5,
  usb: 5,
  audio: 5,
  other: 6,
  fan: 7,
};

const SHELL_RANK: Readonly<Record<string, number>> = { 'cpu-power': 0, 'main-power': 1, 'card-power': 2 };

function rankOf(build: Build, { lead }: LaidRun): number {
  const shells = lead.plugs.flatMap(({ family }) => SHELL_RANK[family] ?? []);
  return shells.length > 0 ? Math.min(...shells) : FAMILY_RANK[cableFamilyOf(build, lead)];
}

/** Below 0 where the first is the stiffer one: by the radius it bends to, then by its thickness. */
function stiffer({ lead: one }: LaidRun, { lead: other }: LaidRun): number {
  const [a, b] = [one.cable, other.cable];
  return (b?.bendRadiusMm ?? 0) - (a?.bendRadiusMm ?? 0) || (b?.diameterMm ?? 0) - (a?.diameterMm ?? 0);
}
