import type { Connector, Pin } from '../../../../boards/document/connector';
import { readPinList } from '../../../../boards/pinout/pin-list/pin-list';
import type { ReadPin } from '../../../../boards/pinout/pin-list/reading';
import { isPrinted } from './print-pin';

/**
 * What the names that were read on a photo mean, for pins that have a name and no signal yet. All names of
 * the header are read together, as a pin list is: what "+" or "LED" is for, only its neighbours say.
 */
export function meantPins(connector: Connector, title: string): readonly Pin[] {
  const named = connector.pins.filter(({ name, missing }) => name !== undefined && missing !== true);
  const text = named.map(({ pin, name }) => `${pin}\t${name}`).join('\n');
  const list = readPinList(text, { grid: connector.grid, title: connector.title });
  if (!list.ok) return [];
  return list.value.pins.flatMap((read) => {
    const pin = named.find((each) => each.pin === read.label);
    if (pin === undefined || pin.signal !== undefined || !isPrinted(pin, title)) return [];
    return meant(pin, read);
  });
}

function meant(pin: Pin, { signal, belongsTo, channel, confidence }: ReadPin): readonly Pin[] {
  if (signal === undefined) return [];
  return [
    {
      ...pin,
      signal,
      ...(belongsTo !== undefined && { belongsTo }),
      ...(channel !== undefined && { channel }),
      confidence,
    },
  ];
}
