import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Tray, TraySide } from '../../../boards/document/tray';
import type { TrayPlace } from '../../../boards/document/tray-places';
import type { Point } from '../../../boards/drawing/geometry';
import type { Selection, TrayDraft, TrayTool } from '../../store/session';
import type { CanvasProps } from '../canvas-props';
import type { TrayTarget } from './tray-hits';
import type { ShownCables } from './tray-scene';

/** The way of a cable that is being chosen place by place. */
export interface WayShown {
  /** Ids of the paths so far, from the near end on. */
  readonly paths: readonly string[];
  /** Ids of the paths by which it can go on. */
  readonly next: readonly string[];
  /** Where it has come to. */
  readonly at: string;
}

/** The map shows and reports; it changes nothing by itself. */
export interface TrayProps extends Pick<CanvasProps, 'theme' | 'onHover'> {
  /** Whose tray it is: that of another build is fitted anew. */
  readonly build: string;
  readonly tray: Tray;
  readonly board: BoardSheet;
  readonly side: TraySide;
  readonly cables: ShownCables | null;
  readonly way: WayShown | null;
  readonly selection: Selection;
  /** What a press does. */
  readonly tool: TrayTool;
  readonly draft: TrayDraft | null;
  /** What the picture shows, in a sentence. */
  readonly label: string;
  readonly onChoose: (target: TrayTarget | null) => void;
  /**
   * A place as a tool makes it, at a point of the sheet or over a rectangle between two; null where there can
   * be no more.
   */
  readonly makePlace: (tool: TrayTool, from: Point, to: Point | null) => TrayPlace | null;
  /** What is dragged or drawn would be so; null when it is dropped. */
  readonly onDraft: (draft: TrayDraft | null) => void;
  /** What is dragged or drawn is let go. */
  readonly onDrop: () => void;
  /** A path has been drawn between two places. */
  readonly onPath: (from: string, to: string) => void;
}
