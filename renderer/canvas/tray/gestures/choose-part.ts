import { trayPathOf, trayPlaceOf } from '../../../../boards/document/tray-places';
import { centreOf, type Point } from '../../../../boards/drawing/geometry';
import type { Selection } from '../../../store/session';
import { type Gesture, SLACK_PX } from '../../gestures/gesture';
import { pan } from '../../gestures/pan';
import { toMm } from '../../view';
import { nextOfBundle } from '../cable-shapes';
import { rectOfPlace } from '../drafted';
import { type Handle, handleUnder } from '../resize-handles';
import type { TrayTarget } from '../tray-hits';
import { rectFromSide } from '../tray-look';
import type { TrayProps } from '../tray-props';
import { movePart } from './move-part';
import { resizeArea } from './resize-area';
import { lookOf, type TrayBench } from './tray-bench';

/** A handle is met from so many pixels away. */
const HANDLE_PX = 8;

/**
 * A press with nothing in the hand: on a handle of what is chosen it begins to resize; let go in place, it
 * chooses; moved on, a place or the board comes along, and anything else drags the ground.
 */
export function choosePart(bench: TrayBench, down: Point): Gesture {
  const handle = handleOfChosen(bench, down);
  if (handle !== undefined) return resizeArea(bench, handle.id, handle.handle);
  const target = bench.targetAt(down);
  const part = target?.kind === 'on-tray' && target.part.kind !== 'path' ? target.part : undefined;
  let going: Gesture | null = null;
  return {
    move: (at) => {
      if (going === null && Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) {
        // The board is taken along only when it is chosen: it lies under most of the map.
        const taken = part && (part.kind !== 'board' || isChosen(bench.props().selection, part.id));
        if (taken) bench.props().onChoose(target);
        going = taken ? movePart(bench, part, down) : pan(bench, down);
      }
      going?.move(at);
    },
    up: (at) => (going === null ? bench.props().onChoose(oneOf(target, bench.props())) : going.up(at)),
    cancel: () => going?.cancel(),
  };
}

/** Of a bundle the cable after the one that is chosen, and after the last the path that they lie along. */
function oneOf(target: TrayTarget | null, { selection, tray }: TrayProps): TrayTarget | null {
  if (target?.kind !== 'plug') return target;
  const { together, path } = target;
  const plug = nextOfBundle(together, selection.kind === 'plug' ? selection.plug : undefined);
  if (plug !== null) return { ...target, plug };
  return trayPathOf(tray, path) === undefined
    ? target
    : { kind: 'on-tray', part: { kind: 'path', id: path } };
}

function isChosen(selection: Selection, id: string): boolean {
  return selection.kind === 'on-tray' && selection.part.id === id;
}

/** The handle under a point of the screen, of the area that is chosen, as the sheet has it. */
export function handleOfChosen(
  { props, view }: Pick<TrayBench, 'props' | 'view'>,
  screen: Point,
): { readonly id: string; readonly handle: Handle } | undefined {
  const now = props();
  const area = chosenArea(now);
  if (area === undefined) return undefined;
  const { scale } = view.now();
  const point = toMm(view.now(), screen);
  const rect = rectFromSide(lookOf(now), area.area);
  // In a small area most of it is there to be moved by.
  const reach = Math.min(HANDLE_PX / scale, rect.width / 4, rect.height / 4);
  const seen = handleUnder(rect, point, Math.max(reach, 3 / scale));
  if (seen === undefined || near(centreOf(rect), point, 2 / scale)) return undefined;
  const across = now.side === 'front' || seen.across === 0 ? seen.across : seen.across === 1 ? -1 : 1;
  return { id: area.id, handle: { across, down: seen.down } };
}

function near(one: Point, other: Point, reach: number): boolean {
  return Math.hypot(one.x - other.x, one.y - other.y) <= reach;
}

/** The opening, the bay or the supply that is chosen. */
export function chosenArea({ selection, tray }: Pick<TrayProps, 'selection' | 'tray'>) {
  if (selection.kind !== 'on-tray') return undefined;
  const place = trayPlaceOf(tray, selection.part.id);
  const rect = place && rectOfPlace(place);
  if (!rect || rect.width === 0) return undefined;
  return {
    id: selection.part.id,
    area: { xMm: rect.x, yMm: rect.y, widthMm: rect.width, heightMm: rect.height },
  };
}
