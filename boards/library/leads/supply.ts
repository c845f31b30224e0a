import type { Plug, Wire } from '../../document/lead';
import type { ConnectorType } from '../connector-type';
import { connectorTypeOf } from '../connectors/index';
import { FAMILY } from '../families';
import { labelled, POWER_PITCH } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug } from '../plug-and-wires';
import { supplyColour } from '../supply-colours';

const COLOURS = 'pins of the connector it serves; wire colours: a table in a weblog (read in secondary)';

/** One plug at the board's end: all pins of the connector, or the part of it that its holes name. */
interface BoardEnd {
  readonly id: string;
  readonly print: string;
  readonly holes?: readonly string[];
}

const WHOLE: readonly BoardEnd[] = [{ id: 'board', print: '' }];

function boardPlug({ connector }: ConnectorType, end: BoardEnd): Plug {
  const grid = end.holes ? labelled(end.holes, POWER_PITCH) : connector.grid;
  const rib = connector.shroud?.guide;
  return plug(end.id, end.print, grid, { family: connector.family, ...(rib && { rib }) });
}

function wiresOf({ connector }: ConnectorType, ends: readonly BoardEnd[]): Wire[] {
  return connector.pins.flatMap(({ pin, signal }) => {
    const colour = signal && supplyColour(signal);
    const end = ends.find(({ holes }) => holes === undefined || holes.join(' ').split(' ').includes(pin));
    return colour && end ? [{ from: `supply.${pin}`, to: `${end.id}.${pin}`, colour }] : [];
  });
}

/**
 * A cable of the supply: straight through, and at the supply's end a plug that goes nowhere else,
 * for what its pins carry there is each maker's own.
 */
function supplyCable(id: string, title: string, serves: string, ends: readonly BoardEnd[] = WHOLE): LeadType {
  const type = connectorTypeOf(serves);
  const rib = type.connector.shroud?.guide;
  return leadType(id, title, COLOURS, {
    parts: [],
    plugs: [
      plug('supply', '', type.connector.grid, { family: FAMILY.supplySide, ...(rib && { rib }) }),
      ...ends.map((end) => boardPlug(type, end)),
    ],
    wires: wiresOf(type, ends),
  });
}

export const SUPPLY_LEADS: readonly LeadType[] = [
  supplyCable('main-power-cable-24', 'main power cable, 24 pins', 'main-power-24'),
  supplyCable('main-power-cable-20', 'main power cable, 20 pins', 'main-power-20'),
  supplyCable('main-power-cable-20-and-4', 'main power cable, 20 pins and 4', 'main-power-24', [
    { id: 'twenty', print: '', holes: ['1 2 3 4 5 6 7 8 9 10', '13 14 15 16 17 18 19 20 21 22'] },
    { id: 'four', print: '', holes: ['11 12', '23 24'] },
  ]),
  supplyCable('cpu-power-cable-4', 'CPU power cable, 4 pins', 'cpu-power-2x2', [
    { id: 'board', print: 'CPU' },
  ]),
  supplyCable('cpu-power-cable-8', 'CPU power cable, 8 pins', 'cpu-power-2x4', [
    { id: 'board', print: 'CPU' },
  ]),
  supplyCable('cpu-power-cable-4-and-4', 'CPU power cable, 4 pins and 4', 'cpu-power-2x4', [
    { id: 'first', print: 'CPU', holes: ['1 2', '5 6'] },
    { id: 'second', print: 'CPU', holes: ['3 4', '7 8'] },
  ]),
  supplyCable('card-power-cable-6', 'card power cable, 6 pins', 'card-power-2x3', [
    { id: 'board', print: 'CARD' },
  ]),
  supplyCable('card-power-cable-8', 'card power cable, 8 pins', 'card-power-2x4', [
    { id: 'board', print: 'CARD' },
  ]),
  supplyCable('card-power-cable-6-and-2', 'card power cable, 6 pins and 2', 'card-power-2x4', [
    { id: 'six', print: 'CARD', holes: ['1 2 3', '5 6 7'] },
    { id: 'two', print: '', holes: ['4', '8'] },
  ]),
];
