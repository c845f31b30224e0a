import fc from 'fast-check';
import { TURNS } from '../../../boards/base/units';
import type { Build, Seat } from '../../../boards/document/build';
import { type Connector, type Shroud, SIDES, type Side } from '../../../boards/document/connector';
import { CORNERS, type Grid, SCHEMES } from '../../../boards/document/grid';
import type { Lead } from '../../../boards/document/lead';
import { gridIndex } from '../../../boards/document/numbering';
import { bench, lead } from '../fixtures/bench';

/** An eighth of the common pitch: every length on a random bench is a whole number of these. */
export const EIGHTH_MM = 2.54 / 8;

const size = fc.constantFrom(2.54, 2.54, 2.54, 5.08);
const turn = fc.constantFrom(...TURNS);
const side = fc.constantFrom(...SIDES);
const sometimes = fc.constantFrom(true, false, false, false);

function gridOf(maxRows: number, maxCols: number): fc.Arbitrary<Grid> {
  return fc
    .record({
      rows: fc.integer({ min: 1, max: maxRows }),
      cols: fc.integer({ min: 1, max: maxCols }),
      rowPitchMm: size,
      numbering: fc.record({ scheme: fc.constantFrom(...SCHEMES), from: fc.constantFrom(...CORNERS) }),
      holes: fc.array(sometimes, { minLength: 1, maxLength: 16 }),
      free: sometimes,
    })
    .map(({ rows, cols, rowPitchMm, numbering, holes, free }) => {
      const grid = { rows, cols, pitchMm: 2.54, rowPitchMm };
      if (!free) return { ...grid, numbering };
      const labels = Array.from({ length: rows }, (_, row) =>
        Array.from({ length: cols }, (__, col) => {
          const index = row * cols + col;
          return index > 0 && holes[index % holes.length] ? null : `P${index}`;
        }),
      );
      return { ...grid, numbering: { scheme: 'free', labels } };
    });
}

function some(labels: readonly string[]): fc.Arbitrary<string[]> {
  return fc.subarray([...labels], { maxLength: Math.ceil(labels.length / 4) });
}

function labelsOf(grid: Grid): readonly string[] {
  return gridIndex(grid).positions.map(({ label }) => label);
}

const shroud: fc.Arbitrary<Shroud> = fc.oneof(
  fc.record({ walls: fc.constant<Side[]>([...SIDES]), guide: side }),
  fc.record({ walls: fc.subarray([...SIDES]) }),
  side.map((guide) => ({ walls: [guide], guide })),
);

function connector(id: string): fc.Arbitrary<Connector> {
  return gridOf(3, 5).chain((grid) =>
    fc
      .record({
        missing: some(labelsOf(grid)),
        shroud: fc.option(shroud, { freq: 3, nil: undefined }),
        family: fc.constantFrom('pin-header', 'pin-header', 'pin-header', 'shell'),
        x: fc.integer({ min: 0, max: 70 }),
        y: fc.integer({ min: 0, max: 70 }),
        turn,
      })
      .map(({ missing, shroud: walls, family, x, y, turn: placed }) => ({
        id,
        print: id,
        title: id,
        family,
        grid,
        pins: missing.map((pin) => ({ pin, missing: true as const })),
        ...(walls && { shroud: walls }),
        place: { xMm: x * EIGHTH_MM, yMm: y * EIGHTH_MM, turn: placed },
      })),
  );
}

function randomLead(id: string): fc.Arbitrary<Lead> {
  return gridOf(2, 4).chain((grid) =>
    fc
      .record({
        blocked: some(labelsOf(grid)),
        contacts: some(labelsOf(grid)),
        rib: fc.option(side, { freq: 2, nil: undefined }),
        family: fc.constantFrom('pin-header', 'pin-header', 'pin-header', 'shell'),
      })
      .map(({ rib, ...plug }) => lead(id, grid, { ...plug, ...(rib && { rib }) })),
  );
}

const CONNECTORS = ['one', 'two', 'three'] as const;
const LEADS = ['red', 'green', 'blue'] as const;

function seatOf(id: string): fc.Arbitrary<Seat> {
  const along = fc.integer({ min: -3, max: 6 });
  return fc.record({
    lead: fc.constant(id),
    plug: fc.constant('plug'),
    connector: fc.constantFrom(...CONNECTORS),
    at: fc.tuple(along, along),
    turn,
  });
}

/** A small crowded bench: three connectors, three leads, two of them seated anyhow, and a seat to try. */
export const randomBench: fc.Arbitrary<{ readonly build: Build; readonly seat: Seat }> = fc
  .record({
    connectors: fc.tuple(...CONNECTORS.map(connector)),
    leads: fc.tuple(...LEADS.map(randomLead)),
    seats: fc.tuple(seatOf('green'), seatOf('blue')),
    seat: fc.constantFrom<string>('red', 'red', 'red', 'green').chain(seatOf),
  })
  .map(({ connectors, leads, seats, seat }) => ({ build: bench(connectors, leads, seats), seat }));
