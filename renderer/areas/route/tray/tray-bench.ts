import type { Build } from '../../../../boards/document/build';
import type { Tray } from '../../../../boards/document/tray';
import { trayPathOf, trayPlaceOf } from '../../../../boards/document/tray-places';
import type { TrayPart } from '../../../store/session';
import type { Workbench } from '../../../workbench';

export type Bench = Pick<Workbench, 'editor' | 'session'>;

export function buildOf({ editor }: Bench): Build | undefined {
  return editor.getState().open?.history.present;
}

export function trayOf(bench: Bench): Tray | undefined {
  return buildOf(bench)?.case.tray;
}

/** The part of the tray that is chosen, while it is there. */
export function chosenPart(bench: Bench): TrayPart | undefined {
  const { selection } = bench.session.getState();
  const tray = trayOf(bench);
  if (tray === undefined || selection.kind !== 'on-tray') return undefined;
  return isThere(tray, selection.part) ? selection.part : undefined;
}

function isThere(tray: Tray, { kind, id }: TrayPart): boolean {
  if (kind === 'board') return tray.board !== undefined;
  return kind === 'path' ? trayPathOf(tray, id) !== undefined : trayPlaceOf(tray, id) !== undefined;
}

export function choose({ session }: Bench, part: TrayPart): void {
  session.getState().select({ kind: 'on-tray', part });
}
