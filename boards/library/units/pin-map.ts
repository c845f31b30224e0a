import type { Lead, Plug, Wire } from '../../document/lead';
import type { SignalId } from '../../signals/signals';
import { connectorTypeOf } from '../connectors/index';
import { plug } from '../plug-and-wires';
import { supplyColour } from '../supply-colours';
import type { Outlet } from './outlets';

/** A device's end of a cable: the plug's id, and the connector of the library that it is made for. */
export interface DeviceEnd {
  readonly id: string;
  readonly print: string;
  readonly serves: string;
}

/**
 * A cable as its maker wires it: from the outlet's pins to the pins of the device that want the same. Every
 * contact of the device has its wire, shared out over the outlet's pins that carry it; what the outlet has not
 * is left off.
 */
export function cableFrom(from: Outlet, id: string, name: string, ends: readonly DeviceEnd[]): Lead {
  const near = plug('supply', '', from.grid, { family: from.family, ...(from.shroud && { rib: 'bottom' }) });
  return {
    id,
    name,
    parts: [],
    plugs: [near, ...ends.map(devicePlug)],
    wires: ends.flatMap((end) => wiresTo(from, end)),
  };
}

function devicePlug({ id, print, serves }: DeviceEnd): Plug {
  const { grid, family, shroud } = connectorTypeOf(serves).connector;
  return plug(id, print, grid, { family, ...(shroud?.guide && { rib: shroud.guide }) });
}

/** What a contact of a device has to be given: sense contacts are grounded by the cable. */
const GIVEN: Readonly<Partial<Record<SignalId, SignalId>>> = {
  'card-sense': 'ground',
  'card-sense0': 'ground',
  'card-sense1': 'ground',
};

function wiresTo(from: Outlet, { id, serves }: DeviceEnd): Wire[] {
  const used = new Map<SignalId, number>();
  return connectorTypeOf(serves).connector.pins.flatMap(({ pin, signal = 'unknown' }): readonly Wire[] => {
    const wanted = GIVEN[signal] ?? signal;
    const colour = supplyColour(wanted);
    const sources = from.pins.filter((each) => each.signal === wanted);
    const turn = used.get(wanted) ?? 0;
    const source = sources[turn % sources.length];
    if (colour === undefined || source === undefined) return [];
    used.set(wanted, turn + 1);
    return [{ from: `supply.${source.pin}`, to: `${id}.${pin}`, colour }];
  });
}
