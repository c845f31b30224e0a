import { ok, type Result, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import type { Rect } from '../../drawing/geometry';
import { printableBuild } from '../bench-sheet/printable-build';
import { bodyOf, footOf } from '../page/foot';
import type { Letters } from '../page/letters';
import type { Drawn, Page, Paper } from '../page/page';
import { MOST_PAGES, PAPERS } from '../page/paper';
import { linesAt, TYPES } from '../page/type';
import type { PaperProblem } from '../paper-problem';
import { labelDrawn } from './label';
import type { LabelOptions } from './label-options';
import { labelTexts } from './label-texts';

/** How many labels stand on one sheet. */
function labelGrid({ width, height }: Rect, { widthMm, heightMm }: LabelOptions) {
  return {
    columns: Math.max(1, Math.floor((width + 1e-6) / widthMm)),
    rows: Math.max(1, Math.floor((height + 1e-6) / heightMm)),
  };
}

/**
 * Labels for both ends of each cable, edge to edge in rows and columns, to be cut along their lines. Pure: the
 * same build, options and date give the same pages.
 *
 * @param printedOn the day as it is printed; there is no clock in here
 */
export function labelPaper(
  build: Build,
  options: LabelOptions,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const { build: shown } = printableBuild(build, letters);
  const { measure } = letters;
  const size = PAPERS[options.paper];
  const foot = footOf(size, { name: shown.name, what: 'Cable labels' }, printedOn, measure);
  const room = bodyOf(size, foot, 0);
  const texts = labelTexts(shown);
  const { columns, rows } = labelGrid(room, options);
  const count = Math.max(1, Math.ceil(texts.length / (columns * rows)));
  if (count > MOST_PAGES) return refuse({ code: 'too-many-pages', pages: count, limit: MOST_PAGES });
  const title = `${build.name}: cable labels`;
  const pages = Array.from({ length: count }, (_, page): Page => {
    const here = texts.slice(page * columns * rows, (page + 1) * columns * rows);
    const items: readonly Drawn[] = [
      ...here.flatMap((text, at) =>
        labelDrawn(
          text,
          {
            x: room.x + (at % columns) * options.widthMm,
            y: room.y + Math.floor(at / columns) * options.heightMm,
            width: options.widthMm,
            height: options.heightMm,
          },
          options,
          measure,
        ),
      ),
      ...(texts.length === 0 ? linesAt([NO_LABELS], { x: room.x, y: room.y }, TYPES.body, measure) : []),
      ...foot.draw(page + 1, count),
    ];
    return { words: `${title}, page ${page + 1} of ${count}`, items };
  });
  return ok({ title, size, contents: [], pages });
}

const NO_LABELS = 'There is no cable with two ends in this build.';
