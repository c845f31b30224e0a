import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { Tray, TraySide } from '../../../boards/document/tray';
import type { Selection } from '../../store/session';
import type { CanvasProps } from '../canvas-props';
import type { TrayTarget } from './tray-hits';

/** The map shows and reports; it changes nothing by itself. */
export interface TrayProps extends Pick<CanvasProps, 'theme' | 'onHover'> {
  /** Whose tray it is: that of another build is fitted anew. */
  readonly build: string;
  /** As the sheet has it, or as it would be while something is on its way. */
  readonly tray: Tray;
  readonly board: BoardSheet;
  readonly side: TraySide;
  readonly selection: Selection;
  /** What the picture shows, in a sentence. */
  readonly label: string;
  readonly onChoose: (target: TrayTarget | null) => void;
}
