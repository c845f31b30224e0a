import { type RefObject, useLayoutEffect, useRef } from 'react';
import type { CanvasProps, Target } from './canvas-props';
import type { Bench } from './gestures/gesture';
import { followPlacing, type PlacingPointer } from './gestures/placing';
import { listenToPointer } from './gestures/pointer';
import type { HitIndex } from './hit-index';
import type { Point } from './scene/geometry';
import { toMm } from './view';
import type { ViewHandle } from './view-handle';

export interface BenchState {
  /** What the pointer is over. */
  readonly hovered: () => Target | null;
  /** Where the pointer is over the canvas while a plug is in the hand. */
  readonly pointer: () => Point | null;
}

/** Joins the gestures to the canvas. They read the newest properties and never cause a rendering. */
export function useBench(
  element: RefObject<HTMLElement | null>,
  view: ViewHandle | null,
  props: CanvasProps,
  hits: HitIndex,
  redrawTop: () => void,
): BenchState {
  const propsNow = useRef(props);
  const hitsNow = useRef(hits);
  const hovered = useRef<Target | null>(null);
  const follower = useRef<PlacingPointer | null>(null);
  const bench = useRef<Bench | null>(null);

  useLayoutEffect(() => {
    propsNow.current = props;
    hitsNow.current = hits;
  });

  useLayoutEffect(() => {
    const canvas = element.current;
    if (!canvas || !view) return;
    bench.current = {
      element: canvas,
      view,
      props: () => propsNow.current,
      targetAt: (screen) => hitsNow.current(toMm(view.now(), screen)),
      setCursor: (cursor) => {
        canvas.dataset.cursor = cursor;
      },
    };
    return listenToPointer(bench.current, (target) => {
      hovered.current = target;
      propsNow.current.onHover?.(target);
      redrawTop();
    });
  }, [element, view, redrawTop]);

  const { placing } = props;
  const inHand = placing && `${placing.plug.lead} ${placing.plug.plug} ${placing.by}`;
  useLayoutEffect(() => {
    if (inHand === null || !bench.current || !view) return;
    const following = followPlacing(bench.current, redrawTop);
    follower.current = following;
    return () => {
      following.stop();
      follower.current = null;
    };
  }, [inHand, view, redrawTop]);

  const turn = placing?.turn;
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a turn of the plug asks for another look
  useLayoutEffect(() => follower.current?.refresh(), [turn]);

  return { hovered: () => hovered.current, pointer: () => follower.current?.at() ?? null };
}
