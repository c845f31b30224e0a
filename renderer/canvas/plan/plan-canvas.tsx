import { type Ref, useCallback, useMemo } from 'react';
import { connectorOf } from '../../../boards/document/lookup';
import { USUAL_ROOMS } from '../../../boards/drawing/block';
import { measureByTable } from '../../../boards/drawing/measure';
import { boardWords } from '../board-words';
import type { CanvasView } from '../canvas-props';
import { drawBlock } from '../drawing/draw-block';
import { drawGround } from '../drawing/draw-ground';
import { drawConnectors, drawWiring } from '../drawing/draw-layers';
import { worstMarks } from '../drawing/draw-marks';
import { drawHover, drawSelection } from '../drawing/draw-selection';
import type { Pen } from '../drawing/pen';
import { DrawingLayers } from '../drawing-layers';
import { rememberedBlock } from '../scene/block-memo';
import { useDrawingStage } from '../use-drawing-stage';
import { viewedScene } from '../viewed';
import { drawDistances, drawGuides, drawLeftPlace, drawRemarked } from './draw-plan';
import type { PlanProps } from './plan-props';
import { PLAN_VIEW, planScene, remarkedRects } from './plan-scene';
import { guidesAt } from './snap';
import { usePlanGround } from './use-plan-ground';

interface PlanCanvasProps extends PlanProps {
  readonly ref?: Ref<CanvasView>;
}

const NO_MARKS = worstMarks([]);

/**
 * The board as its manual draws it, unturned and without leads, for connectors to be placed on. For
 * assistive technology it is one picture with a summary: the keys, the fields below it and the shelf
 * are the equal way.
 */
export function PlanCanvas({ ref, ...props }: PlanCanvasProps) {
  const { build, chosen, moving, remarks, theme } = props;

  const { board, id } = build;
  const scene = useMemo(() => planScene(id, board), [id, board]);
  const viewed = useMemo(() => viewedScene(scene), [scene]);
  const stage = useDrawingStage(viewed, theme, ref, 'fit again');
  const pointed = usePlanGround({ ...stage, props, scene });

  const connector = moving ? connectorOf(board, moving.connector) : undefined;
  const onItsWay = useMemo(() => {
    if (!moving || !connector) return null;
    const block = rememberedBlock(
      { ...connector, place: moving.place },
      PLAN_VIEW,
      USUAL_ROOMS,
      measureByTable,
    );
    return { block, guides: guidesAt(board, connector, moving.place) };
  }, [moving, connector, board]);
  const remarked = useMemo(() => remarkedRects(scene, remarks), [scene, remarks]);

  const ground = useCallback(
    (pen: Pen) => {
      drawGround(pen, scene);
      drawConnectors(pen, scene);
      drawWiring(pen, scene, NO_MARKS, null);
    },
    [scene],
  );
  const top = (pen: Pen) => {
    if (onItsWay && moving) {
      const from = scene.blocks.find((block) => block.connector.id === moving.connector);
      if (from) drawLeftPlace(pen, from.shell);
      drawGuides(pen, onItsWay.guides);
      drawDistances(pen, onItsWay.block, board.outline.widthMm / 2);
      drawBlock(pen, onItsWay.block);
      drawSelection(
        pen,
        { ...scene, blocks: [onItsWay.block] },
        {
          kind: 'connector',
          connector: moving.connector,
        },
      );
      return;
    }
    drawRemarked(pen, remarked);
    if (chosen !== null) drawSelection(pen, scene, { kind: 'connector', connector: chosen });
    drawHover(pen, scene, pointed.hovered());
  };

  return (
    <DrawingLayers on={stage} label={boardWords(scene.build, [])} name="plan" ground={ground} top={top} />
  );
}
