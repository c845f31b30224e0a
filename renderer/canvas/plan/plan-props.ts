import type { Build } from '../../../boards/document/build';
import type { BoardRemark } from '../../../boards/fit/board-remarks';
import type { Moving, PlanStep } from '../../store/session';
import type { CanvasProps } from '../canvas-props';

/** The board plan shows and reports; it changes nothing by itself. */
export interface PlanProps extends Pick<CanvasProps, 'theme' | 'onHover'> {
  readonly build: Build;
  /** The id of the chosen connector. */
  readonly chosen: string | null;
  readonly moving: Moving | null;
  readonly step: PlanStep;
  /** What is drawn with a broken line, for it cannot be so. */
  readonly remarks: readonly BoardRemark[];
  readonly onChoose: (connector: string | null) => void;
  /** Pressed twice. */
  readonly onOpen: (connector: string) => void;
  /** The connector that is dragged would stand there; null when the drag is dropped. */
  readonly onMove: (moving: Moving | null) => void;
  /** The dragged connector is let go. */
  readonly onDrop: () => void;
}
