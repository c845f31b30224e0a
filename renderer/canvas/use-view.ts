import type Konva from 'konva/lib/Core';
import { type Ref, type RefObject, useImperativeHandle, useLayoutEffect, useMemo, useRef } from 'react';
import { centreOf, type Rect } from '../../boards/drawing/geometry';
import { type Orientation, oriented, undone } from '../../boards/drawing/orientation';
import type { CanvasView } from './canvas-props';
import { type SizePx, toMm, type View, windowOf } from './view';
import { type ViewHandle, viewHandle } from './view-handle';
import type { Viewed } from './viewed';

const MARGIN_PX = 40;
const MARGINS_IN_HEIGHT = 20;
/** Near enough to read the names of pins, and as near as anything is brought by itself. */
const READABLE = 15;
const NEAREST = 30;

/** What a view that nobody has moved does when the stage gets another size. */
export type WhileUntouched = 'fit again' | 'keep the scale';

/**
 * The view of a stage: fitted at first, kept in place through resizing and turning, moved on request. A view
 * that nobody has moved may be fitted again when the stage gets another size.
 */
export function useView(
  stage: Konva.Stage | null,
  size: SizePx | null,
  scene: Viewed,
  ref: Ref<CanvasView> | undefined,
  whileUntouched: WhileUntouched = 'keep the scale',
): { readonly view: ViewHandle | null; readonly commands: CanvasView } {
  const view = useMemo(() => stage && viewHandle(stage), [stage]);
  const sceneNow = useRef(scene);
  const shown = useRef<{ readonly of: string; readonly orientation: Orientation } | null>(null);
  const sizeBefore = useRef(size);
  const fittedView = useRef<View | null>(null);
  /** The view as it was left by anything but the person. */
  const unmoved = useRef<View | null>(null);
  /** What was asked to be brought before there was a stage. */
  const awaited = useRef<Brought | null>(null);
  const commands = useMemo(() => commandsOf(view, () => sceneNow.current, unmoved, awaited), [view]);
  useImperativeHandle(ref, () => commands, [commands]);

  useLayoutEffect(() => {
    sceneNow.current = scene;
    if (!view) return;
    const before = shown.current;
    shown.current = { of: scene.of, orientation: scene.orientation };
    if (before?.of !== scene.of) {
      view.fit(scene.first(), MARGIN_PX, NEAREST);
      fittedView.current = view.now();
      unmoved.current = view.now();
      awaited.current?.(commands);
      awaited.current = null;
      return;
    }
    if (sameOrientation(before.orientation, scene.orientation)) return;
    const { width, height } = view.size();
    const middle = toMm(view.now(), { x: width / 2, y: height / 2 });
    view.centreOn(oriented(scene.orientation, oriented(undone(before.orientation), middle)));
  }, [scene, view, commands]);

  useLayoutEffect(() => {
    const before = sizeBefore.current;
    sizeBefore.current = size;
    if (!view || !size || !before) return;
    if (whileUntouched === 'fit again' && fittedView.current === view.now()) {
      view.fit(sceneNow.current.first(), MARGIN_PX, NEAREST);
      fittedView.current = view.now();
      unmoved.current = view.now();
      return;
    }
    const isUnmoved = unmoved.current === view.now();
    view.panBy((size.width - before.width) / 2, (size.height - before.height) / 2);
    if (isUnmoved) unmoved.current = view.now();
  }, [size, view, whileUntouched]);

  return { view, commands };
}

/** Carries out what was asked for. */
type Brought = (commands: CanvasView) => void;

function commandsOf(
  view: ViewHandle | null,
  scene: () => Viewed,
  unmoved: RefObject<View | null>,
  awaited: RefObject<Brought | null>,
): CanvasView {
  return {
    zoomBy: (factor) => {
      if (!view) return;
      const { width, height } = view.size();
      view.zoomAt(factor, { x: width / 2, y: height / 2 });
    },
    fitAll: () => view?.fit(scene().bounds, MARGIN_PX, NEAREST),
    show: (ids) => {
      if (!view) {
        awaited.current = (now) => now.show(ids);
        return;
      }
      const rect = scene().around(ids);
      if (!rect) return;
      const { scale } = view.now();
      if (scene().brought === 'into sight') {
        if (!covers(windowOf(view.now(), view.size()), rect)) view.centreOn(centreOf(rect));
        return;
      }
      if (scale >= READABLE && covers(windowOf(view.now(), view.size()), rect)) return;
      view.fit(rect, MARGIN_PX, Math.max(NEAREST, scale));
    },
    bring: (ids) => {
      if (!view) {
        awaited.current = (now) => now.bring(ids);
        return;
      }
      const rect = scene().around(ids);
      if (!rect) return;
      const isUnmoved = unmoved.current === view.now();
      const inSight = covers(windowOf(view.now(), view.size()), rect);
      if (!isUnmoved) {
        if (!inSight) view.centreOn(centreOf(rect));
        return;
      }
      // In a low pane the usual margin would cost what can be read.
      const margin = Math.min(MARGIN_PX, view.size().height / MARGINS_IN_HEIGHT);
      if (!inSight || view.now().scale < READABLE) view.fit(rect, margin, NEAREST);
      unmoved.current = view.now();
    },
    panBy: (dx, dy) => view?.panBy(dx, dy),
  };
}

function covers(window: Rect, rect: Rect): boolean {
  return (
    rect.x >= window.x &&
    rect.y >= window.y &&
    rect.x + rect.width <= window.x + window.width &&
    rect.y + rect.height <= window.y + window.height
  );
}

function sameOrientation(a: Orientation, b: Orientation): boolean {
  return a.xx === b.xx && a.xy === b.xy && a.yx === b.yx && a.yy === b.yy;
}
