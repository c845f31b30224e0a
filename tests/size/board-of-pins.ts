import type { Build } from '../../boards/document/build';
import type { Connector } from '../../boards/document/connector';

/** A connector of as many positions as this. */
const [ROWS_EACH, COLS_EACH] = [2, 32];
const PER_ROW = 26;

/** A build with an empty case and a board of so many positions, each with a name of its own. */
export function boardOf(pins: number): Build {
  const each = ROWS_EACH * COLS_EACH;
  const connectors = Array.from({ length: Math.ceil(pins / each) }, (_, at) =>
    connectorOf(at, Math.min(each, pins - at * each)),
  );
  const sheet = { version: 1, id: 'much', name: 'Much' } as const;
  const outline = { widthMm: 1_000, depthMm: 1_000 };
  return {
    format: 'leadwright/build',
    ...sheet,
    board: { format: 'leadwright/board', ...sheet, outline, connectors },
    case: { format: 'leadwright/case', ...sheet, leads: [] },
    extras: [],
    seats: [],
    view: { turn: 0, mirrored: false },
  };
}

function connectorOf(at: number, pins: number): Connector {
  const whole = pins === ROWS_EACH * COLS_EACH;
  return {
    id: `j${at}`,
    print: `J${at}`,
    title: 'many pins',
    family: 'pin-header',
    grid: {
      rows: whole ? ROWS_EACH : 1,
      cols: whole ? COLS_EACH : pins,
      pitchMm: 2,
      numbering: { scheme: 'zig-zag', from: 'top-left' },
    },
    pins: Array.from({ length: pins }, (_, pin) => ({ pin: String(pin + 1), name: `line ${pin}` })),
    place: { xMm: (at % PER_ROW) * 75 - 1_000, yMm: Math.floor(at / PER_ROW) * 25 - 1_000, turn: 0 },
  };
}
