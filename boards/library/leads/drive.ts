import type { Wire, WireColour } from '../../document/lead';
import { FAMILY } from '../families';
import { HALF_PITCH, PERIPHERAL_PITCH, singleRow } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug } from '../plug-and-wires';

const DATA = 'straight cable: a SATA controller design guide, Figure 23; one colour is common practice';
const POWER = 'pins of the SATA power segment, from a hardware handbook; wire colours: a table in a weblog';

const DATA_PLUG = { family: FAMILY.sataData, rib: 'top' } as const;
const SATA_POWER_PLUG = { family: FAMILY.sataPower, rib: 'top' } as const;
const DRIVE_PLUG = { family: FAMILY.peripheralPower, rib: 'top' } as const;

/** Which hole of a four-way drive plug feeds which contacts of a SATA plug; it has no +3.3 V to give. */
const DRIVE_TO_SATA: readonly { from: number; to: readonly number[]; colour: WireColour }[] = [
  { from: 1, to: [13, 14, 15], colour: 'yellow' },
  { from: 2, to: [10, 12], colour: 'black' },
  { from: 3, to: [4, 5, 6], colour: 'black' },
  { from: 4, to: [7, 8, 9], colour: 'red' },
];

/** The wires of a SATA power plug to another plug with the four holes of a drive plug. */
function toSata(feed: string, sata: string): Wire[] {
  return DRIVE_TO_SATA.flatMap(({ from, to, colour }) =>
    to.map((contact) => ({ from: `${feed}.${from}`, to: `${sata}.${contact}`, colour })),
  );
}

export const DRIVE_LEADS: readonly LeadType[] = [
  leadType('sata-data-cable', 'SATA data cable', DATA, {
    parts: [],
    plugs: [
      plug('board', '', singleRow(7, HALF_PITCH), DATA_PLUG),
      plug('drive', '', singleRow(7, HALF_PITCH), DATA_PLUG),
    ],
    wires: [1, 2, 3, 4, 5, 6, 7].map((contact) => ({
      from: `board.${contact}`,
      to: `drive.${contact}`,
      colour: 'red',
    })),
  }),
  leadType('sata-power-adapter', 'drive plug to SATA power', POWER, {
    parts: [],
    plugs: [
      plug('in', '', singleRow(4, PERIPHERAL_PITCH), DRIVE_PLUG),
      plug('drive', '', singleRow(15, HALF_PITCH), SATA_POWER_PLUG),
    ],
    wires: toSata('in', 'drive'),
    notes: 'Adapters moulded in one piece have burnt; take one with crimped contacts.',
  }),
  leadType('sata-power-cable', 'SATA power cable, two drives', POWER, {
    parts: [],
    plugs: [
      plug('supply', '', singleRow(4, PERIPHERAL_PITCH), { family: FAMILY.supplySide }),
      plug('first', '', singleRow(15, HALF_PITCH), SATA_POWER_PLUG),
      plug('second', '', singleRow(15, HALF_PITCH), SATA_POWER_PLUG),
    ],
    wires: [...toSata('supply', 'first'), ...toSata('supply', 'second')],
    notes: 'Without an orange wire: +3.3 V is left off, as many drives want it.',
  }),
  leadType('peripheral-power-cable', 'drive power cable', 'order and colours from memory', {
    parts: [],
    plugs: [
      plug('supply', '', singleRow(4, PERIPHERAL_PITCH), { family: FAMILY.supplySide }),
      plug('drive', '', singleRow(4, PERIPHERAL_PITCH), DRIVE_PLUG),
    ],
    wires: [
      { from: 'supply.1', to: 'drive.1', colour: 'yellow' },
      { from: 'supply.2', to: 'drive.2', colour: 'black' },
      { from: 'supply.3', to: 'drive.3', colour: 'black' },
      { from: 'supply.4', to: 'drive.4', colour: 'red' },
    ],
  }),
];
