import type { Pin, PinSource } from '../document/connector';
import type { SignalId } from '../signals/signals';
import type { Reading } from './reading';

type Extras = Partial<Pick<Pin, 'channel' | 'belongsTo' | 'alternatives' | 'notes'>>;
type PinRow = (pin: number, signal: SignalId, name: string, extras?: Extras) => Pin;

/** Rows of one pinout table, all read in the same place. "name" is what the paper prints at the pin. */
export function pinsFrom(reading: Reading): PinRow {
  return (pin, signal, name, extras) => ({
    pin: String(pin),
    signal,
    name,
    source: reading.source,
    confidence: reading.confidence,
    ...extras,
  });
}

/** A run of pins that carry the same: grounds, rails. */
export function pinsAlike(
  row: PinRow,
  pins: readonly number[],
  signal: SignalId,
  name: string,
  extras?: Extras,
) {
  return pins.map((pin) => row(pin, signal, name, extras));
}

/** The position where no pin stands. */
export function keyAt(pin: number, reading: Reading): Pin {
  return {
    pin: String(pin),
    missing: true,
    name: 'KEY',
    source: reading.source,
    confidence: reading.confidence,
  };
}

/** What another paper says of the same pin. */
export function otherwise(signal: SignalId, source: PinSource) {
  return { signal, source };
}
