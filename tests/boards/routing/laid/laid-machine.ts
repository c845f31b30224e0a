import type { Build } from '../../../../boards/document/build';
import type { LeadCable } from '../../../../boards/document/cable';
import type { Lead, Plug } from '../../../../boards/document/lead';
import type { Tray } from '../../../../boards/document/tray';
import { bench, grid, lead, partLead, posts, seat } from '../../fixtures/bench';

/**
 * A board of 200 × 200 mm with its rear to the left and its top right corner at 20, 40: 40 mm of tray above it,
 * room for a hand to the right and below. The supply is low; one opening above the board, one beside it, one
 * below it. Behind the tray a column joins them.
 */
export const MACHINE_TRAY: Tray = {
  widthMm: 420,
  heightMm: 420,
  behindMm: 25,
  points: [
    { id: 'column', name: 'Column', kind: 'tie', xMm: 240, yMm: 150 },
    { id: 'front-panel', name: 'Front panel', kind: 'end', xMm: 410, yMm: 30 },
    { id: 'card-end', name: 'End of the card', kind: 'end', xMm: 215, yMm: 180 },
  ],
  openings: [
    { id: 'above', name: 'Above the board', xMm: 60, yMm: 8, widthMm: 60, heightMm: 24, edge: 'rolled' },
    { id: 'beside', name: 'Beside the board', xMm: 236, yMm: 60, widthMm: 30, heightMm: 60, edge: 'grommet' },
    { id: 'below', name: 'Below the board', xMm: 100, yMm: 300, widthMm: 40, heightMm: 20, edge: 'grommet' },
  ],
  bays: [{ id: 'bay', name: 'Cage', xMm: 300, yMm: 300, widthMm: 100, heightMm: 30 }],
  supply: { id: 'supply', xMm: 10, yMm: 330, widthMm: 150, heightMm: 80 },
  board: { xMm: 20, yMm: 40, rear: 'left' },
  paths: [
    { id: 'supply-column', from: 'supply', to: 'column', lengthMm: 250, side: 'back' },
    { id: 'panel-column', from: 'front-panel', to: 'column', lengthMm: 200, side: 'back' },
    { id: 'column-above', from: 'column', to: 'above', lengthMm: 200, side: 'back' },
    { id: 'column-beside', from: 'column', to: 'beside', lengthMm: 60, side: 'back' },
    { id: 'column-below', from: 'column', to: 'below', lengthMm: 150, side: 'back' },
    { id: 'column-bay', from: 'column', to: 'bay', lengthMm: 160, side: 'back' },
  ],
};

/** Connectors at places of the board, which lies unturned on the tray but for its rear to the left. */
const at = (xMm: number, yMm: number) => ({ place: { xMm, yMm, turn: 0 as const } });

const CONNECTORS = [
  posts('cpu', grid(2, 4), { family: 'cpu-power', print: 'CPU_12V', ...at(60, 12) }),
  posts('main', grid(2, 12), { family: 'main-power', print: 'MAIN', ...at(160, 90) }),
  posts('fan-top', grid(1, 4), { print: 'FAN_TOP', ...at(120, 10) }),
  posts('fan-low', grid(1, 4), { print: 'FAN_LOW', ...at(150, 150) }),
  posts('panel', grid(2, 5), { print: 'PANEL', ...at(170, 190) }),
  posts('sata', grid(1, 7), { family: 'sata-data', print: 'SATA_1', ...at(190, 100) }),
];

function cable(over: Partial<LeadCable> = {}): LeadCable {
  return { diameterMm: 3, slackMm: 15, start: 'supply', runs: [{ to: 'plug', lengthMm: 700 }], ...over };
}

function shell(id: string, family: string, size: Plug['grid'], over: Partial<LeadCable> = {}): Lead {
  const plain = lead(id, size, { family });
  return { ...plain, plugs: plain.plugs.slice(0, 1), wires: [], cable: cable(over) };
}

function fan(id: string): Lead {
  const plain = partLead(id, 'fan', grid(1, 4), { ground: '1', supply: '2', tach: '3', pwm: '4' });
  return { ...plain, cable: cable({ diameterMm: 2.5, start: 'front-panel' }) };
}

/** Leads in no order of any use: fans and the panel first, the stiff ones last. */
const LEADS: readonly Lead[] = [
  fan('fan-top'),
  fan('fan-low'),
  {
    ...partLead('button', 'power-switch', grid(1, 2), { a: '1', b: '2' }),
    cable: cable({ diameterMm: 2, start: 'front-panel' }),
  },
  shell('data', 'sata-data', grid(1, 7), { diameterMm: 5, start: 'bay' }),
  shell('main', 'main-power', grid(2, 12), { diameterMm: 12, bendRadiusMm: 12 }),
  shell('cpu', 'cpu-power', grid(2, 4), { diameterMm: 8, bendRadiusMm: 12 }),
];

const SEATS = [
  seat('fan-top', 'fan-top'),
  seat('fan-low', 'fan-low'),
  seat('button', 'panel'),
  seat('data', 'sata'),
  seat('main', 'main'),
  seat('cpu', 'cpu'),
];

/** The machine with every cable plugged in and laid, by these paths for each. */
export function laidMachine(over: Partial<Build> = {}): Build {
  const plain = bench(CONNECTORS, LEADS, SEATS);
  const way = (id: string, ...paths: string[]) => ({ lead: id, plug: 'plug', paths });
  return {
    ...plain,
    board: { ...plain.board, outline: { widthMm: 200, depthMm: 200, rear: 'left' } },
    case: { ...plain.case, tray: MACHINE_TRAY },
    routes: [
      way('fan-top', 'panel-column', 'column-beside'),
      way('fan-low', 'panel-column', 'column-below'),
      way('button', 'panel-column', 'column-below'),
      way('data', 'column-bay', 'column-beside'),
      way('main', 'supply-column', 'column-beside'),
      way('cpu', 'supply-column', 'column-above'),
    ],
    ...over,
  };
}
