import type { Grid } from '../../boards/document/grid';
import { rowPitchOf } from '../../boards/document/grid';
import { gridIndex } from '../../boards/document/numbering';
import { inverse, type PlanePoint } from '../../boards/pinout/photo/matrix3';
import type { PinPoint } from '../../boards/pinout/photo/pointed';
import type { Pixels } from '../../boards/pinout/photo/straighten';
import { type Camera, cameraMap, middleOf, seen } from '../boards/pinout/photo/camera';

/** A photo that was never taken: a header on a board, drawn as a pinhole camera would see it. */
export interface DrawnPhoto {
  readonly pixels: Pixels;
  /** Where each pin is in the picture, in its pixels. */
  readonly truth: readonly PinPoint[];
  /** From pixels of the picture to millimetres of the header, from the camera alone. */
  readonly toMm: (place: PlanePoint) => PlanePoint;
}

type Colour = readonly [number, number, number];
const BOARD: Colour = [38, 74, 58];
const TRACE: Colour = [48, 92, 70];
const PLASTIC: Colour = [26, 26, 30];
const POST: Colour = [214, 186, 112];
const PRINT: Colour = [236, 236, 228];

/** Letters of five by seven dots, row by row, as dot-matrix displays have them. */
const DOTS: Readonly<Record<string, string>> = {
  '+': '00000 00100 00100 11111 00100 00100 00000',
  '-': '00000 00000 00000 11111 00000 00000 00000',
  C: '01110 10001 10000 10000 10000 10001 01110',
  D: '11110 10001 10001 10001 10001 10001 11110',
  E: '11111 10000 10000 11110 10000 10000 11111',
  H: '10001 10001 10001 11111 10001 10001 10001',
  L: '10000 10000 10000 10000 10000 10000 11111',
  N: '10001 11001 10101 10011 10001 10001 10001',
  P: '11110 10001 10001 11110 10000 10000 10000',
  R: '11110 10001 10001 11110 10100 10010 10001',
  S: '01111 10000 10000 01110 00001 00001 11110',
  T: '11111 00100 00100 00100 00100 00100 00100',
  W: '10001 10001 10001 10101 10101 11011 10001',
};

/** A word printed upwards or downwards beside the header. */
interface Printed {
  readonly text: string;
  readonly x: number;
  /** Where its first letter begins; the word runs from there away from the header. */
  readonly y: number;
  readonly up: boolean;
}

const DOT_MM = 0.17;

function isPrinted({ text, x, y, up }: Printed, at: PlanePoint): boolean {
  // Turned by a quarter, so that long names fit beside pins: along the word, and across it.
  const along = up ? y - at.y : at.y - y;
  const across = up ? at.x - x : x - at.x;
  const column = Math.floor(along / DOT_MM);
  const row = Math.floor(across / DOT_MM + 3.5);
  if (column < 0 || row < 0 || row > 6) return false;
  const letter = text[Math.floor(column / 6)];
  const dots = letter === undefined ? undefined : DOTS[letter]?.split(' ')[row];
  return dots?.[column % 6] === '1';
}

/** What is to be seen at a place of the header's plane. */
function shader(grid: Grid, names: Readonly<Record<string, string>>, missing: ReadonlySet<string>) {
  const [pitch, rowPitch] = [grid.pitchMm, rowPitchOf(grid)];
  const { positions } = gridIndex(grid);
  const [right, bottom] = [(grid.cols - 1) * pitch, (grid.rows - 1) * rowPitch];
  const printed = positions.flatMap(({ label, cell: [row, col] }): readonly Printed[] => {
    const text = names[label];
    if (text === undefined) return [];
    const up = row === 0;
    return [{ text, x: col * pitch, y: up ? -pitch * 0.7 : bottom + pitch * 0.7, up }];
  });
  const posts = new Map(positions.map(({ label, cell }) => [`${cell}`, label]));
  return (at: PlanePoint): Colour => {
    const [col, row] = [Math.round(at.x / pitch), Math.round(at.y / rowPitch)];
    const label = posts.get(`${row},${col}`);
    const [dx, dy] = [Math.abs(at.x - col * pitch), Math.abs(at.y - row * rowPitch)];
    // A post is 0.64 mm square (common practice, no source).
    if (label !== undefined && !missing.has(label) && dx < 0.32 && dy < 0.32) return POST;
    const inside =
      at.x > -pitch / 2 && at.y > -rowPitch / 2 && at.x < right + pitch / 2 && at.y < bottom + rowPitch / 2;
    if (inside) return PLASTIC;
    if (printed.some((word) => isPrinted(word, at))) return PRINT;
    return Math.abs(((at.x + at.y) % 4) - 2) < 0.15 ? TRACE : BOARD;
  };
}

/** Draws the photo, with four samples a pixel. */
export function drawnPhoto(
  grid: Grid,
  camera: Camera,
  names: Readonly<Record<string, string>>,
  missing: readonly string[] = [],
): DrawnPhoto {
  const { widthPx: width, heightPx: height } = camera;
  const map = cameraMap(camera, middleOf(grid));
  const back = inverse(map);
  const shade = shader(grid, names, new Set(missing));
  const data = new Uint8ClampedArray(width * height * 4);
  const samples = [0.25, 0.75];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      for (const down of samples)
        for (const along of samples)
          shade(seen(back, { x: x + along, y: y + down })).forEach((value, channel) => {
            sum[channel] = (sum[channel] ?? 0) + value / 4;
          });
      data.set([sum[0] ?? 0, sum[1] ?? 0, sum[2] ?? 0, 255], (y * width + x) * 4);
    }
  }
  const truth = gridIndex(grid).positions.map(({ label, cell: [row, col] }) => {
    const { x, y } = seen(map, { x: col * grid.pitchMm, y: row * rowPitchOf(grid) });
    return { pin: label, xPx: x, yPx: y };
  });
  return { pixels: { width, height, data }, truth, toMm: (place) => seen(back, place) };
}
