import type { Build } from '../../boards/document/build';
import { measureByTable } from '../../boards/drawing/measure';
import { drawGround } from '../../renderer/canvas/drawing/draw-ground';
import { drawConnectors, drawWiring } from '../../renderer/canvas/drawing/draw-layers';
import { worstMarks } from '../../renderer/canvas/drawing/draw-marks';
import { readPalette } from '../../renderer/canvas/drawing/palette';
import { sceneOf } from '../../renderer/canvas/scene/scene-of';
import { fitted, windowOf } from '../../renderer/canvas/view';
import { viewedScene } from '../../renderer/canvas/viewed';

/** In pixels: about what the canvas of our own window takes. */
const [WIDTH, HEIGHT] = [640, 480];

let build: Build;

/**
 * A page of one canvas: the text of a build fetched, read without any check, laid out, and drawn once as it is seen
 * first. Gives the milliseconds since the page was asked for.
 */
async function drawPlain(): Promise<number> {
  build = await (await fetch('/build.json')).json();
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width: WIDTH, height: HEIGHT });
  document.body.replaceChildren(canvas);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('There is no canvas here');
  const scene = sceneOf(build, { view: build.view, measure: measureByTable });
  const view = fitted(viewedScene(scene).first(), { width: WIDTH, height: HEIGHT }, 40, 30);
  context.setTransform(view.scale, 0, 0, view.scale, view.x, view.y);
  const pen = {
    context,
    palette: readPalette(document.body),
    scale: view.scale,
    window: windowOf(view, { width: WIDTH, height: HEIGHT }),
  };
  drawGround(pen, scene);
  drawConnectors(pen, scene);
  drawWiring(pen, scene, worstMarks([]), null);
  // Read back, so that it is painted before the clock stops.
  context.getImageData(0, 0, 1, 1);
  return performance.now();
}

/** Sends it back to be written down, and says so. Gives the milliseconds until that is painted. */
async function savePlain(): Promise<number> {
  const began = performance.now();
  const answer = await fetch('/build.json', { method: 'POST', body: JSON.stringify(build) });
  document.body.append(await answer.text());
  await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  return performance.now() - began;
}

// At once, and not when it is asked for the time.
Object.assign(globalThis, { drawn: drawPlain(), savePlain });
