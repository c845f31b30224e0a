import './canvas.css';
import type Konva from 'konva/lib/Core';
import { type Ref, useCallback, useMemo, useRef, useState } from 'react';
import { Stage } from 'react-konva/es/ReactKonvaCore';
import { measureByTable } from '../../boards/drawing/measure';
import { boardWords } from './board-words';
import type { CanvasProps, CanvasView } from './canvas-props';
import { drawGround } from './drawing/draw-ground';
import { drawConnectors, drawWiring } from './drawing/draw-layers';
import { dangerContacts, drawDangers, drawDangerWords, drawLive } from './drawing/draw-live';
import { drawMarks, worstMarks } from './drawing/draw-marks';
import { drawAnchors, drawGhost, drawInHand } from './drawing/draw-placing';
import { drawPlanned } from './drawing/draw-planned';
import { drawHover, drawSelection } from './drawing/draw-selection';
import type { Pen } from './drawing/pen';
import { FitLabel } from './fit-label';
import { anchorsOf, ghostOf, looseOutline, placesFor } from './in-hand';
import { PenLayer } from './pen-layer';
import { sceneOf } from './scene/scene-of';
import { useBench } from './use-bench';
import { usePalette } from './use-palette';
import { usePixelRatio } from './use-pixel-ratio';
import { useSize } from './use-size';
import { useView } from './use-view';
import { toMm } from './view';
import { viewedScene } from './viewed';

interface BoardCanvasProps extends CanvasProps {
  readonly ref?: Ref<CanvasView>;
}

/**
 * The board with all that is wired on it. It shows and reports, and changes nothing. For assistive
 * technology it is one picture with a summary: the equal way is the list beside it.
 */
export function BoardCanvas({ ref, ...props }: BoardCanvasProps) {
  const { build, live, marks, placing, planned, selection, theme } = props;
  const wrapper = useRef<HTMLDivElement>(null);
  const topLayer = useRef<Konva.Layer | null>(null);
  const [stage, setStage] = useState<Konva.Stage | null>(null);
  const size = useSize(wrapper);
  const palette = usePalette(wrapper, theme);

  const scene = useMemo(() => sceneOf(build, { view: build.view, measure: measureByTable }), [build]);
  const worst = useMemo(() => worstMarks(marks), [marks]);
  const dangers = useMemo(() => dangerContacts(scene, worst), [scene, worst]);
  const viewed = useMemo(() => viewedScene(scene), [scene]);
  const { view, commands } = useView(stage, size, viewed, ref);
  usePixelRatio(stage);
  const redrawTop = useCallback(() => {
    topLayer.current?.batchDraw();
  }, []);
  const bench = useBench({ element: wrapper, view, commands, props, scene, redrawTop });

  const inHand = placing?.plug ?? null;
  const candidate = placing?.candidate ?? null;
  const turn = placing?.turn ?? 0;
  const ghost = useMemo(() => ghostOf(scene, candidate), [scene, candidate]);
  const plannedGhost = useMemo(() => ghostOf(scene, planned), [scene, planned]);
  const places = useMemo(() => (inHand ? placesFor(build, inHand) : []), [build, inHand]);
  const anchors = useMemo(() => anchorsOf(scene, places, turn), [scene, places, turn]);

  const board = useCallback(
    (pen: Pen) => {
      drawGround(pen, scene);
      drawConnectors(pen, scene);
      drawWiring(pen, scene, worst, inHand);
    },
    [scene, worst, inHand],
  );
  const top = (pen: Pen) => {
    drawDangers(pen, scene, dangers);
    if (live) drawLive(pen, scene, live);
    drawMarks(pen, scene, worst);
    drawSelection(pen, scene, selection);
    drawDangerWords(pen, scene, dangers);
    if (!placing) {
      if (plannedGhost) drawPlanned(pen, scene, plannedGhost);
      drawHover(pen, scene, bench.hovered());
      return;
    }
    drawAnchors(pen, anchors);
    const pointer = bench.pointer();
    if (ghost) drawGhost(pen, ghost.shape, ghost.fit);
    else if (pointer && view) {
      const outline = looseOutline(scene, placing, toMm(view.now(), pointer));
      if (outline) drawInHand(pen, outline);
    }
  };

  return (
    <div ref={wrapper} className="board-canvas" role="img" aria-label={boardWords(build, marks)}>
      {size && palette && (
        <Stage
          ref={setStage}
          className="board-canvas-stage"
          width={size.width}
          height={size.height}
          listening={false}
        >
          <PenLayer name="board" palette={palette} draw={board} />
          <PenLayer name="top" palette={palette} draw={top} layer={topLayer} />
        </Stage>
      )}
      {ghost && view && <FitLabel build={build} ghost={ghost} view={view} />}
    </div>
  );
}
