import './canvas.css';
import type { ReactNode } from 'react';
import { Stage } from 'react-konva/es/ReactKonvaCore';
import type { Pen } from './drawing/pen';
import { PenLayer } from './pen-layer';
import type { DrawingStage } from './use-drawing-stage';

interface DrawingLayersProps {
  readonly on: DrawingStage;
  /** What the picture shows, in a sentence. */
  readonly label: string;
  /** Of the lower layer. */
  readonly name: string;
  readonly ground: (pen: Pen) => void;
  readonly top: (pen: Pen) => void;
  /** Over the drawing. */
  readonly children?: ReactNode;
}

/** A drawing in two layers: the ground, drawn anew when it changes, and over it what follows the pointer. */
export function DrawingLayers({ on, label, name, ground, top, children }: DrawingLayersProps) {
  const { element, topLayer, setStage, size, palette } = on;
  return (
    <div ref={element} className="board-canvas" role="img" aria-label={label}>
      {size && palette && (
        <Stage
          ref={setStage}
          className="board-canvas-stage"
          width={size.width}
          height={size.height}
          listening={false}
        >
          <PenLayer name={name} palette={palette} draw={ground} />
          <PenLayer name="top" palette={palette} draw={top} layer={topLayer} />
        </Stage>
      )}
      {children}
    </div>
  );
}
