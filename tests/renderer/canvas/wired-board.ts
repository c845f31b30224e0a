import { TURNS } from '../../../boards/base/units';
import type { Build } from '../../../boards/document/build';
import { type Connector, type Pin, SIDES } from '../../../boards/document/connector';
import type { Grid } from '../../../boards/document/grid';
import { type Lead, WIRE_COLOURS } from '../../../boards/document/lead';
import { gridIndex } from '../../../boards/document/numbering';
import { placesOf } from '../../../boards/fit/places';
import { SIGNAL_IDS } from '../../../boards/signals/signals';
import { numberingFor } from '../../boards/arbitrary-build';
import { Dice } from '../../boards/dice';

const PITCHES = [1.27, 2, 2.54, 2.54, 4.2] as const;
const NAMES = [
  'GND',
  'power switch',
  'temperature sensor of the front panel',
  'SENSE2_RETURN',
  'reserved, do not connect to anything',
  'Donaudampfschifffahrtselektrizitätenhauptbetriebswerk',
  '電源',
] as const;
const LEAD_NAMES = ['SW', 'POWER LED', 'FRONT PANEL USB, LEFT PAIR', 'FAN'] as const;

/** Sizes of grids as they occur: rows, columns. */
const GRIDS = [
  [1, 2],
  [1, 3],
  [1, 7],
  [2, 2],
  [2, 5],
  [2, 10],
  [3, 4],
  [12, 2],
] as const;

function connectorAt(id: string, xMm: number, yMm: number, dice: Dice): Connector {
  const [rows, cols] = dice.pick(GRIDS) ?? [1, 2];
  const grid: Grid = {
    rows,
    cols,
    pitchMm: dice.pick(PITCHES) ?? 2.54,
    numbering: numberingFor(rows, cols, dice),
  };
  return {
    id,
    print: id.toUpperCase(),
    title: dice.oneIn(3) ? 'a header with a rather long title of its own' : 'header',
    family: 'pin-header',
    grid,
    pins: gridIndex(grid).positions.map(({ label }): Pin => {
      if (dice.oneIn(8)) return { pin: label, missing: true };
      if (dice.oneIn(3)) return { pin: label, name: dice.pick(NAMES) ?? 'GND' };
      return { pin: label, signal: dice.pick(SIGNAL_IDS) ?? 'ground' };
    }),
    ...(dice.oneIn(4) && { shroud: { walls: [...SIDES], guide: 'bottom' } }),
    place: { xMm, yMm, turn: dice.pick(TURNS) ?? 0 },
  };
}

function leadFor(id: string, connector: Connector, dice: Dice): Lead {
  const [rows, cols] = dice.pick([
    [1, 1],
    [1, 2],
    [1, 2],
    [1, 3],
    [1, 4],
    [2, 1],
    [2, 5],
  ] as const) ?? [1, 1];
  const grid: Grid = {
    rows,
    cols,
    pitchMm: connector.grid.pitchMm,
    numbering: { scheme: 'by-row', from: 'top-left' },
  };
  const holes = gridIndex(grid).positions.map(({ label }) => label);
  return {
    id,
    name: dice.pick(LEAD_NAMES) ?? 'SW',
    parts: [],
    plugs: [{ id: 'plug', print: 'P', family: 'pin-header', grid, mark: '1' }],
    wires: holes
      .filter(() => !dice.oneIn(6))
      .map((hole) => ({ from: `plug.${hole}`, to: 'plug.99', colour: dice.pick(WIRE_COLOURS) ?? 'red' })),
  };
}

/**
 * A board of a few connectors, so many millimetres apart, with long names, every turn and pitch, and
 * plugs on them wherever they fit.
 */
export function wiredBoard(seed: number, apartMm: number): Build {
  const dice = new Dice(seed);
  const count = 3 + dice.below(4);
  const connectors = Array.from({ length: count }, (_, index) => {
    const jitter = () => dice.below(Math.ceil(apartMm / 4));
    return connectorAt(
      `j${index}`,
      (index % 3) * apartMm + jitter(),
      Math.floor(index / 3) * apartMm + jitter(),
      dice,
    );
  });
  const leads = Array.from({ length: 2 + dice.below(9) }, (_, index) =>
    leadFor(`lead-${index}`, dice.pick(connectors) ?? connectorAt('j', 0, 0, dice), dice),
  );
  const empty: Build = {
    format: 'leadwright/build',
    version: 1,
    id: 'drawing',
    name: 'drawing',
    board: {
      format: 'leadwright/board',
      version: 1,
      id: 'board',
      name: 'board',
      outline: { widthMm: 3 * apartMm, depthMm: 2 * apartMm },
      connectors,
    },
    case: { format: 'leadwright/case', version: 1, id: 'case', name: 'case', leads },
    extras: [],
    seats: [],
    view: { turn: dice.pick(TURNS) ?? 0, mirrored: dice.oneIn(2) },
  };
  let build = empty;
  for (const lead of leads) {
    const seat = dice.pick(placesOf(build, { lead: lead.id, plug: 'plug' }));
    if (seat) build = { ...build, seats: [...build.seats, seat] };
  }
  return build;
}
