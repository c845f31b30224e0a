import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react';
import { samePlug } from '../../boards/document/lookup';
import type { Point } from '../../boards/drawing/geometry';
import type { CanvasProps, CanvasView, Target } from './canvas-props';
import { flagsNeeded, wiresNeeded } from './drawing/far-labels';
import type { Bench } from './gestures/gesture';
import { followPlacing, type PlacingPointer } from './gestures/placing';
import { listenToPointer } from './gestures/pointer';
import { press } from './gestures/press';
import { putDown } from './gestures/put-down';
import { hitIndex } from './hit-index';
import type { Scene } from './scene/scene';
import { toMm } from './view';
import type { ViewHandle } from './view-handle';

/** How far beside a wire a click still means it. */
const WIRE_REACH_PX = 4;

export interface BenchState {
  /** What the pointer is over. */
  readonly hovered: () => Target | null;
  /** Where the pointer is over the canvas while a plug is in the hand. */
  readonly pointer: () => Point | null;
}

interface BenchParts {
  readonly element: RefObject<HTMLElement | null>;
  readonly view: ViewHandle | null;
  readonly commands: CanvasView;
  readonly props: CanvasProps;
  readonly scene: Scene;
  readonly redrawTop: () => void;
}

/** Joins the gestures to the canvas. They read the newest properties and never cause a rendering. */
export function useBench({ element, view, commands, props, scene, redrawTop }: BenchParts): BenchState {
  const hits = useMemo(() => hitIndex(scene), [scene]);
  const now = useRef({ props, scene, hits });
  const hovered = useRef<Target | null>(null);
  const follower = useRef<PlacingPointer | null>(null);
  const bench = useRef<Bench | null>(null);

  useLayoutEffect(() => {
    now.current = { props, scene, hits };
  });

  useLayoutEffect(() => {
    const canvas = element.current;
    if (!canvas || !view) return;
    const wired: Bench = {
      element: canvas,
      view,
      props: () => now.current.props,
      targetAt: (screen) => {
        const { scale } = view.now();
        const wireReachMm = wiresNeeded(scale) ? WIRE_REACH_PX / scale : null;
        return now.current.hits(toMm(view.now(), screen), { flags: flagsNeeded(scale), wireReachMm });
      },
      setCursor: (cursor) => {
        canvas.dataset.cursor = cursor;
      },
      cursorOver: (target) => {
        if (now.current.props.placing) return 'grabbing';
        return target?.kind === 'plug' ? 'grab' : target ? 'pointer' : 'default';
      },
      begin: (down) => {
        const carried = now.current.props.placing?.by === 'carry';
        return carried ? putDown(wired, down) : press(wired, down);
      },
      twice: (target) => {
        if (now.current.props.placing) return;
        const connector = target && connectorUnder(now.current.scene, target);
        if (connector) commands.show([connector]);
        else commands.fitAll();
      },
    };
    bench.current = wired;
    return listenToPointer(wired, (target) => {
      hovered.current = target;
      now.current.props.onHover?.(target);
      redrawTop();
    });
  }, [element, view, commands, redrawTop]);

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

/** The connector that a target is, lies on, or sits on. */
function connectorUnder(scene: Scene, target: Target): string | undefined {
  switch (target.kind) {
    case 'connector':
      return target.connector;
    case 'pin':
      return target.pin.connector;
    case 'plug':
    case 'wire':
      return scene.plugs.find(({ ref }) => samePlug(ref, target.plug))?.connector;
  }
}
