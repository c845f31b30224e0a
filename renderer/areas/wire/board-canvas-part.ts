import type { Ref } from 'react';
import type { CanvasProps, CanvasView } from '../../canvas/canvas-props';
import { fetched } from '../../fetched';

/** The drawing, with the library that it is drawn by. */
export const BOARD_CANVAS = fetched<CanvasProps & { readonly ref?: Ref<CanvasView> }>(() =>
  import('../../canvas/board-canvas').then(({ BoardCanvas }) => BoardCanvas),
);
