import { domain } from './bundled/domain.mjs';

/**
 * What a photo costs: straightening 12 megapixels, mixed from four pixels each, beside the simplest loop
 * that can be written for the same map, which takes the nearest pixel and mixes nothing; and laying a grid.
 */
const WIDTH = 4_000;
const HEIGHT = 3_000;
const ROUNDS = 5;
const ROWS_AT_ONCE = 16;
const SLICE_AIM_MS = 10;
const { accuracyMm, fromView, layOf, product, straightenRows } = await domain('photo', {
  '/boards/pinout/photo/lay.ts': ['accuracyMm', 'layOf'],
  '/boards/pinout/photo/matrix3.ts': ['product'],
  '/boards/pinout/photo/straighten.ts': ['fromView', 'straightenRows'],
});

const photo = picture();
const into = { width: WIDTH, height: HEIGHT, data: new Uint8ClampedArray(WIDTH * HEIGHT * 4) };
/** A photo taken at a slant, and the view of its plane in as many pixels. */
const toPx = [38, 4, 180, -3, 36, 220, 0.0006, 0.0009, 1];
const view = { leftMm: 0, topMm: 0, widthMm: 100, heightMm: 75, pxPerMm: 40, mirrored: false };

straightening();
laying();

function straightening() {
  const ours = [];
  const slices = [];
  const theirs = [];
  for (let round = 0; round < ROUNDS; round++) {
    theirs.push(timed(nearest));
    ours.push(
      timed(() => {
        for (let row = 0; row < HEIGHT; row += ROWS_AT_ONCE)
          slices.push(
            timed(() => straightenRows(photo, toPx, view, into, row, Math.min(HEIGHT, row + ROWS_AT_ONCE))),
          );
      }),
    );
  }
  say(
    `straightening ${(WIDTH * HEIGHT) / 1e6} megapixels: ${median(ours).toFixed(0)} ms, ` +
      `the nearest pixel in a plain loop ${median(theirs).toFixed(0)} ms, ` +
      `${(median(ours) / median(theirs)).toFixed(2)} times as long; ` +
      `a slice of ${ROWS_AT_ONCE} rows ${median(slices).toFixed(1)} ms (aim under ${SLICE_AIM_MS})`,
  );
}

/** The peer: the same map, one pixel for one pixel. */
function nearest() {
  const [a, b, c, d, e, f, g, h, i] = product(toPx, fromView(view));
  const source = new Uint32Array(photo.data.buffer);
  const target = new Uint32Array(into.data.buffer);
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const w = g * (x + 0.5) + h * (y + 0.5) + i;
      const u = Math.floor((a * (x + 0.5) + b * (y + 0.5) + c) / w);
      const v = Math.floor((d * (x + 0.5) + e * (y + 0.5) + f) / w);
      target[y * WIDTH + x] =
        u >= 0 && v >= 0 && u < photo.width && v < photo.height ? source[v * photo.width + u] : 0;
    }
  }
}

/** What is done again for every move of a point, and what once it is let go. */
function laying() {
  const grid = { rows: 2, cols: 10, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'top-left' } };
  const pins = ['1', '19', '20', '2', '9', '10', '5', '6'];
  const points = pins.map((pin, at) => {
    const [x, y] = [Math.floor((Number(pin) - 1) / 2) * 2.54, ((Number(pin) - 1) % 2) * 2.54];
    const w = 0.0006 * x + 0.0009 * y + 1;
    const shake = Math.sin(at * 7) / 2;
    return { pin, xPx: (38 * x + 4 * y + 180) / w + shake, yPx: (-3 * x + 36 * y + 220) / w - shake };
  });
  const lay = () => layOf(grid, points, { widthPx: 2_000, heightPx: 1_500 });
  const laid = lay();
  if (!laid.ok || laid.value.doubt) throw new Error(JSON.stringify(laid));
  const many = (work) => {
    for (let warming = 0; warming < 20; warming++) work();
    return median(Array.from({ length: 41 }, () => timed(work)));
  };
  say(
    `laying a grid of 2 × 10 by ${pins.length} points, each left out once: ${many(lay).toFixed(2)} ms; ` +
      `saying how exact it is: ${many(() => accuracyMm(grid, laid.value)).toFixed(2)} ms`,
  );
}

function picture() {
  const data = new Uint8ClampedArray(WIDTH * HEIGHT * 4);
  for (let at = 0; at < data.length; at++) data[at] = (at * 31) ^ (at >> 7);
  return { width: WIDTH, height: HEIGHT, data };
}

function timed(work) {
  const began = performance.now();
  work();
  return performance.now() - began;
}

function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}

function say(line) {
  console.log(`photo: ${line}`);
}
