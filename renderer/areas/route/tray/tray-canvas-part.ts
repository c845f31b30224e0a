import type { Ref } from 'react';
import type { CanvasView } from '../../../canvas/canvas-props';
import type { TrayProps } from '../../../canvas/tray/tray-props';
import { fetched } from '../../../fetched';

/** The map's drawing, with the library that it is drawn by. */
export const TRAY_CANVAS = fetched<TrayProps & { readonly ref?: Ref<CanvasView> }>(() =>
  import('../../../canvas/tray/tray-canvas').then(({ TrayCanvas }) => TrayCanvas),
);
