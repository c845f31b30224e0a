import { type Ref, useCallback, useMemo } from 'react';
import { seatOf } from '../../boards/document/lookup';
import { measureByTable } from '../../boards/drawing/measure';
import { BesideLabel } from './beside-label';
import { boardWords } from './board-words';
import type { CanvasProps, CanvasView } from './canvas-props';
import { drawGround } from './drawing/draw-ground';
import { drawConnectors, drawWiring } from './drawing/draw-layers';
import { dangerContacts, drawDangers, drawDangerWords, drawLive } from './drawing/draw-live';
import { drawMarks, worstMarks } from './drawing/draw-marks';
import { drawAnchors, drawGhost, drawInHand } from './drawing/draw-placing';
import { drawPlanned } from './drawing/draw-planned';
import { drawHover, drawSelection } from './drawing/draw-selection';
import { drawSuspected } from './drawing/draw-suspected';
import type { Pen } from './drawing/pen';
import { DrawingLayers } from './drawing-layers';
import { FitLabel } from './fit-label';
import { anchorsOf, ghostOf, looseOutline, placesFor } from './in-hand';
import { sceneOf } from './scene/scene-of';
import { useBench } from './use-bench';
import { useDrawingStage } from './use-drawing-stage';
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
  const {
    build,
    live,
    marks,
    placing,
    planned,
    selection,
    suspected = null,
    fitsAgain = false,
    theme,
  } = props;

  const scene = useMemo(() => sceneOf(build, { view: build.view, measure: measureByTable }), [build]);
  const worst = useMemo(() => worstMarks(marks), [marks]);
  const dangers = useMemo(() => dangerContacts(scene, worst), [scene, worst]);
  const viewed = useMemo(() => viewedScene(scene), [scene]);
  const stage = useDrawingStage(viewed, theme, ref, fitsAgain ? 'fit again' : 'keep the scale');
  const bench = useBench({ ...stage, props, scene });

  const inHand = placing?.plug ?? null;
  const candidate = placing?.candidate ?? null;
  const turn = placing?.turn ?? 0;
  const ghost = useMemo(() => ghostOf(scene, candidate), [scene, candidate]);
  const plannedGhost = useMemo(() => ghostOf(scene, planned), [scene, planned]);
  const suspectedGhosts = useMemo(
    () => suspected?.seats.flatMap((seat) => ghostOf(scene, seat) ?? []) ?? [],
    [scene, suspected],
  );
  const suspectedAround = useMemo(() => {
    const on =
      suspected?.seats[0]?.connector ?? (suspected?.off[0] && seatOf(build, suspected.off[0])?.connector);
    return on === undefined ? undefined : viewed.around([on]);
  }, [build, viewed, suspected]);
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
    if (suspected) drawSuspected(pen, scene, suspectedGhosts, suspected.off);
    drawDangerWords(pen, scene, dangers);
    if (!placing) {
      if (plannedGhost) drawPlanned(pen, scene, plannedGhost);
      drawHover(pen, scene, bench.hovered());
      return;
    }
    drawAnchors(pen, anchors);
    const pointer = bench.pointer();
    if (ghost) drawGhost(pen, ghost.shape, ghost.fit);
    else if (pointer && stage.view) {
      const outline = looseOutline(scene, placing, toMm(stage.view.now(), pointer));
      if (outline) drawInHand(pen, outline);
    }
  };

  return (
    <DrawingLayers
      on={stage}
      label={boardWords(build, marks, suspected)}
      name="board"
      ground={board}
      top={top}
    >
      {suspected && suspectedAround && stage.view && (
        <BesideLabel lines={[suspected.label]} around={suspectedAround} view={stage.view} kind="suspected" />
      )}
      {ghost && stage.view && <FitLabel build={build} ghost={ghost} view={stage.view} />}
    </DrawingLayers>
  );
}
