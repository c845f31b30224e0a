import type { Connector, Pin } from '../document/connector';
import type { Grid } from '../document/grid';
import { pinsOfReading, relabelled } from '../document/pin-reading';
import { inCountingOrder } from './pin-order';

type LabelFor = (label: string) => string | undefined;

/** The connector on another grid: pins and readings take the labels they are given there; the rest goes. */
export function onGrid(connector: Connector, grid: Grid, labelFor: LabelFor): Connector {
  const { readings: old = [], ...rest } = connector;
  const pins = connector.pins.flatMap((pin): readonly Pin[] => {
    const label = labelFor(pin.pin);
    return label === undefined ? [] : [{ ...pin, pin: label }];
  });
  const readings = old.flatMap((reading) => relabelled(reading, labelFor) ?? []);
  return {
    ...rest,
    grid,
    pins: inCountingOrder(grid, pins),
    ...(readings.length > 0 && { readings }),
  };
}

/** The labels of pins of which something is known or was measured, and which get no label any more. */
export function lostPins({ pins, readings = [] }: Connector, labelFor: LabelFor): readonly string[] {
  const known = pins.filter((pin) => Object.keys(pin).length > 1).map(({ pin }) => pin);
  const all = new Set([...known, ...readings.flatMap(pinsOfReading)]);
  return [...all].filter((label) => labelFor(label) === undefined);
}
