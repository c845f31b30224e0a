import type { Seat } from '../../document/build';
import type { Pin } from '../../document/connector';
import type { SignalId } from '../../signals/signals';
import { rowAfterRow, singleRow } from '../grids';
import { readIn } from '../reading';
import { type UnitType, unitType } from '../unit-type';
import { mainSignals, type Outlet, outletPins, soldered } from './outlets';
import { cableFrom, type DeviceEnd } from './pin-map';

const INSIDE = readIn(
  'standard',
  'cables soldered in: each contact has the rail of the pin that it is made for',
);

function inside(signals: readonly SignalId[]): Pin[] {
  return outletPins(INSIDE, signals);
}

/** What comes out of the box: where it is soldered in, and where it goes. */
const CABLES: readonly { readonly at: Outlet; readonly name: string; readonly ends: readonly DeviceEnd[] }[] =
  [
    {
      at: soldered('main', 'Main power cable', rowAfterRow(12), inside(mainSignals())),
      name: 'Main power cable',
      ends: [{ id: 'board', print: '', serves: 'main-power-24' }],
    },
    {
      at: soldered('cpu', 'CPU cable', singleRow(2), inside(['supply-12v', 'ground'])),
      name: 'CPU cable',
      ends: [{ id: 'board', print: 'CPU', serves: 'cpu-power-2x4' }],
    },
    {
      at: soldered('card', 'Card cable', singleRow(2), inside(['supply-12v', 'ground'])),
      name: 'Card cable',
      ends: [
        { id: 'first', print: 'CARD 1', serves: 'card-power-2x4' },
        { id: 'second', print: 'CARD 2', serves: 'card-power-2x3' },
      ],
    },
    {
      at: soldered(
        'sata',
        'SATA cable',
        singleRow(4),
        inside(['supply-3v3', 'supply-5v', 'supply-12v', 'ground']),
      ),
      name: 'SATA cable',
      ends: [
        { id: 'first', print: 'SATA 1', serves: 'sata-power-15' },
        { id: 'second', print: 'SATA 2', serves: 'sata-power-15' },
      ],
    },
    {
      at: soldered('drive', 'Drive cable', singleRow(3), inside(['supply-12v', 'ground', 'supply-5v'])),
      name: 'Drive cable',
      ends: [{ id: 'drive', print: 'DRIVE', serves: 'peripheral-power-1x4' }],
    },
  ];

export const FIXED_SUPPLY: UnitType = unitType(
  'supply-fixed',
  'supply with fixed cables',
  'pins of the connectors that its cables serve; which cables there are: common practice, no source',
  'supply',
  CABLES.map(({ at }) => at),
  {
    cables: CABLES.map(({ at, name, ends }) => cableFrom(at, at.id, name, ends)),
    seats: CABLES.map(
      ({ at }): Seat => ({ lead: at.id, plug: 'supply', connector: at.id, at: [0, 0], turn: 0 }),
    ),
  },
);
