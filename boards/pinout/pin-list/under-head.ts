import { cellsOf, type Extent, extentsOf } from './cells';
import { headOf } from './header-words';
import { type LabelStyle, onlyLabels } from './labels';

/** What is known of the columns of a table from its head. */
export interface Head {
  readonly columns: NonNullable<ReturnType<typeof headOf>>;
  /** Where they stand, in a table that only spaces part. */
  readonly extents: readonly Extent[] | undefined;
}

/** What a row says of pins: their labels, the word, and what explains it. */
interface Said {
  readonly labels: readonly string[];
  readonly word: string;
  readonly more: string;
}

/** The head that a line is; undefined where it is none. */
export function headIn(text: string): Head | undefined {
  const columns = headOf(cellsOf(text));
  return columns && { columns, extents: extentsOf(text) };
}

/**
 * What a row under a head says; undefined where it is none of the head's rows. A row may be shorter than its
 * head: its last cells are blank then, or, where its cells stand in line with the columns, others too.
 */
export function underHead(
  text: string,
  style: LabelStyle,
  { columns, extents }: Head,
): readonly Said[] | undefined {
  const told = cellsOf(text);
  if (told.length > columns.length || !columns.includes('label')) return undefined;
  const cells = told.length === columns.length ? told : (inLine(text, told, extents) ?? told);
  const places = columns.flatMap((column, at) => (column === 'label' ? [at] : []));
  const labelsAt = (place: number) => onlyLabels(cells[place] ?? '', style);
  const shifted = places.some((place) => (cells[place] ?? '') !== '' && labelsAt(place) === undefined);
  if (told.length < columns.length && shifted) return undefined;
  const words = columns.flatMap((column, at) => (column === 'word' ? [at] : []));
  // "Pin | Pin | Signal | Signal": the words in the order of their labels.
  if (places.length > 1 && words.length === places.length && (places.at(-1) ?? 0) < (words[0] ?? 0))
    return places.flatMap((place, order) => {
      const labels = labelsAt(place);
      return labels ? [{ labels, word: cells[words[order] ?? -1] ?? '', more: '' }] : [];
    });
  const wordsFirst = columns[0] === 'word';
  return places.flatMap((place, order) => {
    const labels = labelsAt(place);
    if (labels === undefined) return [];
    const mirrored = wordsFirst && !(order === places.length - 1 && order > 0 && place < columns.length - 1);
    const from = mirrored ? (places[order - 1] ?? -1) + 1 : place + 1;
    const to = mirrored ? place : (places[order + 1] ?? columns.length);
    const held = (column: 'word' | 'more') =>
      columns.slice(from, to).flatMap((each, at) => (each === column ? [cells[from + at] ?? ''] : []));
    const [word, ...further] = held('word');
    const more = [...further, ...held('more')].filter((each) => each !== '');
    return [
      { labels, word: word ?? more[0] ?? '', more: (word === undefined ? more.slice(1) : more).join(' ') },
    ];
  });
}

/** A cell stands in line with its column where it begins or ends no further off, as numbers are set to the right. */
const BESIDE = 1;

/** The cells of a row by the columns that they stand in line with; undefined where one of them stands in none. */
function inLine(
  text: string,
  cells: readonly string[],
  heads: Head['extents'],
): readonly string[] | undefined {
  const extents = extentsOf(text);
  if (heads === undefined || extents?.length !== cells.length) return undefined;
  const places = extents.map(({ from, to }) =>
    heads.findIndex((head) => Math.min(Math.abs(head.from - from), Math.abs(head.to - to)) <= BESIDE),
  );
  if (places.some((place, at) => place <= (places[at - 1] ?? -1))) return undefined;
  return heads.map((_, column) => cells[places.indexOf(column)] ?? '');
}
