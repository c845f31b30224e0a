import { ok, type Result, refuse } from '../../base/result';
import type { BoardSheet } from '../../document/board-sheet';
import type { Connector, Pin } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import { gridIndex } from '../../document/numbering';
import { inCountingOrder } from '../pin-order';
import type { Refusal } from '../refusal';
import { factNote, withNotes } from './added-notes';
import { type BoardComparison, type ConnectorRow, laidOpen, type PinRow } from './compare-boards';
import { keepBoth } from './keep-both';
import { type Home, mergePhotos } from './merge-photos';
import { mergeReadings } from './merge-readings';
import { freeId, type TakeOf, takeFields, tooFull } from './taking';

/**
 * The first sheet with what was chosen of the second: each row of the comparison as it is in mine, as it is
 * in theirs, or with both. The sheet keeps its id, and so do connectors that were there before. Refuses a
 * sheet that would hold more than a sheet can.
 */
export function mergeBoards(comparison: BoardComparison, takeOf: TakeOf): Result<BoardSheet, Refusal> {
  const { mine, theirs, fields } = comparison;
  const ids = new Set(mine.connectors.map(({ id }) => id));
  const homes = new Map<string, Home>();
  const connectors = comparison.connectors.flatMap((row) => {
    const merged = mergeRow(row, takeOf, theirs.name, ids);
    if (row.theirs !== null && merged.home !== null) homes.set(row.theirs.id, merged.home);
    return merged.connectors;
  });
  if (connectors.length > LIMITS.connectors)
    return refuse({ code: 'full', what: 'connectors', limit: LIMITS.connectors });
  const photos = mergePhotos(comparison, takeOf('sheet photos'), connectors, homes);
  if (photos.length > LIMITS.photos) return refuse({ code: 'full', what: 'photos', limit: LIMITS.photos });
  const told = fields.filter(({ field }) => field !== 'photos');
  const { photos: _, ...rest } = takeFields(mine, theirs, told, takeOf, theirs.name);
  const merged: BoardSheet = { ...rest, connectors, ...(photos.length > 0 && { photos: [...photos] }) };
  const full = tooFull([merged, ...connectors, ...connectors.flatMap(({ pins }) => pins)]);
  return full === null ? ok(merged) : refuse(full);
}

interface MergedRow {
  readonly connectors: readonly Connector[];
  /** Where what theirs says of it has come to be; null where it was left. */
  readonly home: Home | null;
}

function mergeRow(row: ConnectorRow, takeOf: TakeOf, from: string, ids: Set<string>): MergedRow {
  const { mine, theirs } = row;
  const take = takeOf(row.key);
  if (theirs === null) return { connectors: mine === null || take === 'theirs' ? [] : [mine], home: null };
  const whole = (id: string): MergedRow => ({
    connectors: [{ ...theirs, id }],
    home: { connector: id, labelOf: (label) => label },
  });
  if (mine === null) return take === 'mine' ? { connectors: [], home: null } : whole(freeId(theirs.id, ids));
  if (row.pinByPin) {
    const countedAsTheirs = take === 'theirs';
    const labels = new Map(row.pins.map((pin) => [pin.theirs?.pin, pin.mine?.pin]));
    const labelOf = (label: string) => (countedAsTheirs ? label : labels.get(label));
    return {
      connectors: [mergePins(row, mine, theirs, takeOf, from)],
      home: { connector: mine.id, labelOf },
    };
  }
  if (take === 'mine') return { connectors: [mine], home: null };
  if (take === 'theirs') return whole(mine.id);
  // Grids of different size cannot be one: both stand on the board until somebody has looked.
  const beside = whole(freeId(theirs.id, ids));
  return { ...beside, connectors: [mine, ...beside.connectors] };
}

function mergePins(
  row: ConnectorRow,
  mine: Connector,
  theirs: Connector,
  takeOf: TakeOf,
  from: string,
): Connector {
  const rows = row.fields.filter((field) => field !== 'readings').map((field) => ({ key: row.key, field }));
  const {
    numbering,
    readings: _,
    ...taken
  } = takeFields(laidOpen(mine), laidOpen(theirs), rows, takeOf, from);
  const grid = { ...taken.grid, numbering };
  const { readings, lost } = mergeReadings(row, mine, theirs, takeOf(row.key));
  const countedAsTheirs = takeOf(row.key) === 'theirs';
  const listed = new Set([...mine.pins, ...theirs.pins]);
  const pins: Pin[] = [];
  const homeless = lost.map((reading) => factNote(from, 'readings', reading));
  for (const each of row.pins) {
    const pin = takenPin(each, takeOf, from);
    if (pin === null || (saysNothing(pin) && !listed.has(pin))) continue;
    const label = (countedAsTheirs ? each.theirs : each.mine)?.pin;
    const { pin: told, ...facts } = pin;
    if (label !== undefined && gridIndex(grid).cellOf(label)) pins.push({ ...pin, pin: label });
    else if (!saysNothing(pin)) homeless.push(factNote(from, `pin ${told}`, facts));
  }
  const notes = withNotes(taken.notes, homeless);
  return {
    ...taken,
    grid,
    pins: inCountingOrder(grid, pins),
    ...(readings.length > 0 && { readings }),
    ...(notes !== undefined && { notes }),
  };
}

function takenPin({ key, mine, theirs, fields }: PinRow, takeOf: TakeOf, from: string): Pin | null {
  if (fields.length === 0) return mine;
  const take = takeOf(key);
  if (take === 'theirs') return theirs;
  if (take === 'mine' || theirs === null) return mine;
  return mine === null ? theirs : keepBoth(mine, theirs, from);
}

function saysNothing(pin: Pin): boolean {
  return Object.keys(pin).length === 1;
}
