import type { Build, Seat } from '../../boards/document/build';
import type { PinRef, PlugRef } from '../../boards/document/lookup';
import type { Severity } from '../../boards/findings/finding';
import type { Hovered, Placing, Selection } from '../store/session';

/** What lies under the pointer. */
export type Target = Hovered;

/** The worst finding that concerns a pin or a seated plug, to be marked on the drawing. */
export interface Mark {
  readonly severity: Severity;
  readonly pins: readonly PinRef[];
  readonly leads: readonly string[];
}

/** A contact of a plug, by its hole. */
export interface Contact {
  readonly plug: PlugRef;
  readonly hole: string;
}

/** What the chosen current goes through, to be marked on the drawing. */
export interface Live {
  readonly contacts: readonly Contact[];
  readonly pins: readonly PinRef[];
}

/** Where plugs may sit instead of where they are written down, drawn dashed beside that. */
export interface Suspected {
  readonly seats: readonly Seat[];
  /** Plugs that may be off their pins. */
  readonly off: readonly PlugRef[];
  /** What the dashes mean, in a few words. */
  readonly label: string;
  /** The same in full, for whoever does not see the drawing. */
  readonly words: string;
}

/** The canvas shows and reports; it changes nothing by itself. */
export interface CanvasProps {
  readonly build: Build;
  readonly marks: readonly Mark[];
  readonly live: Live | null;
  readonly selection: Selection;
  readonly placing: Placing | null;
  /** A seat of the best seating, drawn beside the one of now. */
  readonly planned: Seat | null;
  readonly suspected?: Suspected | null;
  /** Whether a view that nobody has moved is fitted again when the canvas gets another size. */
  readonly fitsAgain?: boolean;
  readonly theme: 'light' | 'dark' | 'forced';
  readonly reducedMotion: boolean;
  readonly onSelect: (target: Target | null) => void;
  /** What the pointer is over has changed; told in words in the strip. */
  readonly onHover?: (target: Target | null) => void;
  /** The person starts to drag a seated plug. */
  readonly onGrab: (plug: PlugRef) => void;
  /** The place that a plug in the hand is over has changed. */
  readonly onCandidate: (candidate: Seat | null) => void;
  /** The plug in the hand is let go on the canvas: on its candidate, or beside everything. */
  readonly onRelease: () => void;
}

/** What buttons, keys and other panels may ask of the canvas; the view is no React state. */
export interface CanvasView {
  readonly zoomBy: (factor: number) => void;
  readonly fitAll: () => void;
  /** Brings connectors into view, and close enough to read their pins. */
  readonly show: (connectors: readonly string[]) => void;
  /** The same, but whoever chose the scale keeps it. */
  readonly bring: (connectors: readonly string[]) => void;
  readonly panBy: (dxPx: number, dyPx: number) => void;
}
