import type { Pin } from '../../document/connector';
import { connectorTypeOf } from '../connectors/index';
import { readAbout, recalled } from '../reading';
import { type UnitType, unitType } from '../unit-type';
import type { Outlet } from './outlets';

/** A connector of the library on a device. */
export function onDevice(serves: string, id: string, print: string, change?: (pin: Pin) => Pin): Outlet {
  const { connector } = connectorTypeOf(serves);
  return { ...connector, id, print, ...(change && { pins: connector.pins.map(change) }) };
}

const DRIVE = 'SATA data and power segments, from a hardware handbook, Tables 13-7 and 13-8';
const CARD = 'ATX 3.0 power supply design guide (336521), Tables 5-4 and 5-5';
const DISABLE = readAbout('standard', 'Serial ATA 3.3 power disable, from an encyclopaedia');
const SSD = recalled('standard', 'drives without moving parts run from +5 V');

/** Pin 3 of a newer drive: while +3.3 V is on it, the drive stays off. */
function withPowerDisable({ alternatives: _, notes: __, ...pin }: Pin): Pin {
  if (pin.pin !== '3') return pin;
  return { ...pin, signal: 'drive-power-disable', name: 'PWDIS', ...DISABLE };
}

/** What an SSD has no use for leads nowhere. */
function onlyFiveVolts(pin: Pin): Pin {
  if (pin.signal !== 'supply-12v' && pin.signal !== 'supply-3v3') return pin;
  const { alternatives: _, notes: __, ...plain } = pin;
  return { ...plain, signal: 'no-connection', ...SSD };
}

export const DEVICES: readonly UnitType[] = [
  unitType('drive', 'hard drive', DRIVE, 'drive', [
    onDevice('sata-data-7', 'data', 'DATA'),
    onDevice('sata-power-15', 'power', 'POWER'),
  ]),
  unitType('drive-power-disable', 'hard drive with power disable', DRIVE, 'drive', [
    onDevice('sata-data-7', 'data', 'DATA'),
    onDevice('sata-power-15', 'power', 'POWER', withPowerDisable),
  ]),
  unitType('drive-peripheral', 'older drive with four-pin power', 'order of the pins from memory', 'drive', [
    onDevice('peripheral-power-1x4', 'power', 'POWER'),
  ]),
  unitType('ssd', 'SSD', DRIVE, 'drive', [
    onDevice('sata-data-7', 'data', 'DATA'),
    onDevice('sata-power-15', 'power', 'POWER', onlyFiveVolts),
  ]),
  unitType('card-one-socket', 'graphics card, one socket', CARD, 'card', [
    onDevice('card-power-2x4', 'power', 'POWER'),
  ]),
  unitType('card-two-sockets', 'graphics card, two sockets', CARD, 'card', [
    onDevice('card-power-2x4', 'power-1', 'POWER 1'),
    onDevice('card-power-2x4', 'power-2', 'POWER 2'),
  ]),
];
