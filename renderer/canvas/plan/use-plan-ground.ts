import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react';
import type { CanvasView, Target } from '../canvas-props';
import type { Ground } from '../gestures/gesture';
import { listenToPointer } from '../gestures/pointer';
import { hitIndex } from '../hit-index';
import type { Scene } from '../scene/scene';
import { toMm } from '../view';
import type { ViewHandle } from '../view-handle';
import { dragConnector, type PlanGround } from './drag-connector';
import type { PlanProps } from './plan-props';

interface PlanParts {
  readonly element: RefObject<HTMLElement | null>;
  readonly view: ViewHandle | null;
  readonly commands: CanvasView;
  readonly props: PlanProps;
  readonly scene: Scene;
  readonly redrawTop: () => void;
}

/** The plan shows no plugs. */
const BARE = { flags: false, wireReachMm: null } as const;

/** Joins the gestures to the plan; gives what the pointer is over. They never cause a rendering. */
export function usePlanGround({ element, view, commands, props, scene, redrawTop }: PlanParts) {
  const hits = useMemo(() => hitIndex(scene), [scene]);
  const now = useRef({ props, hits });
  const hovered = useRef<Target | null>(null);

  useLayoutEffect(() => {
    now.current = { props, hits };
  });

  useLayoutEffect(() => {
    const canvas = element.current;
    if (!canvas || !view) return;
    const ground: Ground & PlanGround = {
      element: canvas,
      view,
      props: () => now.current.props,
      targetAt: (screen) => asConnector(now.current.hits(toMm(view.now(), screen), BARE)),
      setCursor: (cursor) => {
        canvas.dataset.cursor = cursor;
      },
      cursorOver: (target) => (target ? 'grab' : 'default'),
      begin: (down) => dragConnector(ground, down),
      twice: (target) => {
        if (target?.kind === 'connector') now.current.props.onOpen(target.connector);
        else commands.fitAll();
      },
    };
    return listenToPointer(ground, (target) => {
      hovered.current = target;
      now.current.props.onHover?.(target);
      redrawTop();
    });
  }, [element, view, commands, redrawTop]);

  return { hovered: () => hovered.current };
}

/** On the plan a connector is one thing, whichever of its pins is met. */
function asConnector(target: Target | null): Target | null {
  return target?.kind === 'pin' ? { kind: 'connector', connector: target.pin.connector } : target;
}
