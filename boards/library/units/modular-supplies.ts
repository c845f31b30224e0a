import type { SignalId } from '../../signals/signals';
import { rowAfterRow } from '../grids';
import { type Reading, readIn } from '../reading';
import { type UnitType, unitType } from '../unit-type';
import { mainSignals, type Outlet, outlet, outletPins, several } from './outlets';
import { cableFrom } from './pin-map';

/** What the sheet of one maker says of the sockets that are alike on all supplies. */
interface Maker {
  readonly id: string;
  readonly name: string;
  /** 2x4, for the CPU and for cards: pins 1 to 4, then 5 to 8. */
  readonly twelve: readonly SignalId[];
  /** 2x3, for drives: pins 1 to 3, then 4 to 6. */
  readonly drives: readonly SignalId[];
}

const [G, V12, V5, V3]: readonly SignalId[] = ['ground', 'supply-12v', 'supply-5v', 'supply-3v3'];

/**
 * Two makers of our own invention, as two makers are: the same sockets, and other pins behind them. A cable of
 * one enters the other's socket, and brings what its plug is not made for.
 */
const MAKERS: readonly Maker[] = [
  {
    id: 'ash',
    name: 'Ash',
    twelve: run([G, 4], [V12, 4]),
    drives: run([V12, 1], [G, 1], [V5, 1], [V3, 1], [G, 2]),
  },
  {
    id: 'birch',
    name: 'Birch',
    twelve: run([V12, 4], [G, 4]),
    drives: run([V5, 1], [G, 1], [V12, 1], [V3, 1], [G, 2]),
  },
];

function run(...runs: readonly (readonly [SignalId | undefined, number])[]): readonly SignalId[] {
  return runs.flatMap(([signal, count]) => (signal ? Array.from({ length: count }, () => signal) : []));
}

function mainOutlet(sheet: Reading): Outlet {
  return outlet('main', 'MAIN', 'main power outlet', rowAfterRow(12), outletPins(sheet, mainSignals()));
}

function modular({ id, name, twelve, drives }: Maker): UnitType {
  const source = `the sheet of the supply ${name}, which is made up`;
  const sheet = readIn('manual', source);
  const main = mainOutlet(sheet);
  const powers = several(4, (number) =>
    outlet(`power-${number}`, `CPU/CARD ${number}`, '12 V outlet', rowAfterRow(4), outletPins(sheet, twelve)),
  );
  const forDrives = several(3, (number) =>
    outlet(`drives-${number}`, `DRIVES ${number}`, 'drive outlet', rowAfterRow(3), outletPins(sheet, drives)),
  );
  const [power] = powers;
  const [drive] = forDrives;
  if (!power || !drive) throw new Error('A modular supply has outlets');
  return unitType(
    `supply-modular-${id}`,
    `modular supply, outlets as on the sheet of ${name}`,
    source,
    'supply',
    [main, ...powers, ...forDrives],
    {
      cables: [
        cableFrom(main, 'main', 'Main power cable', [{ id: 'board', print: '', serves: 'main-power-24' }]),
        cableFrom(power, 'cpu', 'CPU cable', [{ id: 'board', print: 'CPU', serves: 'cpu-power-2x4' }]),
        cableFrom(power, 'card', 'Card cable', [{ id: 'card', print: 'CARD', serves: 'card-power-2x4' }]),
        cableFrom(power, 'card-2', 'Second card cable', [
          { id: 'card', print: 'CARD', serves: 'card-power-2x4' },
        ]),
        cableFrom(drive, 'sata', 'SATA cable', [
          { id: 'first', print: 'SATA 1', serves: 'sata-power-15' },
          { id: 'second', print: 'SATA 2', serves: 'sata-power-15' },
        ]),
        cableFrom(drive, 'drive', 'Drive cable', [
          { id: 'drive', print: 'DRIVE', serves: 'peripheral-power-1x4' },
        ]),
      ],
      notes: `Use the cables that came with it. Others enter its sockets too.`,
    },
  );
}

export const MODULAR_SUPPLIES: readonly UnitType[] = MAKERS.map(modular);
