import type { Connector, Pin } from '../../document/connector';
import type { Grid } from '../../document/grid';
import type { SignalId } from '../../signals/signals';
import { connectorTypeOf } from '../connectors/index';
import { FAMILY } from '../families';
import { pinsFrom } from '../pin-rows';
import type { Reading } from '../reading';
import { box } from '../shrouds';

/** A connector of a unit, before it stands anywhere. */
export type Outlet = Omit<Connector, 'place'>;

const RAIL_NAMES: Readonly<Partial<Record<SignalId, string>>> = {
  ground: 'COM',
  'supply-3v3': '+3.3 V',
  'supply-5v': '+5 V',
  'supply-12v': '+12 V',
};

/** What each pin of an outlet carries, in counting order, as its maker's sheet says. */
export function outletPins(sheet: Reading, signals: readonly SignalId[]): Pin[] {
  const row = pinsFrom(sheet);
  return signals.map((signal, at) => row(at + 1, signal, RAIL_NAMES[signal] ?? signal));
}

/** What each pin of main power carries, in counting order: a supply hands it on straight. */
export function mainSignals(): readonly SignalId[] {
  return connectorTypeOf('main-power-24').connector.pins.map(({ signal = 'unknown' }) => signal);
}

/** A socket of a modular supply: the shape is the trade's, the pins are its maker's. */
export function outlet(id: string, print: string, title: string, grid: Grid, pins: Pin[]): Outlet {
  return { id, print, title, family: FAMILY.supplySide, grid, pins, shroud: box('bottom') };
}

/** Where the wires of a cable are soldered in: no plug of another unit ever goes there. */
export function soldered(id: string, title: string, grid: Grid, pins: Pin[]): Outlet {
  return { id, print: '', title, family: FAMILY.soldered, grid, pins };
}

/** Sockets alike, numbered. */
export function several(count: number, make: (number: number) => Outlet): Outlet[] {
  return Array.from({ length: count }, (_, at) => make(at + 1));
}
