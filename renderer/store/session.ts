import type { Seat } from '../../boards/document/build';
import type { Place } from '../../boards/document/connector';
import type { PinRef, PlugRef } from '../../boards/document/lookup';
import type { BoardPlace } from '../../boards/document/tray';
import type { PlaceKind, TrayPlace } from '../../boards/document/tray-places';

export type Area = 'document' | 'wire' | 'route' | 'diagnose' | 'hand-over';

/** What stands in the middle of the Document area. */
export type DocumentPage = 'plan' | 'connector' | 'lead';

/** What the shelf beside the canvas lists. */
export type ShelfTab = 'leads' | 'connectors' | 'units';

/** A wire by its place in its lead's list, and the plug it was pointed at by. */
export interface WireRef {
  readonly plug: PlugRef;
  readonly wire: number;
}

/** Something of a case's tray: a place, a path, or the board at its place. */
export interface TrayPart {
  readonly kind: PlaceKind | 'path' | 'board';
  readonly id: string;
}

/** What the pointer is over, on the canvas or in a list. */
export type Hovered =
  | { readonly kind: 'plug'; readonly plug: PlugRef }
  | { readonly kind: 'pin'; readonly pin: PinRef }
  | { readonly kind: 'connector'; readonly connector: string }
  | ({ readonly kind: 'wire' } & WireRef)
  | { readonly kind: 'on-tray'; readonly part: TrayPart };

/** What the person has pointed at last. Nothing of it is undone or saved. */
export type Selection =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'plug'; readonly plug: PlugRef }
  | { readonly kind: 'connector'; readonly connector: string; readonly pin?: string }
  | ({ readonly kind: 'wire' } & WireRef)
  | { readonly kind: 'on-tray'; readonly part: TrayPart }
  | {
      readonly kind: 'finding';
      readonly id: string;
      readonly pins: readonly PinRef[];
      readonly leads: readonly string[];
    };

/** The plug that is chosen, also by one of its wires. */
export function chosenPlug(selection: Selection): PlugRef | undefined {
  return selection.kind === 'plug' || selection.kind === 'wire' ? selection.plug : undefined;
}

/** The page that shows what is chosen; undefined where any page does. */
export function pageOf(selection: Selection): DocumentPage | undefined {
  if (selection.kind === 'connector') return 'connector';
  return chosenPlug(selection) ? 'lead' : undefined;
}

/** The way of a run while it is chosen place by place: the paths so far, and those that a connector brings along. */
export interface WayDraft {
  /** The plug at the far end of the run. */
  readonly plug: PlugRef;
  readonly paths: readonly string[];
}

/** A plug in the hand: where it would go, before anything is changed. */
export interface Placing {
  readonly plug: PlugRef;
  /** The place under the pointer or the arrow keys; null while it is over nothing. */
  readonly candidate: Seat | null;
  readonly turn: Seat['turn'];
  /** A drag ends on release; a carried plug goes down with a click or Enter. */
  readonly by: 'drag' | 'carry';
}

/** A connector on its way over the board plan, before anything is changed. */
export interface Moving {
  readonly connector: string;
  readonly place: Place;
}

/** What a connector that is dragged over the plan snaps to: tenths of a millimetre, tenths of an inch, nothing. */
export const PLAN_STEPS = ['tenth-mm', 'tenth-inch', 'free'] as const;
export type PlanStep = (typeof PLAN_STEPS)[number];

/** What a press on the map does: choose and move what is there, or add something. */
export const TRAY_TOOLS = [
  'choose',
  'tie',
  'bend',
  'end',
  'opening',
  'bay',
  'supply',
  'standoff',
  'fan',
  'path',
] as const;
export type TrayTool = (typeof TRAY_TOOLS)[number];

/** Something of the tray on its way, before anything is changed; all as the sheet has it. */
export type TrayDraft =
  /** A place that is there, as it would be. */
  | { readonly kind: 'place'; readonly place: TrayPlace }
  /** One that would be added. */
  | { readonly kind: 'new'; readonly place: TrayPlace }
  | { readonly kind: 'board'; readonly board: BoardPlace }
  /** A path from a place to one that is still to be pointed at. */
  | { readonly kind: 'path'; readonly from: string };
