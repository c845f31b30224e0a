import type Konva from 'konva/lib/Core';
import { type Ref, type RefObject, useCallback, useRef, useState } from 'react';
import type { CanvasProps, CanvasView } from './canvas-props';
import type { Palette } from './drawing/palette';
import { usePalette } from './use-palette';
import { usePixelRatio } from './use-pixel-ratio';
import { useSize } from './use-size';
import { useView, type WhileUntouched } from './use-view';
import type { SizePx } from './view';
import type { ViewHandle } from './view-handle';
import type { Viewed } from './viewed';

/** What a drawing stands on: its element, its stage, its colours and its view. */
export interface DrawingStage {
  readonly element: RefObject<HTMLDivElement | null>;
  readonly topLayer: RefObject<Konva.Layer | null>;
  readonly setStage: (stage: Konva.Stage | null) => void;
  readonly size: SizePx | null;
  readonly palette: Palette | null;
  readonly view: ViewHandle | null;
  readonly commands: CanvasView;
  /** Draws the upper layer again without a rendering. */
  readonly redrawTop: () => void;
}

/** Sets up the stage of a drawing; `DrawingLayers` shows it. */
export function useDrawingStage(
  viewed: Viewed,
  theme: CanvasProps['theme'],
  ref: Ref<CanvasView> | undefined,
  whileUntouched?: WhileUntouched,
): DrawingStage {
  const element = useRef<HTMLDivElement>(null);
  const topLayer = useRef<Konva.Layer | null>(null);
  const [stage, setStage] = useState<Konva.Stage | null>(null);
  const size = useSize(element);
  const palette = usePalette(element, theme);
  const { view, commands } = useView(stage, size, viewed, ref, whileUntouched);
  usePixelRatio(stage);
  const redrawTop = useCallback(() => {
    topLayer.current?.batchDraw();
  }, []);
  return { element, topLayer, setStage, size, palette, view, commands, redrawTop };
}
