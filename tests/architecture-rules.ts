/**
 * Who may know whom. A folder may import itself and the folders on its right; what is not
 * listed does not exist. Types count. Adding a row is a decision: say why in DEVELOPERS.md.
 */
const DOMAIN_FLOOR = ['boards/base', 'boards/signals', 'boards/document'];

export const FOLDERS: Readonly<Record<string, readonly string[]>> = {
  'boards/base': [],
  'boards/signals': ['boards/base'],
  'boards/document': ['boards/base', 'boards/signals'],
  'boards/library': DOMAIN_FLOOR,
  'boards/fit': DOMAIN_FLOOR,
  // A plug where it sits is drawn by window and paper alike.
  'boards/drawing': [...DOMAIN_FLOOR, 'boards/fit'],
  'boards/inference': ['boards/base'],
  // Ways through the tray end at plugs where they sit; they need no circuit and no findings.
  'boards/routing': [...DOMAIN_FLOOR, 'boards/fit'],
  // The vocabulary alone: a command refuses an answer to what nobody asks.
  'boards/diagnosis/observations': [],
  // The causes by name, so that edit can refuse one that there is not.
  'boards/diagnosis/faults/causes.ts': [],
  'boards/edit': [
    ...DOMAIN_FLOOR,
    'boards/fit',
    'boards/diagnosis/observations',
    'boards/diagnosis/faults/causes.ts',
  ],
  'boards/pinout': [...DOMAIN_FLOOR, 'boards/library', 'boards/inference'],
  // Apart, because it alone reads the heads of picture files with a package.
  'boards/pinout/photo': DOMAIN_FLOOR,
  'boards/circuit': [...DOMAIN_FLOOR, 'boards/fit'],
  // A standoff under the board can short it, and a header carries so many fans: what the tray and its hubs hold
  // is asked, not the routes.
  // What a power plug is made for where nothing is plugged in yet: the published pins of its shape.
  'boards/findings': [
    ...DOMAIN_FLOOR,
    'boards/library',
    'boards/fit',
    'boards/edit',
    'boards/circuit',
    'boards/routing',
  ],
  // What a fault would show is the circuit's answer and the stories told from it, weighed by inference. Which
  // standoffs may touch the board is what the tray says, how another supply orders its wires what the library says.
  'boards/diagnosis': [
    ...DOMAIN_FLOOR,
    'boards/library',
    'boards/diagnosis/observations',
    'boards/diagnosis/faults/causes.ts',
    'boards/fit',
    'boards/circuit',
    'boards/findings',
    'boards/routing',
    'boards/inference',
  ],
  'boards/planner': [...DOMAIN_FLOOR, 'boards/fit', 'boards/edit', 'boards/findings'],
  'boards/analyse.ts': [...DOMAIN_FLOOR, 'boards/fit', 'boards/findings'],
  'boards/handover': [
    ...DOMAIN_FLOOR,
    'boards/library',
    'boards/drawing',
    'boards/fit',
    'boards/circuit',
    'boards/findings',
    // The list of cables tells their ways; which standoffs are set, and which way fans blow, is work at the bench.
    'boards/routing',
    // What was noticed and tried is printed with what it says.
    'boards/diagnosis',
    'boards/diagnosis/observations',
    'boards/diagnosis/faults/causes.ts',
  ],
  'boards/host.ts': ['boards/handover'],

  'electron/paper': [...DOMAIN_FLOOR, 'boards/drawing', 'boards/handover'],
  'electron/host': [...DOMAIN_FLOOR, 'boards/handover', 'boards/host.ts', 'electron/paper'],
  'electron/built.ts': [],
  'electron/browser': ['boards/host.ts', 'electron/host', 'electron/built.ts'],
  'electron/cli': [
    ...DOMAIN_FLOOR,
    'boards/library',
    'boards/diagnosis',
    'boards/diagnosis/observations',
    'boards/diagnosis/faults/causes.ts',
    'boards/findings',
    'boards/planner',
    'boards/pinout',
    'boards/analyse.ts',
    'boards/handover',
    'boards/host.ts',
    'electron/host',
    'electron/paper',
    'electron/built.ts',
  ],
  'electron/start': [],
  electron: ['boards/host.ts', 'electron/host', 'electron/built.ts'],

  'renderer/store': [...DOMAIN_FLOOR, 'boards/circuit', 'boards/edit', 'boards/analyse.ts', 'boards/host.ts'],
  'renderer/canvas': [
    ...DOMAIN_FLOOR,
    'boards/drawing',
    'boards/fit',
    'boards/findings',
    'boards/routing',
    'renderer/store',
  ],
  renderer: [
    ...DOMAIN_FLOOR,
    'boards/library',
    'boards/pinout',
    'boards/drawing',
    'boards/fit',
    'boards/edit',
    'boards/circuit',
    'boards/findings',
    'boards/pinout/photo',
    'boards/planner',
    'boards/routing',
    'boards/diagnosis',
    'boards/diagnosis/observations',
    'boards/diagnosis/faults/causes.ts',
    'boards/analyse.ts',
    'boards/handover',
    'boards/host.ts',
    'renderer/store',
    'renderer/canvas',
  ],
};

/** Packages by layer; the closest row decides. */
export const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  boards: ['zod'],
  'boards/pinout/photo': ['image-size'],
  electron: ['electron', 'zod', 'node:*'],
  'electron/host': ['zod', 'node:*'],
  'electron/paper': ['@resvg/resvg-wasm', 'fontkit', 'pdfkit', 'node:*'],
  'electron/browser': ['zod', 'node:*'],
  'electron/cli': ['zod', 'node:*'],
  'electron/start': ['node:*', 'vite', '@vitejs/plugin-react'],
  renderer: [
    'react',
    'react-dom',
    'react-aria-components',
    'lucide-react',
    'zustand',
    'zod',
    '@fontsource-variable/atkinson-hyperlegible-next',
    '@fontsource-variable/atkinson-hyperlegible-mono',
  ],
  'renderer/canvas': ['react', 'konva', 'react-konva'],
};

export const IMPORTS_ELECTRON = [
  'electron/ipc.ts',
  'electron/main.ts',
  'electron/menu.ts',
  'electron/preload.ts',
  'electron/protocol.ts',
  'electron/window.ts',
];
