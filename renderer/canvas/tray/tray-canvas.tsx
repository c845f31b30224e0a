import '../canvas.css';
import type Konva from 'konva/lib/Core';
import { type Ref, useCallback, useMemo, useRef, useState } from 'react';
import { Stage } from 'react-konva/es/ReactKonvaCore';
import type { CanvasView } from '../canvas-props';
import type { Pen } from '../drawing/pen';
import { PenLayer } from '../pen-layer';
import { usePalette } from '../use-palette';
import { usePixelRatio } from '../use-pixel-ratio';
import { useSize } from '../use-size';
import { useView } from '../use-view';
import { pathsOfLaying } from './cable-shapes';
import { draftedTray } from './drafted';
import { drawChosenCable } from './draw-cables';
import { drawChosen, drawChosenConnector, drawPointed } from './draw-chosen';
import { drawDraft, drawHandles } from './draw-draft';
import { drawNames, drawTray } from './draw-tray';
import { drawWay, wayLines } from './draw-way';
import { chosenArea } from './gestures/choose-part';
import { rectFromSide } from './tray-look';
import type { TrayProps } from './tray-props';
import { traySceneOf } from './tray-scene';
import { useTrayGround } from './use-tray-ground';
import { viewedTray } from './viewed-tray';

interface TrayCanvasProps extends TrayProps {
  readonly ref?: Ref<CanvasView>;
}

/**
 * The tray of a case with the board at its place. For assistive technology it is one picture with a summary:
 * the shelf, the keys and the forms are the equal way.
 */
export function TrayCanvas({ ref, ...props }: TrayCanvasProps) {
  const { build, tray, board, side, cables, way, selection, draft, theme, label } = props;
  const wrapper = useRef<HTMLDivElement>(null);
  const topLayer = useRef<Konva.Layer | null>(null);
  const [stage, setStage] = useState<Konva.Stage | null>(null);
  const size = useSize(wrapper);
  const palette = usePalette(wrapper, theme);
  const shown = useMemo(() => draftedTray(tray, draft), [tray, draft]);
  const scene = useMemo(() => traySceneOf(shown, board, side, cables), [shown, board, side, cables]);
  const lines = useMemo(() => {
    if (way === null || cables === null) return null;
    const { laying } = cables.laid;
    const fromOf = new Map(laying.paths.map(({ id, from }) => [id, from]));
    return wayLines(way, pathsOfLaying(laying, shown, scene.look), fromOf);
  }, [way, cables, shown, scene]);
  const viewed = useMemo(() => viewedTray(build, scene), [build, scene]);
  const { view, commands } = useView(stage, size, viewed, ref, 'fit again');
  usePixelRatio(stage);
  const redrawTop = useCallback(() => {
    topLayer.current?.batchDraw();
  }, []);
  const pointed = useTrayGround({ element: wrapper, view, commands, props, scene, redrawTop });

  const ground = useCallback(
    (pen: Pen) => {
      drawTray(pen, scene);
      drawNames(pen, scene);
    },
    [scene],
  );
  const top = (pen: Pen) => {
    drawDraft(pen, scene, tray, draft, pointed.hovered());
    if (draft?.kind === 'new') return;
    if (selection.kind === 'on-tray') drawChosen(pen, scene, selection.part);
    if (lines) drawWay(pen, lines);
    else if (selection.kind === 'plug') drawChosenCable(pen, scene.cables, selection.plug);
    if (selection.kind === 'connector') drawChosenConnector(pen, scene, selection.connector);
    const area = chosenArea({ selection, tray: shown });
    if (area) drawHandles(pen, rectFromSide(scene.look, area.area));
    const target = pointed.hovered();
    if (target && draft === null) drawPointed(pen, scene, target);
  };

  return (
    <div ref={wrapper} className="board-canvas" role="img" aria-label={label}>
      {size && palette && (
        <Stage
          ref={setStage}
          className="board-canvas-stage"
          width={size.width}
          height={size.height}
          listening={false}
        >
          <PenLayer name="tray" palette={palette} draw={ground} />
          <PenLayer name="top" palette={palette} draw={top} layer={topLayer} />
        </Stage>
      )}
    </div>
  );
}
