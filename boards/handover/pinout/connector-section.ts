import type { Mm } from '../../base/units';
import type { Connector } from '../../document/connector';
import { rowPitchOf } from '../../document/grid';
import { pinOf } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import type { Measure } from '../../drawing/measure';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { type Column, goingOn, tableOf } from '../page/table';
import { baseline, lineHeight, linesAt, TYPES, type Type, textAt } from '../page/type';
import { headerDrawing } from './header-drawing';
import type { PinoutOptions } from './options';
import { pinNotes } from './pin-notes';
import { type PinRow, pinRows, sourcesOf } from './pin-rows';

/** A drawing as wide as this at most leaves room for the table beside it. */
const BESIDE_MM: Mm = 78;
const GUTTER_MM: Mm = 7;
const AFTER_MM: Mm = 7;

interface Room {
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/** Everything about one connector: heading, drawing, table, what is to be said beside it. */
export function connectorSection(
  connector: Connector,
  number: number,
  lying: Pick<PinoutOptions, 'turn' | 'mirrored'>,
  room: Room,
  measure: Measure,
): readonly Piece[] {
  const heading = headingOf(connector, number, lying.mirrored, room.widthMm, measure);
  const drawingRoom = { widthMm: room.widthMm, heightMm: room.heightMm - heading.heightMm - 20 };
  const { tiles, innerRows } = headerDrawing(connector, lying, drawingRoom, measure);
  const sources = sourcesOf(connector);
  const { rows, leftOut } = pinRows(connector, sources);
  const [only] = tiles;
  const beside = tiles.length === 1 && only !== undefined && only.widthMm <= BESIDE_MM;
  const tableLeft = beside ? only.widthMm + GUTTER_MM : 0;
  const columns = columnsIn(room.widthMm - tableLeft, rows);
  const cells = rows.map((row) => columns.map(({ of }) => row[of]));
  const goesOn = goingOn(`${number}\u00a0\u00a0${nameOf(connector)}, continued`, room.widthMm, measure);
  const table = tableOf(columns, cells, { leftMm: tableLeft, goesOn }, measure);
  const notes = [
    ...(innerRows ? ['The names of the inner rows stand in the table.'] : []),
    ...(leftOut > 0 ? [`Nothing is known yet of ${leftOut} pins: they are not in the table.`] : []),
    ...pinNotes(connector, sources),
    ...(connector.notes === undefined || connector.notes.trim() === '' ? [] : [connector.notes.trim()]),
    ...sources.lines,
  ];
  const pieces: readonly Piece[] = [
    { kind: 'strip', strip: heading },
    ...(beside
      ? [{ kind: 'float', strip: only } as const]
      : tiles.flatMap((tile): readonly Piece[] => [{ kind: 'strip', strip: tile, head: goesOn }, gap(3)])),
    ...table,
    { kind: 'clear' },
    ...(notes.length === 0 ? [] : [gap(2)]),
    ...notes.flatMap((note) => paragraph(note, TYPES.small, room.widthMm, measure)),
    gap(AFTER_MM),
  ];
  return [
    { kind: 'keep', heightMm: togetherMm(pieces, beside ? only.heightMm : 0, room.heightMm) },
    { kind: 'mark', mark: connector.id },
    ...pieces,
  ];
}

/**
 * How much has to stand on one page: all of it where a page can hold it, or else as much as a heading
 * needs for company.
 */
function togetherMm(pieces: readonly Piece[], floatMm: Mm, pageMm: Mm): Mm {
  const heights = pieces.map((piece) => (piece.kind === 'strip' ? piece.strip.heightMm : 0));
  const [heading = 0, first = 0, second = 0] = heights.filter((height) => height > 0);
  const rest = heights.reduce((sum, height) => sum + height, 0) - AFTER_MM;
  const all = Math.max(rest, heading + floatMm);
  return all <= pageMm ? all : heading + Math.max(floatMm, first + second);
}

function nameOf({ print, title, id }: Connector): string {
  return print.trim() || title.trim() || id;
}

function headingOf(
  connector: Connector,
  number: number,
  mirrored: boolean,
  widthMm: Mm,
  measure: Measure,
): Strip {
  const name = nameOf(connector);
  const lead = `${number}\u00a0\u00a0`;
  const indent = measure(lead, TYPES.heading.sizeMm, TYPES.heading.face);
  const names = linesOf(name, widthMm - indent, TYPES.heading, measure);
  const said = name === connector.title.trim() ? '' : `${connector.title.trim()} · `;
  const facts = linesOf(
    `${said}${shapeFacts(connector)}${mirrored ? ', mirrored' : ''}`,
    widthMm - indent,
    TYPES.soft,
    measure,
  );
  const namesMm = names.length * lineHeight(TYPES.heading);
  return {
    heightMm: namesMm + facts.length * lineHeight(TYPES.soft) + 3,
    draw: ({ x, y }) => [
      textAt(lead.trim(), { x, y: y + baseline(TYPES.heading) }, TYPES.heading, measure),
      ...linesAt(names, { x: x + indent, y }, TYPES.heading, measure),
      ...linesAt(facts, { x: x + indent, y: y + namesMm }, TYPES.soft, measure),
    ],
  };
}

/** "2 by 5 at 2.54 mm, 9 pins and 1 gap, walled, drawn not to scale". */
function shapeFacts(connector: Connector): string {
  const { grid, shroud } = connector;
  const { positions } = gridIndex(grid);
  const gaps = positions.filter(({ label }) => pinOf(connector, label).missing === true).length;
  const pins = positions.length - gaps;
  const rowPitch = rowPitchOf(grid);
  const pitch =
    rowPitch === grid.pitchMm ? mm(grid.pitchMm) : `${mm(grid.pitchMm)}, rows ${mm(rowPitch)} apart`;
  const walls =
    shroud === undefined || shroud.walls.length === 0 ? '' : wallWords(shroud.guide !== undefined);
  return [
    `${grid.rows}\u00a0by\u00a0${grid.cols} at ${pitch}`,
    `${pins}\u00a0${pins === 1 ? 'pin' : 'pins'}${gaps === 0 ? '' : ` and ${gaps}\u00a0${gaps === 1 ? 'gap' : 'gaps'}`}`,
    ...(walls === '' ? [] : [walls]),
    'not to scale',
  ].join(', ');
}

function wallWords(guided: boolean): string {
  return guided ? 'walls with a slot or latch' : 'walls';
}

function mm(length: Mm): string {
  return `${Number(length.toFixed(2))}\u00a0mm`;
}

/**
 * A column for each thing that is known of the pins, sharing the width by what usually stands in them; one
 * for the print on the board only where the sheet tells it apart from the manual's name.
 */
function columnsIn(
  widthMm: Mm,
  rows: readonly PinRow[],
): readonly (Column & { readonly of: keyof PinRow })[] {
  const printed = rows.some(({ print }) => print !== '');
  const [pin, sure, source] = [11, 21, Math.min(30, widthMm * 0.22)];
  const rest = widthMm - pin - sure - source;
  const [signal, print, name] = printed ? [0.4, 0.3, 0.3] : [0.55, 0, 0.45];
  return [
    { of: 'pin', title: 'Pin', widthMm: pin, type: TYPES.pin },
    { of: 'signal', title: 'Signal', widthMm: rest * signal, type: TYPES.strong },
    ...(printed ? [{ of: 'print', title: 'Print', widthMm: rest * print, type: TYPES.cell } as const] : []),
    { of: 'name', title: 'Name', widthMm: rest * name, type: TYPES.cell },
    { of: 'source', title: 'Source', widthMm: source, type: TYPES.cell },
    { of: 'sure', title: 'How sure', widthMm: sure, type: TYPES.cell },
  ];
}

/** A text whose lines may go on on the next page. */
export function paragraph(text: string, type: Type, widthMm: Mm, measure: Measure): readonly Piece[] {
  return linesOf(text, widthMm, type, measure).map((line): Piece => {
    const strip: Strip = {
      heightMm: lineHeight(type),
      draw: (at) => linesAt([line], at, type, measure),
    };
    return { kind: 'strip', strip };
  });
}
