import type { Mm } from '../../base/units';
import type { BoardSheet } from '../../document/board-sheet';
import type { Connector } from '../../document/connector';
import type { Measure } from '../../drawing/measure';
import { formFactorEntry } from '../../library/form-factors';
import { gap, type Piece, type Strip } from '../page/flow';
import type { Drawn } from '../page/page';
import { linesOf } from '../page/paragraph';
import { baseline, halfCapital, lineHeight, linesAt, TYPES, textAt } from '../page/type';
import { boardMap } from './board-map';
import { paragraph } from './connector-section';
import { lyingAdvice, lyingWords } from './lying-words';
import type { PinoutOptions } from './options';
import { disputedSign, doubtSign } from './signs';

interface Room {
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/** What stands before the connectors: the board's name, how it lies, the map, the list, the signs. */
export function firstPage(
  board: BoardSheet,
  printed: readonly Connector[],
  options: PinoutOptions,
  room: Room,
  measure: Measure,
): readonly Piece[] {
  const numberOf = new Map(printed.map((connector, index) => [connector, index + 1]));
  const mapMm = Math.min(room.heightMm * 0.45, printed.length <= 3 ? 62 : 118);
  return [
    ...paragraphStrong(board.name, room.widthMm, measure),
    ...paragraph(factsOf(board, printed), TYPES.soft, room.widthMm, measure),
    gap(1.5),
    ...[...paragraph(`${lyingWords(options)}.`, TYPES.strong, room.widthMm, measure)],
    ...paragraph(lyingAdvice(options), TYPES.body, room.widthMm, measure),
    {
      kind: 'strip',
      strip: boardMap(
        board,
        { lying: options, room: { widthMm: room.widthMm, heightMm: mapMm }, numberOf },
        measure,
      ),
    },
    gap(1),
    ...listOf(printed, room.widthMm, measure),
    gap(3),
    { kind: 'strip', strip: signsStrip(measure) },
    ...(board.notes === undefined || board.notes.trim() === ''
      ? []
      : [gap(2), ...paragraph(board.notes.trim(), TYPES.small, room.widthMm, measure)]),
    gap(7),
  ];
}

function paragraphStrong(text: string, widthMm: Mm, measure: Measure): readonly Piece[] {
  return paragraph(text, TYPES.title, widthMm, measure);
}

function factsOf({ outline, connectors }: BoardSheet, printed: readonly Connector[]): string {
  const kept = outline.formFactor === undefined ? '' : `${formFactorEntry(outline.formFactor).name} `;
  const size = `Pinout · ${kept}board of ${outline.widthMm}\u00a0by\u00a0${outline.depthMm}\u00a0mm`;
  const all = `${connectors.length}\u00a0${connectors.length === 1 ? 'connector' : 'connectors'}`;
  if (connectors.length === 0) return `${size} · no connectors on this sheet yet`;
  return printed.length === connectors.length
    ? `${size} · ${all}`
    : `${size} · ${printed.length} of its ${all}`;
}

/** The connectors by number, in two columns, each with its page. */
function listOf(printed: readonly Connector[], widthMm: Mm, measure: Measure): readonly Piece[] {
  const columnMm = (widthMm - 8) / 2;
  const entries = printed.map((connector, index) => entryOf(connector, index + 1, columnMm, measure));
  const half = Math.ceil(entries.length / 2);
  // A long list is read across, so that it can go on on the next page.
  const pairs = Array.from({ length: half }, (_, row) =>
    entries.length > 60 ? [entries[2 * row], entries[2 * row + 1]] : [entries[row], entries[row + half]],
  );
  return pairs.map((pair): Piece => {
    const strip: Strip = {
      heightMm: Math.max(...pair.map((entry) => entry?.heightMm ?? 0)),
      draw: ({ x, y }, book) =>
        pair.flatMap((entry, column) => entry?.draw({ x: x + column * (columnMm + 8), y }, book) ?? []),
    };
    return { kind: 'strip', strip };
  });
}

const NUMBER_MM: Mm = 8;
const PAGE_MM: Mm = 12;

function entryOf(connector: Connector, number: number, widthMm: Mm, measure: Measure): Strip {
  const name = connector.print.trim() || connector.id;
  const words = `${name}\u00a0· ${connector.title.trim()}`;
  const lines = linesOf(words, widthMm - NUMBER_MM - PAGE_MM, TYPES.body, measure);
  return {
    heightMm: lines.length * lineHeight(TYPES.body) + 0.6,
    draw: ({ x, y }, book) => {
      const down = y + baseline(TYPES.body);
      const page = `page\u00a0${book.pageOf(connector.id) ?? ''}`;
      return [
        textAt(String(number), { x: x + NUMBER_MM - 2.5, y: down }, TYPES.strong, measure, 'end'),
        ...linesAt(lines, { x: x + NUMBER_MM, y }, TYPES.body, measure),
        textAt(page, { x: x + widthMm, y: down }, TYPES.small, measure, 'end'),
      ];
    },
  };
}

/** What the signs on the drawings mean. */
function signsStrip(measure: Measure): Strip {
  const type = TYPES.small;
  const high = 4.6;
  return {
    heightMm: high + 1,
    draw: ({ x, y }) => {
      const middle = y + high / 2;
      const text = (words: string, at: Mm) =>
        textAt(words, { x: at, y: middle + halfCapital(type.sizeMm) }, type, measure);
      const drawn: Drawn[] = [];
      let left = x;
      const entry = (sign: (at: Mm) => readonly Drawn[], signMm: Mm, words: string) => {
        const set = text(words, left + signMm + 1.4);
        drawn.push(...sign(left), set);
        left += signMm + 1.4 + set.widthMm + 6;
      };
      entry((at) => cutCorner(at, middle), 4, 'cut corner: pin 1');
      entry((at) => gapSign(at, middle), 4, 'no pin stands here');
      entry(
        (at) => doubtSign({ x: at + 1.6, y: middle }, 1.6, measure),
        3.2,
        'a guess or unknown: measure first',
      );
      entry(
        (at) => disputedSign({ x: at + 2.4, y: middle + 1.2 }, 2.4),
        2.4,
        'sources differ: see below the table',
      );
      return drawn;
    },
  };
}

function cutCorner(x: Mm, middle: Mm): readonly Drawn[] {
  const y = middle - 2;
  const points = [
    { x: x + 1.6, y },
    { x: x + 4, y },
    { x: x + 4, y: y + 4 },
    { x, y: y + 4 },
    { x, y: y + 1.6 },
  ];
  const corner = [
    { x, y },
    { x: x + 1.6, y },
    { x, y: y + 1.6 },
  ];
  return [
    { kind: 'shape', points, paint: { fill: 'faint', stroke: { ink: 'ink', widthMm: 0.25 } } },
    { kind: 'shape', points: corner, paint: { fill: 'ink' } },
  ];
}

function gapSign(x: Mm, middle: Mm): readonly Drawn[] {
  const box = { x: x + 0.3, y: middle - 1.7, width: 3.4, height: 3.4 };
  return [
    { kind: 'rect', box, paint: { stroke: { ink: 'soft', widthMm: 0.25, dashMm: 0.6 } } },
    {
      kind: 'line',
      from: { x: box.x, y: box.y + box.height },
      to: { x: box.x + box.width, y: box.y },
      stroke: { ink: 'soft', widthMm: 0.25 },
    },
  ];
}
