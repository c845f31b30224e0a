import { grouped } from '../../base/grouped';
import type { Mm } from '../../base/units';
import type { Build } from '../../document/build';
import type { Connector } from '../../document/connector';
import { plugName } from '../../document/names';
import type { Measure } from '../../drawing/measure';
import { jointsOfPlug } from '../../fit/joints';
import type { SeatedPlug } from '../../fit/seated-plug';
import { signalOf } from '../../signals/signals';
import { gap, type Piece, type Strip } from '../page/flow';
import { linesOf } from '../page/paragraph';
import { type Column, goingOn, tableOf } from '../page/table';
import { lineHeight, linesAt, TYPES } from '../page/type';
import { paragraph } from '../pinout/connector-section';
import { NO_PLUGS } from './bench-words';
import { closeUp } from './close-up';
import { partHeading } from './part-heading';
import { closeUpMark } from './steps-part';
import { wireColour } from './wire-colour-words';

/** A drawing as wide as this at most leaves room for the table beside it. */
const BESIDE_MM: Mm = 88;
const GUTTER_MM: Mm = 7;
const AFTER_MM: Mm = 7;
/** Of the head of the part, which the first header shares its page with. */
const HEAD_MM: Mm = 24;

interface Room {
  readonly widthMm: Mm;
  readonly heightMm: Mm;
}

/** Every header with plugs, in the order in which they are first come to. */
export function closeUpsPart(
  build: Build,
  plugs: readonly SeatedPlug[],
  lying: Build['view'],
  room: Room,
  measure: Measure,
): readonly Piece[] {
  const byConnector = grouped(plugs, ({ connector }) => connector);
  // A header that takes a whole page leaves the head of the part a place of its own above it.
  const below = { ...room, heightMm: room.heightMm - HEAD_MM };
  const pieces = [...byConnector].flatMap(([connector, own], at) =>
    closeUpSection(build, connector, own, lying, at === 0 ? below : room, measure),
  );
  const [first] = pieces;
  return [
    ...partHeading('close-ups', room.widthMm, measure, first?.kind === 'keep' ? first.heightMm : undefined),
    ...(plugs.length === 0 ? paragraph(NO_PLUGS, TYPES.body, room.widthMm, measure) : []),
    ...pieces,
  ];
}

function closeUpSection(
  build: Build,
  connector: Connector,
  plugs: readonly SeatedPlug[],
  lying: Build['view'],
  room: Room,
  measure: Measure,
): readonly Piece[] {
  const name = connectorText(connector);
  const heading = headingStrip(name, connector, room.widthMm, measure);
  const drawingRoom = { widthMm: room.widthMm, heightMm: room.heightMm - heading.heightMm - 20 };
  const { tiles, innerRows, hiddenWires } = closeUp(build, connector, plugs, lying, drawingRoom, measure);
  const [only] = tiles;
  const beside = tiles.length === 1 && only !== undefined && only.widthMm <= BESIDE_MM;
  const leftMm = beside ? only.widthMm + GUTTER_MM : 0;
  const goesOn = goingOn(`${name}, continued`, room.widthMm, measure);
  const rows = plugs.flatMap((seated) => wireRows(build, seated));
  const table = tableOf(columnsIn(room.widthMm - leftMm), rows, { leftMm, goesOn }, measure);
  const notes = [
    ...plugs.filter((seated) => jointsOfPlug(seated).length === 0).map((seated) => bareWords(build, seated)),
    ...(hiddenWires > 0 ? ['The wires of the inner rows stand in the table.'] : []),
    ...(innerRows ? ['The names of the inner rows stand on the board’s pinout.'] : []),
  ];
  const pieces: readonly Piece[] = [
    { kind: 'strip', strip: heading },
    ...(beside
      ? [{ kind: 'float', strip: only } as const]
      : tiles.flatMap((tile): readonly Piece[] => [{ kind: 'strip', strip: tile, head: goesOn }, gap(3)])),
    ...(rows.length === 0 ? [] : table),
    { kind: 'clear' },
    ...notes.flatMap((note) => paragraph(note, TYPES.small, room.widthMm, measure)),
    gap(AFTER_MM),
  ];
  const floatMm = beside ? only.heightMm : 0;
  return [
    { kind: 'keep', heightMm: togetherMm(pieces, floatMm, room.heightMm) },
    { kind: 'mark', mark: closeUpMark(connector.id) },
    ...pieces,
  ];
}

/** All of it where a page can hold it, or else the heading with the drawing and the head of the table. */
function togetherMm(pieces: readonly Piece[], floatMm: Mm, pageMm: Mm): Mm {
  const heights = pieces.flatMap((piece) => (piece.kind === 'strip' ? [piece.strip.heightMm] : []));
  const [heading = 0, first = 0, second = 0] = heights.filter((height) => height > 0);
  const all = Math.max(heights.reduce((sum, height) => sum + height, 0) - AFTER_MM, heading + floatMm);
  return all <= pageMm ? all : heading + Math.max(floatMm, first + second);
}

function connectorText({ print, title, id }: Connector): string {
  return print.trim() || title.trim() || id;
}

function headingStrip(name: string, { title }: Connector, widthMm: Mm, measure: Measure): Strip {
  const names = linesOf(name, widthMm, TYPES.heading, measure);
  const facts = name === title.trim() ? [] : linesOf(title.trim(), widthMm, TYPES.soft, measure);
  const namesMm = names.length * lineHeight(TYPES.heading);
  return {
    heightMm: namesMm + facts.length * lineHeight(TYPES.soft) + 2.5,
    draw: ({ x, y }) => [
      ...linesAt(names, { x, y }, TYPES.heading, measure),
      ...linesAt(facts, { x, y: y + namesMm }, TYPES.soft, measure),
    ],
  };
}

/** Hole to wire to pin to signal, one row a wire. */
function wireRows(build: Build, seated: SeatedPlug): readonly (readonly string[])[] {
  const { lead, plug } = seated;
  const name = plugName(build, { lead: lead.id, plug: plug.id });
  return jointsOfPlug(seated).map(({ hole, wire, pin }) => [
    name,
    hole === plug.mark ? `${hole}, mark` : hole,
    wireColour(wire),
    pin?.pin ?? 'none',
    pin ? signalOf(pin.signal ?? 'unknown').name : '',
    pin?.name?.trim() ?? '',
  ]);
}

function bareWords(build: Build, { lead, plug }: SeatedPlug): string {
  return `${plugName(build, { lead: lead.id, plug: plug.id })}: no hole of it has a wire.`;
}

function columnsIn(widthMm: Mm): readonly Column[] {
  const shares = [
    ['Plug', 0.22, TYPES.cell],
    ['Hole', 0.14, TYPES.cell],
    ['Wire', 0.17, TYPES.strong],
    ['Pin', 0.1, TYPES.pin],
    ['Signal', 0.21, TYPES.cell],
    ['Name', 0.16, TYPES.cell],
  ] as const;
  return shares.map(([title, share, type]) => ({ title, widthMm: widthMm * share, type }));
}
