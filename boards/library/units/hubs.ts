import type { Pin } from '../../document/connector';
import type { Lead } from '../../document/lead';
import { FAMILY } from '../families';
import { HALF_PITCH, PERIPHERAL_PITCH, singleRow } from '../grids';
import { pinsFrom } from '../pin-rows';
import { plug } from '../plug-and-wires';
import { recalled } from '../reading';
import { type UnitType, unitType } from '../unit-type';
import { onDevice } from './devices';
import { type Outlet, several, soldered } from './outlets';

const HUB = 'fan hubs: which outlet tells the speed is common practice, no source';
const INSIDE = recalled('manual', 'inside of a fan hub');
const row = pinsFrom(INSIDE);

/** Two speed signals on one wire would jump about, so only the first outlet hands its own back. */
function fanOutlet(number: number): Outlet {
  const silent = (pin: Pin): Pin =>
    pin.signal === 'fan-tach' && number > 1 ? row(3, 'no-connection', 'no speed') : pin;
  return onDevice('fan-1x4', `fan-${number}`, String(number), silent);
}

/** The wires of a hub's own tail, from where they are soldered in to the holes of its fan plug. */
function tailTo(holes: readonly number[]): Lead {
  const COLOURS = ['black', 'yellow', 'green', 'blue'] as const;
  return {
    id: 'tail',
    name: 'Tail',
    parts: [],
    plugs: [
      plug('hub', '', singleRow(4), { family: FAMILY.soldered }),
      plug('header', '', singleRow(4), { rib: 'bottom' }),
    ],
    wires: holes.map((hole) => ({
      from: `hub.${hole}`,
      to: `header.${hole}`,
      colour: COLOURS[hole - 1] ?? 'grey',
    })),
  };
}

function tailEnd(): Outlet {
  return soldered('tail', 'tail to a fan header', singleRow(4), [
    row(1, 'ground', 'GND'),
    row(2, 'fan-supply', '+12 V'),
    row(3, 'fan-tach', 'TACH'),
    row(4, 'fan-pwm', 'PWM'),
  ]);
}

const TAIL_SEAT = {
  lead: 'tail',
  plug: 'hub',
  connector: 'tail',
  at: [0, 0] as [number, number],
  turn: 0,
} as const;

const adapter = pinsFrom(recalled('manual', 'inside of an adapter'));

/** Four-pin power handed on to a drive: what a SATA plug has beside it, the old plug has not. */
const SATA_TAIL: Lead = {
  id: 'tail',
  name: 'SATA tail',
  parts: [],
  plugs: [
    plug('inside', '', singleRow(4, PERIPHERAL_PITCH), { family: FAMILY.soldered }),
    plug('drive', 'SATA', singleRow(15, HALF_PITCH), { family: FAMILY.sataPower, rib: 'top' }),
  ],
  wires: [
    ...[13, 14, 15].map((to) => ({ from: 'inside.1', to: `drive.${to}`, colour: 'yellow' as const })),
    ...[10, 12].map((to) => ({ from: 'inside.2', to: `drive.${to}`, colour: 'black' as const })),
    ...[4, 5, 6].map((to) => ({ from: 'inside.3', to: `drive.${to}`, colour: 'black' as const })),
    ...[7, 8, 9].map((to) => ({ from: 'inside.4', to: `drive.${to}`, colour: 'red' as const })),
  ],
};

export const HUBS: readonly UnitType[] = [
  unitType(
    'fan-hub-header',
    'fan hub, fed from its header',
    HUB,
    'hub',
    [tailEnd(), ...several(4, fanOutlet)],
    {
      cables: [tailTo([1, 2, 3, 4])],
      seats: [TAIL_SEAT],
      notes: 'All its fans draw from the one header.',
    },
  ),
  unitType(
    'fan-hub-supply',
    'fan hub, fed from the supply',
    HUB,
    'hub',
    [onDevice('sata-power-15', 'power', 'POWER'), tailEnd(), ...several(6, fanOutlet)],
    {
      // The header only says how fast, and hears it back.
      cables: [tailTo([1, 3, 4])],
      seats: [TAIL_SEAT],
    },
  ),
  unitType(
    'sata-adapter',
    'four-pin power to SATA, an adapter',
    'pins of the SATA power segment, from a hardware handbook; the rest from memory',
    'hub',
    [
      onDevice('peripheral-power-1x4', 'in', 'IN'),
      soldered('tail', 'SATA tail', singleRow(4, PERIPHERAL_PITCH), [
        adapter(1, 'supply-12v', '+12 V'),
        adapter(2, 'ground', 'COM'),
        adapter(3, 'ground', 'COM'),
        adapter(4, 'supply-5v', '+5 V'),
      ]),
    ],
    {
      cables: [SATA_TAIL],
      seats: [{ lead: 'tail', plug: 'inside', connector: 'tail', at: [0, 0], turn: 0 }],
      notes: 'Adapters moulded in one piece have burnt; take one with crimped contacts.',
    },
  ),
];
