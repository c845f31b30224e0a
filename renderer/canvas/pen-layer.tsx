import type Konva from 'konva/lib/Core';
import { type RefObject, useCallback } from 'react';
import { Layer, Shape } from 'react-konva/es/ReactKonvaCore';
import type { Palette } from './drawing/palette';
import type { Pen } from './drawing/pen';
import { windowOf } from './view';

interface PenLayerProps {
  readonly palette: Palette;
  readonly draw: (pen: Pen) => void;
  readonly name: string;
  readonly layer?: RefObject<Konva.Layer | null>;
}

/**
 * A layer that is one shape. Konva keeps it in step with the stage; what is drawn, and what of it is
 * near enough to be worth drawing, is decided by plain functions on the context.
 */
export function PenLayer({ palette, draw, name, layer }: PenLayerProps) {
  const scene = useCallback(
    (konva: Konva.Context, shape: Konva.Shape) => {
      const stage = shape.getStage();
      if (!stage) return;
      const view = { scale: stage.scaleX(), x: stage.x(), y: stage.y() };
      const window = windowOf(view, { width: stage.width(), height: stage.height() });
      const context = konva._context;
      context.save();
      draw({ context, scale: view.scale, window, palette });
      context.restore();
    },
    [draw, palette],
  );
  return (
    <Layer listening={false} {...(layer ? { ref: layer } : {})}>
      <Shape name={name} listening={false} perfectDrawEnabled={false} sceneFunc={scene} />
    </Layer>
  );
}
