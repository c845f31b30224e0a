import type { Ref } from 'react';
import type { CanvasView } from '../../../canvas/canvas-props';
import type { PlanProps } from '../../../canvas/plan/plan-props';
import { fetched } from '../../../fetched';

/** The plan's drawing, with the library that it is drawn by. */
export const PLAN_CANVAS = fetched<PlanProps & { readonly ref?: Ref<CanvasView> }>(() =>
  import('../../../canvas/plan/plan-canvas').then(({ PlanCanvas }) => PlanCanvas),
);
