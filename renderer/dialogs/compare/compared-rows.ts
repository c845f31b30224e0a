import type { Connector, Pin } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import { alternativeWords, confidenceWords, pinWords, sourceWords } from '../../../boards/document/pin-words';
import type {
  BoardComparison,
  ConnectorRow,
  PinRow,
  SheetRow,
} from '../../../boards/edit/compare/compare-boards';
import { laidOpen } from '../../../boards/edit/compare/compare-boards';
import type { CaseComparison, LeadRow } from '../../../boards/edit/compare/compare-cases';
import { factWords, fieldWords } from '../../../boards/edit/compare/fact-words';
import { counted } from '../../words/list-words';
import { plugWords, shapeWords } from '../../words/plug-words';

/** What one sheet says in one row: the main thing, and in small what goes with it. */
export interface Said {
  readonly main: string;
  readonly small: string;
}

/** One row of two sheets side by side. */
export interface ComparedRow {
  readonly key: string;
  /** By which what is taken of it is chosen; null where it goes with the row above or nothing differs. */
  readonly takeKey: string | null;
  /** Of a particular of the sheet, a connector or a lead: its name in the file, and whose choice it goes with. */
  readonly particular?: { readonly field: string; readonly goesWith: string };
  /** Of two that cannot be one: keeping both means that both stand. */
  readonly apart?: boolean;
  /** A connector or a lead heads its pins and particulars. */
  readonly heading: boolean;
  readonly title: string;
  readonly mine: Said;
  readonly theirs: Said;
  readonly differs: boolean;
  /** Of a pin: where it is in each sheet. */
  readonly pin?: {
    readonly connector: string;
    readonly mine: string | undefined;
    readonly theirs: string | undefined;
  };
}

/** What stands for a connector or a lead that a sheet has not, and for a particular that it does not give. */
export const ABSENT = 'not in this sheet';
export const UNSAID = factWords(undefined);
const NOTHING: Said = { main: ABSENT, small: '' };
/** These a pin's line tells by itself. */
const TOLD = ['pin', 'missing', 'signal', 'channel', 'name', 'print', 'source', 'confidence', 'alternatives'];

/** Two board sheets as rows: what is said of the whole first, then connector by connector, pin by pin. */
export function boardRows(comparison: BoardComparison): readonly ComparedRow[] {
  const { mine, theirs, fields, connectors } = comparison;
  return [...sheetFacts(mine, theirs, fields), ...connectors.flatMap(connectorRows)];
}

/** Two case sheets as rows, lead by lead. */
export function caseRows({ mine, theirs, fields, leads }: CaseComparison): readonly ComparedRow[] {
  return [...sheetFacts(mine, theirs, fields), ...leads.flatMap(leadRows)];
}

function sheetFacts(mine: object, theirs: object, rows: readonly SheetRow[]): readonly ComparedRow[] {
  return rows.map(({ key, field }) => ({
    key,
    takeKey: key,
    particular: { field, goesWith: key },
    heading: false,
    title: fieldWords(field),
    mine: factOf(mine, field),
    theirs: factOf(theirs, field),
    differs: true,
  }));
}

/** Lists that would be too long to read are told as a number. */
const COUNTED: Readonly<Record<string, string>> = { readings: 'reading', photos: 'photo', wires: 'wire' };

function factOf(thing: object, field: string): Said {
  const value: unknown = Reflect.get(thing, field);
  const one = COUNTED[field];
  const words = one !== undefined && Array.isArray(value) ? counted(value.length, one) : factWords(value);
  return { main: words, small: '' };
}

function connectorRows(row: ConnectorRow): readonly ComparedRow[] {
  const { key, mine, theirs, fields, pins } = row;
  const differing = fields.length > 0 || pins.some((pin) => pin.fields.length > 0);
  const heading: ComparedRow = {
    key,
    takeKey: fields.length > 0 ? key : null,
    heading: true,
    title: nameOf(mine ?? theirs),
    mine: mine ? connectorSaid(mine) : NOTHING,
    theirs: theirs ? connectorSaid(theirs) : NOTHING,
    differs: differing,
    apart: !row.pinByPin,
  };
  if (mine === null || theirs === null) return [heading];
  const facts = fields.map((field) => fact(key, field, laidOpen(mine), laidOpen(theirs), !row.pinByPin));
  return [heading, ...facts, ...pins.map((pin) => pinRow(mine.id, pin, row.pinByPin))];
}

/** A particular of a connector or a lead. Where two stand apart, what becomes of them is said at their head. */
function fact(head: string, field: string, mine: object, theirs: object, apart: boolean): ComparedRow {
  return {
    key: `${head} ${field}`,
    takeKey: null,
    ...(!apart && { particular: { field, goesWith: head } }),
    heading: false,
    title: fieldWords(field),
    mine: factOf(mine, field),
    theirs: factOf(theirs, field),
    differs: true,
  };
}

function nameOf(connector: Connector | null): string {
  return connector === null ? '' : connector.print || connector.title || connector.id;
}

function connectorSaid(connector: Connector): Said {
  return { main: connector.title, small: shapeWords(connector) };
}

function pinRow(connector: string, { key, mine, theirs, fields }: PinRow, pinByPin: boolean): ComparedRow {
  const label = mine?.pin ?? theirs?.pin ?? '';
  const counted = mine !== null && theirs !== null && fields.includes('pin');
  const further = fields.filter((field) => !TOLD.includes(field));
  return {
    key,
    takeKey: pinByPin && fields.some((field) => field !== 'pin') ? key : null,
    heading: false,
    title: `pin\u00a0${label}`,
    mine: mine ? pinSaid(mine, counted, further) : { main: 'no such position', small: '' },
    theirs: theirs ? pinSaid(theirs, counted, further) : { main: 'no such position', small: '' },
    differs: fields.length > 0,
    pin: { connector, mine: mine?.pin, theirs: theirs?.pin },
  };
}

/** A pin in words: what it is, where that was read, what else is said of it. */
export function pinSaid(pin: Pin, numbered: boolean, further: readonly string[]): Said {
  const small = [
    ...(numbered ? [`number\u00a0${pin.pin}`] : []),
    ...(pin.source ? [sourceWords(pin)] : []),
    ...(pin.confidence === undefined ? [] : [confidenceWords(pin.confidence)]),
    ...(pin.alternatives ?? []).map(
      (other) => `also ${alternativeWords(other)}${other.name ? `, called ${other.name}` : ''}`,
    ),
    ...further
      .filter((field) => Reflect.get(pin, field) !== undefined)
      .map((field) => `${fieldWords(field)} ${factWords(Reflect.get(pin, field))}`),
  ];
  return { main: pinWords(pin), small: small.join('; ') };
}

function leadRows({ key, mine, theirs, fields }: LeadRow): readonly ComparedRow[] {
  const heading: ComparedRow = {
    key,
    takeKey: fields.length > 0 ? key : null,
    heading: true,
    title: (mine ?? theirs)?.name ?? '',
    mine: mine ? leadSaid(mine) : NOTHING,
    theirs: theirs ? leadSaid(theirs) : NOTHING,
    differs: fields.length > 0,
    apart: true,
  };
  if (mine === null || theirs === null) return [heading];
  return [heading, ...fields.map((field) => fact(key, field, mine, theirs, true))];
}

function leadSaid(lead: Lead): Said {
  return { main: lead.plugs.map((plug) => plugWords(lead, plug)).join('; '), small: '' };
}
