import { type Ref, useCallback, useMemo } from 'react';
import type { CanvasView } from '../canvas-props';
import type { Pen } from '../drawing/pen';
import { DrawingLayers } from '../drawing-layers';
import { useDrawingStage } from '../use-drawing-stage';
import { pathsOfLaying } from './cable-shapes';
import { draftedTray } from './drafted';
import { drawChosenCable } from './draw-cables';
import { drawChosen, drawChosenConnector, drawChosenPath, drawPointed } from './draw-chosen';
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
  const shown = useMemo(() => draftedTray(tray, draft), [tray, draft]);
  const resting = useMemo(() => traySceneOf(tray, board, side, cables), [tray, board, side, cables]);
  const scene = useMemo(
    () => (shown === tray ? resting : traySceneOf(shown, board, side, cables)),
    [shown, tray, resting, board, side, cables],
  );
  const lines = useMemo(() => {
    if (way === null || cables === null) return null;
    const { laying } = cables.laid;
    const fromOf = new Map(laying.paths.map(({ id, from }) => [id, from]));
    return wayLines(way, pathsOfLaying(laying, shown, scene.look), fromOf);
  }, [way, cables, shown, scene]);
  const viewed = useMemo(() => viewedTray(build, scene), [build, scene]);
  const stage = useDrawingStage(viewed, theme, ref, 'fit again');
  const pointed = useTrayGround({ ...stage, props, scene });

  const ground = useCallback((pen: Pen) => drawTray(pen, scene), [scene]);
  const top = (pen: Pen) => {
    const part = selection.kind === 'on-tray' && draft?.kind !== 'new' ? selection.part : null;
    if (part) drawChosenPath(pen, scene, part);
    if (lines) drawWay(pen, lines);
    else if (selection.kind === 'plug') drawChosenCable(pen, scene.cables, selection.plug);
    // Over every line, also over the one that is chosen.
    drawNames(pen, scene, resting);
    drawDraft(pen, scene, tray, draft, pointed.hovered());
    if (draft?.kind === 'new') return;
    if (part) drawChosen(pen, scene, part);
    if (selection.kind === 'connector') drawChosenConnector(pen, scene, selection.connector);
    const area = chosenArea({ selection, tray: shown });
    if (area) drawHandles(pen, rectFromSide(scene.look, area.area));
    const target = pointed.hovered();
    if (target && draft === null) drawPointed(pen, scene, target);
  };

  return <DrawingLayers on={stage} label={label} name="tray" ground={ground} top={top} />;
}
