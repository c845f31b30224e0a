import PDFDocument from 'pdfkit';
import { INKS, tintOf } from '../../boards/handover/page/inks';
import type {
  Drawn,
  DrawnGroup,
  DrawnText,
  Page,
  Paint,
  Paper,
  Stroke,
} from '../../boards/handover/page/page';
import { MM_PER_POINT } from '../../boards/handover/page/paper';
import { emsOf, type Fonts } from './fonts';

type Pdf = PDFKit.PDFDocument;

/**
 * Pages as PDF 1.7: fonts inside, cut down to the letters used, text that can be searched and copied,
 * bookmarks. The same paper and day give the same bytes. Null when it was stopped.
 */
export async function pdfOf(
  paper: Paper,
  day: Date,
  fonts: Fonts,
  stopped: () => boolean,
): Promise<Uint8Array | null> {
  const size: [number, number] = [paper.size.widthMm / MM_PER_POINT, paper.size.heightMm / MM_PER_POINT];
  const info = {
    Title: paper.title,
    Creator: 'Leadwright',
    Producer: 'Leadwright',
    CreationDate: day,
    ModDate: day,
  };
  const pdf = new PDFDocument({
    size,
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    // No letter from a font that is not inside; the types know no other way to say that there is no first font.
    font: null as unknown as string,
    info,
  });
  const written = bytesOf(pdf);
  for (const font of Object.values(fonts.chains).flat()) pdf.registerFont(font.name, Buffer.from(font.bytes));
  for (const [index, page] of paper.pages.entries()) {
    pdf.addPage({ size, margin: 0 });
    for (const { title } of paper.contents.filter((entry) => entry.page === index + 1))
      pdf.outline.addItem(title);
    drawPage(pdf, page, fonts);
    // A breath after each page, so that a long paper does not stop everything else.
    await new Promise((resolve) => setImmediate(resolve));
    if (stopped()) {
      pdf.destroy();
      await written.catch(() => undefined);
      return null;
    }
  }
  pdf.end();
  return written;
}

async function bytesOf(pdf: Pdf): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of pdf) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}

function drawPage(pdf: Pdf, page: Page, fonts: Fonts): void {
  pdf.save();
  pdf.scale(1 / MM_PER_POINT);
  for (const item of page.items) draw(pdf, item, fonts);
  pdf.restore();
}

function draw(pdf: Pdf, item: Drawn, fonts: Fonts): void {
  switch (item.kind) {
    case 'line':
      pdf.moveTo(item.from.x, item.from.y).lineTo(item.to.x, item.to.y);
      paint(pdf, { stroke: item.stroke });
      break;
    case 'rect': {
      const { x, y, width, height } = item.box;
      pdf.rect(x, y, width, height);
      paint(pdf, item.paint);
      break;
    }
    case 'shape':
      if (item.points.length === 0) break;
      pdf.polygon(...item.points.map(({ x, y }) => [x, y]));
      paint(pdf, item.paint);
      break;
    case 'circle':
      pdf.circle(item.centre.x, item.centre.y, item.radiusMm);
      paint(pdf, item.paint);
      break;
    case 'group':
      drawGroup(pdf, item, fonts);
      break;
    case 'text':
      drawText(pdf, item, fonts);
  }
}

function drawGroup(pdf: Pdf, { at, scale, items }: DrawnGroup, fonts: Fonts): void {
  pdf.save();
  if (at) pdf.translate(at.x, at.y);
  if (scale !== undefined) pdf.scale(scale);
  for (const item of items) draw(pdf, item, fonts);
  pdf.restore();
}

function paint(pdf: Pdf, { fill, stroke }: Paint): void {
  if (stroke) takePen(pdf, stroke);
  if (fill && stroke) pdf.fillAndStroke(tintOf(fill), INKS[stroke.ink]);
  else if (fill) pdf.fill(tintOf(fill));
  else if (stroke) pdf.stroke(INKS[stroke.ink]);
}

function takePen(pdf: Pdf, { widthMm, dashMm }: Stroke): void {
  pdf.lineWidth(widthMm);
  if (dashMm === undefined) pdf.undash();
  else pdf.dash(dashMm, { space: dashMm });
}

function drawText(
  pdf: Pdf,
  { text, at, anchor, widthMm, sizeMm, face, ink, upright }: DrawnText,
  fonts: Fonts,
): void {
  if (text === '') return;
  const shift = { start: 0, middle: 0.5, end: 1 }[anchor] * widthMm;
  pdf.save();
  if (upright) pdf.rotate(-90, { origin: [at.x, at.y] });
  pdf.fillColor(INKS[ink]).fontSize(sizeMm);
  let x = at.x - shift;
  for (const run of fonts.runsOf(text, face)) {
    pdf.font(run.font.name).text(run.text, x, at.y, { lineBreak: false, baseline: 'alphabetic' });
    x += emsOf(run) * sizeMm;
  }
  pdf.restore();
}
