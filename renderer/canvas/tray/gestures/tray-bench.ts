import type { Mm } from '../../../../boards/base/units';
import type { Point } from '../../../../boards/drawing/geometry';
import type { Ground } from '../../gestures/gesture';
import { toMm } from '../../view';
import type { TrayTarget } from '../tray-hits';
import { fromSide, type Look } from '../tray-look';
import type { TrayProps } from '../tray-props';

/** A level is met from so many pixels away. */
const SNAP_PX = 5;

/** What a press on the map may see and use. */
export interface TrayBench extends Pick<Ground, 'view' | 'setCursor'> {
  readonly props: () => TrayProps;
  /** From the top: a place, a connector, a path, the board. */
  readonly targetAt: (screen: Point) => TrayTarget | null;
}

/** A point of the screen on the tray, as the sheet has it. */
export function sheetPoint({ view, props }: TrayBench, screen: Point): Point {
  return fromSide(lookOf(props()), toMm(view.now(), screen));
}

export function lookOf({ side, tray }: TrayProps): Look {
  return { side, widthMm: tray.widthMm };
}

export function snapReach({ view }: TrayBench): Mm {
  return SNAP_PX / view.now().scale;
}
