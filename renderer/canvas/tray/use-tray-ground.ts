import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react';
import type { Point } from '../../../boards/drawing/geometry';
import type { CanvasView, Target } from '../canvas-props';
import { type Gesture, type Ground, SLACK_PX } from '../gestures/gesture';
import { pan } from '../gestures/pan';
import { listenToPointer } from '../gestures/pointer';
import { toMm } from '../view';
import type { ViewHandle } from '../view-handle';
import { type TrayTarget, trayHits } from './tray-hits';
import type { TrayProps } from './tray-props';
import type { TrayScene } from './tray-scene';

/** So many pixels beside a sign or a path it is still met. */
const REACH_PX = 5;

interface TrayParts {
  readonly element: RefObject<HTMLElement | null>;
  readonly view: ViewHandle | null;
  readonly commands: CanvasView;
  readonly props: TrayProps;
  readonly scene: TrayScene;
  readonly redrawTop: () => void;
}

/** Joins the gestures to the map; gives what the pointer is over. They never cause a rendering. */
export function useTrayGround({ element, view, commands, props, scene, redrawTop }: TrayParts) {
  const hits = useMemo(() => trayHits(scene), [scene]);
  const now = useRef({ props, hits });
  const hovered = useRef<TrayTarget | null>(null);

  useLayoutEffect(() => {
    now.current = { props, hits };
  });

  useLayoutEffect(() => {
    const canvas = element.current;
    if (!canvas || !view) return;
    const targetAt = (screen: Point) =>
      now.current.hits(toMm(view.now(), screen), REACH_PX / view.now().scale);
    const ground: Ground = {
      element: canvas,
      view,
      targetAt,
      setCursor: (cursor) => {
        canvas.dataset.cursor = cursor;
      },
      cursorOver: (target) => (target ? 'pointer' : 'default'),
      begin: (down) => choose(ground, down, () => now.current.props.onChoose(targetAt(down))),
      twice: (target) => {
        if (target === null) commands.fitAll();
      },
    };
    return listenToPointer(ground, (target: Target | null) => {
      hovered.current = target?.kind === 'on-tray' || target?.kind === 'connector' ? target : null;
      now.current.props.onHover?.(target);
      redrawTop();
    });
  }, [element, view, commands, redrawTop]);

  return { hovered: () => hovered.current };
}

/** A press let go in place chooses; moved on, the ground follows. */
function choose(ground: Ground, down: Point, done: () => void): Gesture {
  let panning: Gesture | null = null;
  return {
    move: (at) => {
      if (!panning && Math.hypot(at.x - down.x, at.y - down.y) > SLACK_PX) panning = pan(ground, down);
      panning?.move(at);
    },
    up: (at) => (panning ? panning.up(at) : done()),
    cancel: () => panning?.cancel(),
  };
}
