import Konva from 'konva/lib/Core';
import { createRef } from 'react';
import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import type { Build } from '../../boards/document/build';
import { measureByTable } from '../../boards/drawing/measure';
import { BoardCanvas } from '../../renderer/canvas/board-canvas';
import type { CanvasView } from '../../renderer/canvas/canvas-props';
import { drawGround } from '../../renderer/canvas/drawing/draw-ground';
import { drawConnectors, drawWiring } from '../../renderer/canvas/drawing/draw-layers';
import { worstMarks } from '../../renderer/canvas/drawing/draw-marks';
import { readPalette } from '../../renderer/canvas/drawing/palette';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { fitted, pannedBy, windowOf, zoomedAt } from '../../renderer/canvas/view';

/** The page of the canvas bench: the same board in the window's canvas and on one plain canvas. */

const PINS_EACH = 40;
const SIZE = { width: 1280, height: 800 };
const FRAMES = 40;
const ROUNDS = 4;

/** Connectors of forty pins side by side, until there are so many pins. */
function boardOf(pins: number): Build {
  const count = Math.ceil(pins / PINS_EACH);
  const across = Math.ceil(Math.sqrt(count / 3));
  const connectors = Array.from({ length: count }, (_, index) => ({
    id: `j${index}`,
    print: `J${index}`,
    title: 'forty pins',
    family: 'pin-header',
    grid: { rows: 2, cols: 20, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'top-left' } } as const,
    pins: Array.from({ length: PINS_EACH }, (__, pin) => ({ pin: String(pin + 1), name: `line ${pin}` })),
    place: { xMm: 5 + (index % across) * 60, yMm: 6 + Math.floor(index / across) * 18, turn: 0 } as const,
  }));
  const outline = { widthMm: across * 60 + 10, depthMm: Math.ceil(count / across) * 18 + 10 };
  return {
    format: 'leadwright/build',
    version: 1,
    id: 'bench',
    name: 'bench',
    board: { format: 'leadwright/board', version: 1, id: 'board', name: 'board', outline, connectors },
    case: { format: 'leadwright/case', version: 1, id: 'case', name: 'case', leads: [] },
    extras: [],
    seats: [],
    view: { turn: 0, mirrored: false },
  };
}

/** Milliseconds a frame of panning, with everything really painted before the clock stops. */
function timed(step: (frame: number) => void, flush: () => void): number {
  const times = Array.from({ length: FRAMES }, (_, frame) => {
    const begin = performance.now();
    step(frame);
    flush();
    return performance.now() - begin;
  }).sort((a, b) => a - b);
  return times[FRAMES / 2] ?? 0;
}

function paint(canvas: HTMLCanvasElement): void {
  canvas.getContext('2d')?.getImageData(0, 0, 1, 1);
}

function stepOf(frame: number): readonly [number, number] {
  return [frame % 2 === 0 ? 7 : -5, (frame % 3) - 1];
}

function windowCanvas(build: Build, zoom: number, host: HTMLElement): number {
  const view = createRef<CanvasView>();
  const root = createRoot(host);
  const nothing = () => {};
  flushSync(() =>
    root.render(
      <BoardCanvas
        ref={view}
        build={build}
        marks={[]}
        live={null}
        selection={{ kind: 'nothing' }}
        planned={null}
        placing={null}
        theme="light"
        reducedMotion
        onSelect={nothing}
        onGrab={nothing}
        onCandidate={nothing}
        onRelease={nothing}
      />,
    ),
  );
  const stage = Konva.stages.at(-1);
  if (!stage || !view.current) throw new Error('The canvas did not come up');
  view.current.fitAll();
  view.current.zoomBy(zoom);
  const took = timed(
    (frame) => {
      view.current?.panBy(...stepOf(frame));
      stage.draw();
    },
    () => {
      for (const layer of stage.getLayers()) paint(layer.getNativeCanvasElement());
    },
  );
  root.unmount();
  return took;
}

function plainCanvas(build: Build, zoom: number, host: HTMLElement): number {
  const canvas = document.createElement('canvas');
  canvas.width = SIZE.width;
  canvas.height = SIZE.height;
  host.replaceChildren(canvas);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('No canvas here');
  const palette = readPalette(host);
  const marks = worstMarks([]);
  const scene = sceneOf(build, { view: build.view, measure: measureByTable });
  let view = zoomedAt(fitted(scene.bounds, SIZE, 40, 30), zoom, { x: SIZE.width / 2, y: SIZE.height / 2 });
  const took = timed(
    (frame) => {
      view = pannedBy(view, ...stepOf(frame));
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, SIZE.width, SIZE.height);
      context.setTransform(view.scale, 0, 0, view.scale, view.x, view.y);
      const pen = { context, palette, scale: view.scale, window: windowOf(view, SIZE) };
      drawGround(pen, scene);
      drawConnectors(pen, scene);
      drawWiring(pen, scene, marks, null);
    },
    () => paint(canvas),
  );
  canvas.remove();
  return took;
}

function run(pins: number, zoom: number) {
  const host = document.querySelector<HTMLElement>('#host');
  if (!host) throw new Error('No host element');
  Konva.autoDrawEnabled = false;
  const build = boardOf(pins);
  // In turn, so that a busy machine weighs on both alike; the best of each, for the first ones are cold.
  const rounds = Array.from({ length: ROUNDS }, () => ({
    plain: plainCanvas(build, zoom, host),
    canvas: windowCanvas(build, zoom, host),
  }));
  return {
    plain: Math.min(...rounds.map((round) => round.plain)),
    canvas: Math.min(...rounds.map((round) => round.canvas)),
  };
}

Object.assign(globalThis, { runCanvasBench: run });
