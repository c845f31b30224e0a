import { ok, type Result, refuse } from '../../boards/base/result';
import type { Document } from '../../boards/document/document';
import { layPaper } from '../../boards/handover/lay-paper';
import type { PaperFormat, Print } from '../../boards/handover/order';
import type { Page, Paper } from '../../boards/handover/page/page';
import type { PaperProblem } from '../../boards/handover/paper-problem';
import { pictureSize, svgOf } from '../../boards/handover/svg/svg';
import type { PaperKit } from './kit';
import { outlineLettering, textLettering } from './lettering';
import { pdfOf } from './pdf';
import { pngOf } from './png';

/** What is to be made. */
export interface PaperOrder {
  readonly document: Document;
  readonly print: Print;
  readonly format: PaperFormat;
  /** One page by its number, or null for all. */
  readonly page: number | null;
  /** Of a PNG: 1 is 96 pixels an inch. */
  readonly scale: number;
}

export interface MadePaper {
  readonly bytes: Uint8Array;
  /** How many pages are in it. */
  readonly pages: number;
  /** How many the whole has. */
  readonly allPages: number;
  /** Of a PNG. */
  readonly pixels?: { readonly widthPx: number; readonly heightPx: number };
}

/** More would not fit in the memory of a small machine: four bytes a pixel, and twice that while it is packed. */
const MOST_PIXELS = 40_000_000;
const PX_PER_MM = 96 / 25.4;

/**
 * Makes a paper: the one way for the window and the command line.
 *
 * @param day is printed on it
 * @param stopped asked after every page whether it is still wanted
 */
export async function makePaper(
  kit: PaperKit,
  order: PaperOrder,
  day: Date,
  stopped: () => boolean = () => false,
): Promise<Result<MadePaper, PaperProblem>> {
  const laid = layPaper(order.document, order.print, dayWords(day), kit.fonts);
  if (!laid.ok) return laid;
  const whole = laid.value;
  const chosen = pagesOf(whole, order.page);
  if (!chosen.ok) return chosen;
  const pages = chosen.value;
  const made = { pages: pages.length, allPages: whole.pages.length };
  switch (order.format) {
    case 'pdf': {
      const contents = order.page === null ? whole.contents : [];
      const bytes = await pdfOf({ ...whole, pages, contents }, day, kit.fonts, stopped);
      return bytes === null ? refuse({ code: 'stopped' }) : ok({ ...made, bytes });
    }
    case 'svg':
      return ok({
        ...made,
        bytes: Buffer.from(svgOf(whole, pages, textLettering(kit.fonts, pages)), 'utf8'),
      });
    case 'png': {
      const { widthMm, heightMm } = pictureSize(whole, pages.length);
      const widthPx = Math.round(widthMm * PX_PER_MM * order.scale);
      const heightPx = Math.round((widthPx * heightMm) / widthMm);
      if (widthPx * heightPx > MOST_PIXELS)
        return refuse({ code: 'too-many-pixels', widthPx, heightPx, limitPx: MOST_PIXELS });
      const svg = svgOf(whole, pages, outlineLettering(kit.fonts));
      return ok({ ...made, pixels: { widthPx, heightPx }, bytes: await pngOf(svg, widthPx, kit.read) });
    }
  }
}

function pagesOf({ pages }: Paper, wanted: number | null): Result<readonly Page[], PaperProblem> {
  if (wanted === null) return ok(pages);
  const page = pages[wanted - 1];
  return page ? ok([page]) : refuse({ code: 'no-such-page', page: wanted, pages: pages.length });
}

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "26 November 2026", by the world's clock. */
function dayWords(day: Date): string {
  return `${day.getUTCDate()}\u00a0${MONTHS[day.getUTCMonth()]}\u00a0${day.getUTCFullYear()}`;
}
