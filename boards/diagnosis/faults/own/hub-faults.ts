import type { Build, Seat } from '../../../document/build';
import type { Connector } from '../../../document/connector';
import { leadOf, leadsOf, unitsOf } from '../../../document/lookup';
import { connectorName, leadName } from '../../../document/names';
import { SOLDERED } from '../../../document/power-job';
import type { Unit } from '../../../document/unit';
import { contextOf } from '../../../findings/context';
import type { FindingOf } from '../../../findings/finding';
import { hubUnfed } from '../../../findings/rules/hub-unfed';
import type { BuildFans } from '../../../routing/assign/build-fans';
import { hasSignal } from '../../../routing/assign/has-signal';
import { type Way, way } from '../fault';
import { seatingId } from '../seating-id';
import { plugOff } from './plug-off';
import type { OwnFault } from './share-out';

/** A header or a hub that is asked for more than it may give. Common practice, no source. */
export const OVERLOADED: readonly Way[] = [
  way(
    1,
    {},
    { 'fan-stands': 0.4, 'fan-twitch': 0.4, 'fan-control-damaged': 0.4, 'hot-part': 0.2, smell: 0.1 },
  ),
];

const NO_POWER = { 'fan-stands': 0.9, 'fan-speed-zero': 0.5, 'fan-error': 0.2 };
const NO_SIGNAL = { 'fan-full-speed': 0.6, 'fan-one-speed': 0.5, 'fan-speed-zero': 0.5, 'fan-error': 0.2 };

/** What may be wrong with the fan hubs of a build; undefined where it has none. */
export function hubFaults(
  build: Build,
  ofFans: BuildFans,
  overloads: readonly FindingOf<'fan-overload'>[],
): readonly OwnFault[] | undefined {
  const hubs = unitsOf(build).filter(
    ({ kind, connectors }) => kind === 'hub' && connectors.some((each) => hasSignal(each, 'fan-supply')),
  );
  if (hubs.length === 0) return undefined;
  const unfed = new Set(hubUnfed.check(contextOf(build)).map(({ data }) => data.unit));
  return hubs.flatMap((hub) => [
    ...withUnfed(faultsOfHub(build, ofFans, hub), ofFans, hub, unfed.has(hub.id)),
    ...overloads
      .filter(({ data }) => data.hub === hub.id)
      .map(({ severity }) => ({
        id: `overloaded/${hub.id}`,
        name: `The fans on ${hub.name} ask more of it than it may carry.`,
        ways: OVERLOADED,
        isThere: severity !== 'doubt',
      })),
  ]);
}

/** Where its plugs sit, and no current comes by them all the same: beside their places, or from nowhere. */
function withUnfed(
  faults: readonly OwnFault[],
  ofFans: BuildFans,
  hub: Unit,
  isUnfed: boolean,
): readonly OwnFault[] {
  if (!isUnfed || faults.some(({ isThere }) => isThere)) return faults;
  const ways = [way(1, silentIn(ofFans, hub), NO_POWER)];
  const name = `Nothing feeds ${hub.name} by the plugs as they sit.`;
  return [...faults, { id: `unfed/${hub.id}`, name, ways, isThere: true }];
}

function faultsOfHub(build: Build, ofFans: BuildFans, hub: Unit): readonly OwnFault[] {
  const power = hub.connectors.find((each) => hasSignal(each, 'supply-12v'));
  const isUsed = build.seats.some(
    ({ lead, connector }) =>
      hub.connectors.some(({ id }) => id === connector) && (leadOf(build, lead)?.parts.length ?? 0) > 0,
  );
  return [
    ...(power ? withoutSupply(build, ofFans, hub, power, isUsed) : []),
    ...tailFaults(build, ofFans, hub, power, isUsed),
  ];
}

/** The plug of its own supply is off, or nothing is in there. */
function withoutSupply(
  build: Build,
  ofFans: BuildFans,
  hub: Unit,
  power: Connector,
  isUsed: boolean,
): readonly OwnFault[] {
  const seat = build.seats.find(({ connector }) => connector === power.id);
  const ways = [way(1, silentIn(ofFans, hub), NO_POWER)];
  if (seat === undefined)
    return [{ id: `off/${power.id}`, name: `Nothing feeds ${hub.name}.`, ways, isThere: isUsed }];
  return [{ ...plugOff(build, seat), ways }];
}

/** Its tail to a header: off, and where the board watches that header, on another one. */
function tailFaults(
  build: Build,
  ofFans: BuildFans,
  hub: Unit,
  power: Connector | undefined,
  isUsed: boolean,
): readonly OwnFault[] {
  const isOn = ({ connector }: Seat) => hub.connectors.some(({ id }) => id === connector);
  const tail = leadsOf(build).find(
    ({ id, parts, plugs }) =>
      parts.length === 0 &&
      plugs.some(({ family }) => family === SOLDERED) &&
      build.seats.some((seat) => seat.lead === id && isOn(seat)),
  );
  const plug = tail?.plugs.find(({ family }) => family !== SOLDERED);
  if (!tail || !plug) return [];
  const signs = power ? NO_SIGNAL : NO_POWER;
  const ways = [way(1, silentIn(ofFans, hub), signs)];
  const seat = build.seats.find((each) => each.lead === tail.id && each.plug === plug.id);
  const on = seat && ofFans.hung.find((each) => each.unit === hub && each.on === seat.connector)?.on;
  if (!seat || on === undefined)
    return [
      {
        id: seatingId({ lead: tail.id, plug: plug.id }, 'off'),
        name: `${leadName(build, tail.id)} is on no fan header.`,
        lead: tail.id,
        ways,
        // A hub with a supply of its own turns its fans without a header too.
        isThere: isUsed && power === undefined,
      },
    ];
  const off = { ...plugOff(build, seat), ways };
  const header = ofFans.headers.find(({ id }) => id === on);
  if (header?.watched !== true) return [off];
  const name = `${leadName(build, tail.id)} is on another header than ${connectorName(build, header.id)}.`;
  const elsewhere = { id: `${tail.id}/${plug.id}/other-header`, name, lead: tail.id };
  return [off, { ...elsewhere, ways: [way(1, silentIn(ofFans, hub), { 'fan-speed-zero': 0.3 })] }];
}

/** The board misses a speed where the hub hands one to the header that it watches, by itself or over other hubs. */
function silentIn({ headers, hung, heard }: BuildFans, hub: Unit): Way['machine'] {
  const hands = (speaking: string | undefined): boolean => {
    const on = hung.find(({ outlets }) => speaking !== undefined && outlets.includes(speaking));
    return on !== undefined && (on.unit === hub || hands(on.on));
  };
  return headers.some(({ id, watched }) => watched === true && hands(heard.get(id)))
    ? { processorFan: 'not-seen' }
    : {};
}
