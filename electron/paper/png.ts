import { initWasm, Resvg } from '@resvg/resvg-wasm';
import type { ReadKitFile } from './kit';

/** Started once in a process: the package keeps one program for all. */
let program: Promise<void> | null = null;

/** An SVG picture, its text drawn as outlines, as a PNG of some width. */
export async function pngOf(svg: string, widthPx: number, read: ReadKitFile): Promise<Uint8Array> {
  program ??= start(read);
  await program.catch((thrown: unknown) => {
    program = null;
    throw thrown;
  });
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

async function start(read: ReadKitFile): Promise<void> {
  const bytes = new Uint8Array(await read('picture.wasm'));
  await initWasm(bytes).catch((thrown: unknown) => {
    // Another copy of this module in the same process came first, as where tests share one.
    if (!String(thrown).includes('Already initialized')) throw thrown;
  });
}
