import type { Mm } from '../../base/units';
import { INKS, tintOf } from '../page/inks';
import type { Drawn, DrawnText, Page, Paint, Paper, Stroke } from '../page/page';
import type { Lettering } from './lettering';
import { xmlNumber as n, xmlText } from './xml';

/** Between pages that stand below each other in one picture. */
const BETWEEN_MM: Mm = 8;

/** How large a picture of some pages is, one below the other. */
export function pictureSize({ size }: Paper, pages: number): { readonly widthMm: Mm; readonly heightMm: Mm } {
  return { widthMm: size.widthMm, heightMm: pages * size.heightMm + (pages - 1) * BETWEEN_MM };
}

/**
 * Pages as one SVG 1.1 picture, one below the other, in millimetres. Complete in itself: it asks for no
 * font, style or picture from anywhere.
 *
 * @param pages which of the paper's pages
 */
export function svgOf(paper: Paper, pages: readonly Page[], lettering: Lettering): string {
  const { widthMm, heightMm } = pictureSize(paper, pages.length);
  const drawn = pages.map((page, index) => {
    const y = index * (paper.size.heightMm + BETWEEN_MM);
    const box = `width="${n(widthMm)}" height="${n(paper.size.heightMm)}"`;
    return (
      `<g transform="translate(0 ${n(y)})"><title>${xmlText(page.words)}</title>` +
      `<rect ${box} fill="${INKS.paper}"/>${drawAll(page.items, lettering)}</g>\n`
    );
  });
  return (
    '<?xml version="1.0" encoding="UTF-8"?>\n' +
    `<svg xmlns="http://www.w3.org/2000/svg" version="1.1" role="img" xml:lang="en" ` +
    `width="${n(widthMm)}mm" height="${n(heightMm)}mm" viewBox="0 0 ${n(widthMm)} ${n(heightMm)}">\n` +
    `<title>${xmlText(paper.title)}</title>\n` +
    (lettering.kind === 'text' ? `<style>${xmlText(lettering.style)}</style>\n` : '') +
    (pages.length > 1 ? `<rect width="100%" height="100%" fill="${INKS.hair}"/>\n` : '') +
    `${drawn.join('')}</svg>\n`
  );
}

function drawAll(items: readonly Drawn[], lettering: Lettering): string {
  return items.map((item) => draw(item, lettering)).join('');
}

function draw(item: Drawn, lettering: Lettering): string {
  switch (item.kind) {
    case 'line': {
      const { from, to, stroke } = item;
      return `<path d="M${n(from.x)} ${n(from.y)}L${n(to.x)} ${n(to.y)}"${strokeOf(stroke)}/>`;
    }
    case 'rect': {
      const { x, y, width, height } = item.box;
      const box = `x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}"`;
      return `<rect ${box}${paintOf(item.paint)}/>`;
    }
    case 'shape': {
      const points = item.points.map(({ x, y }) => `${n(x)},${n(y)}`).join(' ');
      return `<polygon points="${points}"${paintOf(item.paint)}/>`;
    }
    case 'circle': {
      const { centre, radiusMm, paint } = item;
      return `<circle cx="${n(centre.x)}" cy="${n(centre.y)}" r="${n(radiusMm)}"${paintOf(paint)}/>`;
    }
    case 'group': {
      const { at = { x: 0, y: 0 }, scale = 1, title, items } = item;
      const moved =
        item.at === undefined && scale === 1
          ? ''
          : ` transform="translate(${n(at.x)} ${n(at.y)}) scale(${n(scale)})"`;
      const named = title === undefined ? '' : `<title>${xmlText(title)}</title>`;
      return `<g${moved}>${named}${drawAll(items, lettering)}</g>`;
    }
    case 'text':
      return drawText(item, lettering);
  }
}

function drawText(text: DrawnText, lettering: Lettering): string {
  if (text.text === '') return '';
  const { at, upright, ink } = text;
  const shift = { start: 0, middle: 0.5, end: 1 }[text.anchor] * text.widthMm;
  const turned = upright ? ' rotate(-90)' : '';
  const place = ` transform="translate(${n(at.x)} ${n(at.y)})${turned}"`;
  if (lettering.kind === 'outlines') {
    const outline = lettering.pathOf(text);
    const moved = ` transform="translate(${n(at.x)} ${n(at.y)})${turned} translate(${n(-shift)} 0)"`;
    return `<path${moved} fill="${INKS[ink]}" d="${outline}"/>`;
  }
  const anchor = text.anchor === 'start' ? '' : ` text-anchor="${text.anchor}"`;
  // The width holds the layout together where the fonts could not be loaded.
  const width = ` textLength="${n(text.widthMm)}" lengthAdjust="spacingAndGlyphs"`;
  return (
    `<text class="${text.face}"${place}${anchor} font-size="${n(text.sizeMm)}"${width} fill="${INKS[ink]}">` +
    `${xmlText(text.text)}</text>`
  );
}

function paintOf({ fill, stroke }: Paint): string {
  return ` fill="${fill === undefined ? 'none' : tintOf(fill)}"${stroke === undefined ? '' : strokeOf(stroke)}`;
}

function strokeOf({ ink, widthMm, dashMm }: Stroke): string {
  const dash = dashMm === undefined ? '' : ` stroke-dasharray="${n(dashMm)}"`;
  return ` stroke="${INKS[ink]}" stroke-width="${n(widthMm)}"${dash}`;
}
