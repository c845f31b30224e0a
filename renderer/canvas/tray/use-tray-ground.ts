import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react';
import type { Point } from '../../../boards/drawing/geometry';
import type { CanvasView, Target } from '../canvas-props';
import type { Cursor, Gesture, Ground } from '../gestures/gesture';
import { listenToPointer } from '../gestures/pointer';
import { toMm } from '../view';
import type { ViewHandle } from '../view-handle';
import { addPlace } from './gestures/add-place';
import { choosePart, handleOfChosen } from './gestures/choose-part';
import { drawPath, stationOf } from './gestures/draw-path';
import type { TrayBench } from './gestures/tray-bench';
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
    const bench: TrayBench = {
      view,
      targetAt,
      setCursor: (cursor) => {
        canvas.dataset.cursor = cursor;
      },
      props: () => now.current.props,
    };
    const ground: Ground = {
      ...bench,
      element: canvas,
      cursorOver: (target) => cursorFor(now.current.props, target),
      begin: (down) => gestureFor(bench, down),
      twice: (target) => {
        if (target === null && now.current.props.tool === 'choose') commands.fitAll();
      },
    };
    const overHandle = (event: PointerEvent) => {
      if (now.current.props.tool !== 'choose' || event.buttons !== 0) return;
      const { left, top } = canvas.getBoundingClientRect();
      const at = { x: event.clientX - left, y: event.clientY - top };
      const handle = handleOfChosen(bench, at)?.handle;
      canvas.dataset.handle = handle === undefined ? '' : handleWord(handle, now.current.props.side);
    };
    canvas.addEventListener('pointermove', overHandle);
    const stop = listenToPointer(ground, (target: Target | null) => {
      hovered.current = asOnTray(target);
      now.current.props.onHover?.(target);
      redrawTop();
    });
    return () => {
      canvas.removeEventListener('pointermove', overHandle);
      stop();
    };
  }, [element, view, commands, redrawTop]);

  return { hovered: () => hovered.current };
}

/** Of what lies on the map only one kind is pointed at in other drawings too. */
function asOnTray(target: Target | null): TrayTarget | null {
  if (target?.kind === 'on-tray' || target?.kind === 'connector') return target;
  return target?.kind === 'plug' ? { ...target, together: [target.plug], path: '' } : null;
}

function gestureFor(bench: TrayBench, down: Point): Gesture {
  const { tool } = bench.props();
  if (tool === 'choose') return choosePart(bench, down);
  return tool === 'path' ? drawPath(bench, down) : addPlace(bench, tool, down);
}

function cursorFor({ tool, selection }: TrayProps, target: Target | null): Cursor {
  if (tool === 'path')
    return target?.kind === 'on-tray' && stationOf(target) !== null ? 'pointer' : 'crosshair';
  if (tool !== 'choose') return 'crosshair';
  if (target?.kind !== 'on-tray') return target === null ? 'default' : 'pointer';
  const { kind, id } = target.part;
  const isBoard = kind === 'board' && !(selection.kind === 'on-tray' && selection.part.id === id);
  return kind === 'path' || isBoard ? 'pointer' : 'grab';
}

/** Which way a handle moves on the screen, as the style sheet names it. */
function handleWord({ across, down }: { across: number; down: number }, side: TrayProps['side']): string {
  if (across === 0) return 'down';
  if (down === 0) return 'across';
  return across * down * (side === 'front' ? 1 : -1) > 0 ? 'falling' : 'rising';
}
