import { initWasm, Resvg } from '@resvg/resvg-wasm';
import type { ReadKitFile } from './kit';

/** Started once in a process: the package keeps one program for all. */
let program: Promise<void> | null = null;

/** An SVG picture, its text drawn as outlines, as a PNG of some width. */
export async function pngOf(svg: string, widthPx: number, read: ReadKitFile): Promise<Uint8Array> {
  program ??= read('picture.wasm').then((bytes) => initWasm(new Uint8Array(bytes)));
  await program;
  const picture = new Resvg(svg, {
    fitTo: { mode: 'width', value: widthPx },
    font: { loadSystemFonts: false },
  });
  const drawn = picture.render();
  const png = drawn.asPng();
  drawn.free();
  picture.free();
  return png;
}
