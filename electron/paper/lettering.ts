import type { Face } from '../../boards/drawing/measure';
import type { Drawn, DrawnText, Page } from '../../boards/handover/page/page';
import type { Lettering } from '../../boards/handover/svg/lettering';
import type { Fonts, PageFont } from './fonts';

/** What a reader without our fonts falls back to. */
const FALLBACK: Readonly<Record<Face, string>> = {
  text: '"Atkinson Hyperlegible Next",Verdana,sans-serif',
  strong: '"Atkinson Hyperlegible Next",Verdana,sans-serif',
  mono: '"Atkinson Hyperlegible Mono","DejaVu Sans Mono",monospace',
};

/** Text as text, with every font file that the pages use inside the picture. */
export function textLettering({ chains, runsOf }: Fonts, pages: readonly Page[]): Lettering {
  const used = new Set(
    textsOn(pages).flatMap(({ text, face }) => runsOf(text, face).map(({ font }) => font)),
  );
  const style = (['text', 'strong', 'mono'] as const).flatMap((face) => {
    const fonts = chains[face].filter((font) => used.has(font));
    const family = [...fonts.map(({ name }) => `"lw-${name}"`), FALLBACK[face]].join(',');
    const weight = weightOf(face);
    return [
      ...fonts.map((font) => fontFace(font, weight)),
      `.${face}{font-family:${family};font-weight:${weight}}`,
    ];
  });
  return { kind: 'text', style: style.join('\n') };
}

function weightOf(face: Face): number {
  return face === 'strong' ? 700 : 400;
}

function fontFace({ name, bytes }: PageFont, weight: number): string {
  const type = name.endsWith('-signs') ? 'ttf' : 'woff';
  const data = Buffer.from(bytes).toString('base64');
  return `@font-face{font-family:"lw-${name}";font-weight:${weight};src:url("data:font/${type};base64,${data}")}`;
}

function textsOn(pages: readonly Page[]): readonly DrawnText[] {
  const found: DrawnText[] = [];
  const look = (items: readonly Drawn[]) => {
    for (const item of items) {
      if (item.kind === 'text') found.push(item);
      else if (item.kind === 'group') look(item.items);
    }
  };
  for (const { items } of pages) look(items);
  return found;
}

/** Text as the outlines of its letters. */
export function outlineLettering(fonts: Fonts): Lettering {
  return { kind: 'outlines', pathOf: (text) => outlineOf(text, fonts) };
}

function outlineOf({ text, face, sizeMm }: DrawnText, { runsOf }: Fonts): string {
  let pen = 0;
  let path = '';
  for (const { font, text: letters } of runsOf(text, face)) {
    const scale = sizeMm / font.font.unitsPerEm;
    const { glyphs, positions } = font.font.layout(letters);
    for (const [index, glyph] of glyphs.entries()) {
      const at = positions[index];
      if (at === undefined) continue;
      for (const { command, args } of glyph.path.commands)
        path += step(command, args, scale, pen + at.xOffset * scale);
      pen += at.xAdvance * scale;
    }
  }
  return path;
}

const STEPS: Readonly<Record<string, string>> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

/** Fonts count upwards, pages downwards. */
function step(command: string, args: readonly number[], scale: number, left: number): string {
  const points = args.map((value, index) => {
    const moved = index % 2 === 0 ? left + value * scale : -value * scale;
    return String(Math.round(moved * 10_000) / 10_000);
  });
  return `${STEPS[command] ?? ''}${points.join(' ')}`;
}
