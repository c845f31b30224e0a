import { ok, type Result, refuse } from '../../base/result';
import type { BoardSheet } from '../../document/board-sheet';
import type { Connector } from '../../document/connector';
import { nearestOf } from '../../document/problem/nearest';
import { type Book, flow, gap, type Piece } from '../page/flow';
import { bodyOf, footOf } from '../page/foot';
import { type Letters, NO_SHAPE_WORDS } from '../page/letters';
import type { Drawn, Page, Paper } from '../page/page';
import { MOST_PAGES, PAPERS } from '../page/paper';
import { TYPES } from '../page/type';
import type { PaperProblem } from '../paper-problem';
import { connectorSection, paragraph } from './connector-section';
import { firstPage } from './first-page';
import { lyingWords } from './lying-words';
import type { PinoutOptions } from './options';
import { printableSheet } from './printable-sheet';

/**
 * The pages of a board's pinout. Pure: the same sheet, options and date give the same pages.
 *
 * @param printedOn the day as it is printed; there is no clock in here
 */
export function pinoutPaper(
  sheet: BoardSheet,
  options: PinoutOptions,
  printedOn: string,
  letters: Letters,
): Result<Paper, PaperProblem> {
  const chosen = chosenOf(sheet, options);
  if (!chosen.ok) return chosen;
  const { board, replaced } = printableSheet(sheet, letters);
  const wanted = new Set(chosen.value.map(({ id }) => id));
  const printed = board.connectors.filter(({ id }) => wanted.has(id));
  const { measure } = letters;
  const size = PAPERS[options.paper];
  const foot = footOf(size, { name: board.name, what: lyingWords(options) }, printedOn, measure);
  const room = bodyOf(size, foot, 0);
  const rooms = { widthMm: room.width, heightMm: room.height };
  const pieces: readonly Piece[] = [
    ...firstPage(board, printed, options, rooms, measure),
    ...(replaced ? [...paragraph(NO_SHAPE_WORDS, TYPES.small, room.width, measure), gap(4)] : []),
    ...printed.flatMap((connector, index) => connectorSection(connector, index + 1, options, rooms, measure)),
  ];
  const { pages, marks } = flow(pieces, () => room);
  if (pages.length > MOST_PAGES)
    return refuse({ code: 'too-many-pages', pages: pages.length, limit: MOST_PAGES });
  const book: Book = { pages: pages.length, pageOf: (mark) => marks.get(mark) };
  return ok({
    title: `${sheet.name}: pinout`,
    size,
    contents: printed.map((connector) => ({
      title: connector.print.trim() || connector.title.trim() || connector.id,
      page: marks.get(connector.id) ?? 1,
    })),
    pages: pages.map((placed, index): Page => {
      const items: readonly Drawn[] = [
        ...placed.flatMap(({ strip, at }) => strip.draw(at, book)),
        ...foot.draw(index + 1, pages.length),
      ];
      return { words: `${sheet.name}: pinout, page ${index + 1} of ${pages.length}`, items };
    }),
  });
}

/** The connectors that were asked for, in the sheet's order. */
function chosenOf(
  { connectors }: BoardSheet,
  { connectors: ids }: PinoutOptions,
): Result<readonly Connector[], PaperProblem> {
  if (ids === null) return ok(connectors);
  const known = connectors.map(({ id }) => id);
  const strange = ids.find((id) => !known.includes(id));
  if (strange === undefined) return ok(connectors.filter(({ id }) => ids.includes(id)));
  const nearest = nearestOf(known, strange);
  return refuse({ code: 'no-such-connector', id: strange, ...(nearest !== undefined && { nearest }) });
}
