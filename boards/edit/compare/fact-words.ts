import { listed } from '../../base/listed';
import { isRecord } from '../../document/is-record';
import { SIGNAL_IDS, signalOf } from '../../signals/signals';

/** "belongsTo" as a person would say it: "belongs to". */
export function fieldWords(field: string): string {
  return (
    FIELDS[field] ??
    field
      .replace(/Mm$/, ' in millimetres')
      .replace(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  );
}

const FIELDS: Readonly<Record<string, string>> = {
  pin: 'number',
  belongsTo: 'belongs to',
  wakeSupply: 'wake jumper',
  outline: 'size',
  family: 'kind of plug',
  grid: 'positions',
  place: 'place on the board',
  parts: 'parts',
  missing: 'gap',
};

/** Whatever a sheet says under one name, in words: "2 × 5, 2.54 mm apart", "x 12 mm, y 30 mm, turned 90°". */
export function factWords(value: unknown): string {
  if (value === undefined) return 'nothing said';
  if (value === true) return 'yes';
  if (value === null) return '–';
  if (typeof value === 'string') return value === '' ? 'empty' : value;
  if (Array.isArray(value)) return listWords(value);
  return isRecord(value) ? recordWords(value) : String(value);
}

/** A long list of things with fields of their own, such as the paths of a tray, is only counted. */
function listWords(items: readonly unknown[]): string {
  if (items.length > MOST_LISTED && items.every(isRecord)) return `${items.length} entries`;
  return items.length === 0 ? 'none' : listed(items.map(factWords));
}

const MOST_LISTED = 8;

function signalWords(value: unknown): string {
  const id = SIGNAL_IDS.find((known) => known === value);
  return id === undefined ? factWords(value) : signalOf(id).name;
}

function recordWords(record: Readonly<Record<string, unknown>>): string {
  const { xMm, yMm, turn, widthMm, depthMm, heightMm, rows, cols, pitchMm, kind, where, ...rest } = record;
  return [
    ...(xMm === undefined ? [] : [`x\u00a0${xMm}\u00a0mm, y\u00a0${yMm}\u00a0mm`]),
    ...(turn === undefined ? [] : [`turned ${turn}°`]),
    ...(widthMm === undefined ? [] : [`${widthMm}\u00a0×\u00a0${depthMm ?? heightMm}\u00a0mm`]),
    ...(rows === undefined ? [] : [`${rows}\u00a0×\u00a0${cols}`]),
    ...(pitchMm === undefined ? [] : [`${pitchMm}\u00a0mm apart`]),
    ...(kind === undefined ? [] : [where === undefined ? `${kind}` : `${kind}, ${where}`]),
    ...Object.entries(rest)
      .filter(([, item]) => item !== undefined)
      .map(
        ([name, item]) => `${fieldWords(name)} ${name === 'signal' ? signalWords(item) : factWords(item)}`,
      ),
  ].join(', ');
}
