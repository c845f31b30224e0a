import type { Connector } from '../../document/connector';
import type { PinReading } from '../../document/pin-reading';
import { same } from '../same';
import type { ConnectorRow } from './compare-boards';
import type { Take } from './taking';

interface MergedReadings {
  readonly readings: PinReading[];
  /** Readings of theirs on pins that mine has not. */
  readonly lost: readonly PinReading[];
}

/**
 * What was measured on a connector by either sheet: mine first, theirs under the numbers that mine gives
 * to the same pins. A reading that both have stands once.
 */
export function mergeReadings(
  row: ConnectorRow,
  mine: Connector,
  theirs: Connector,
  take: Take,
): MergedReadings {
  const [ours, others] = [mine.readings ?? [], theirs.readings ?? []];
  if (take !== 'both') return { readings: [...(take === 'mine' ? ours : others)], lost: [] };
  const labels = new Map(row.pins.map((pin) => [pin.theirs?.pin, pin.mine?.pin]));
  const told = others.map((reading) => ({ reading, here: renamed(reading, (label) => labels.get(label)) }));
  const found = told.flatMap(({ here }) => (here === null ? [] : [here]));
  return {
    readings: [...ours, ...found.filter((one) => !ours.some((other) => same(one, other)))],
    lost: told.filter(({ here }) => here === null).map(({ reading }) => reading),
  };
}

/** The same reading with its pins called otherwise; null where one of them has no such name. */
function renamed(reading: PinReading, nameOf: (label: string) => string | undefined): PinReading | null {
  switch (reading.kind) {
    case 'ohms':
    case 'volts': {
      const pin = nameOf(reading.pin);
      return pin === undefined ? null : { ...reading, pin };
    }
    case 'continuity':
    case 'touch': {
      const [first, second] = reading.pins.map(nameOf);
      return first === undefined || second === undefined ? null : { ...reading, pins: [first, second] };
    }
    case 'lamp': {
      const [plus, minus] = [nameOf(reading.plus), nameOf(reading.minus)];
      return plus === undefined || minus === undefined ? null : { ...reading, plus, minus };
    }
  }
}
