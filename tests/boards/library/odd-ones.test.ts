import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import type { Grid } from '../../../boards/document/grid';
import type { Lead } from '../../../boards/document/lead';
import { gridIndex } from '../../../boards/document/numbering';
import { cellCentre } from '../../../boards/fit/geometry';
import { jointsOf } from '../../../boards/fit/joints';
import { FAMILY } from '../../../boards/library/families';
import { HALF_PITCH, labelled, singleRow, zigZag } from '../../../boards/library/grids';
import { leadType } from '../../../boards/library/lead-type';
import { pinsFrom } from '../../../boards/library/pin-rows';
import { plug, wires } from '../../../boards/library/plug-and-wires';
import { recalled } from '../../../boards/library/reading';
import { benchOf, seatOn } from './bench';
import { leadsSavedAndOpened, savedAndOpened } from './saved';

function header(grid: Grid, pins: Connector['pins'] = []): Connector {
  return {
    id: 'header',
    print: 'J1',
    title: 'an odd one',
    family: FAMILY.pinHeader,
    grid,
    pins,
    place: { xMm: 10, yMm: 10, turn: 0 },
  };
}

function seen(connector: Connector): readonly string[] {
  const { grid } = savedAndOpened(connector);
  const { labelAt } = gridIndex(grid);
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.cols }, (__, col) => labelAt([row, col]) ?? '.').join(' '),
  );
}

// Nobody's standard: shapes that the format has to be able to say.
describe('odd headers', () => {
  it('ten pins without a key', () => {
    expect(seen(header(zigZag(5)))).toEqual(['2 4 6 8 10', '1 3 5 7 9']);
  });

  it('a second row counted from the other end', () => {
    expect(seen(header(labelled(['10 8 6 4 2', '1 3 5 7 9'])))).toEqual(['10 8 6 4 2', '1 3 5 7 9']);
  });

  it('pin 1 in any corner, along a row or down a column', () => {
    const corner = (scheme: 'by-row' | 'by-column', from: 'top-right' | 'bottom-right') =>
      seen(header({ rows: 2, cols: 3, pitchMm: 2.54, numbering: { scheme, from } }));
    expect(corner('by-row', 'top-right')).toEqual(['3 2 1', '6 5 4']);
    expect(corner('by-column', 'bottom-right')).toEqual(['6 4 2', '5 3 1']);
  });

  it('a block of two by nine', () => {
    expect(seen(header(zigZag(9)))).toEqual(['2 4 6 8 10 12 14 16 18', '1 3 5 7 9 11 13 15 17']);
  });

  it('a panel of two by seventeen at 1.27 mm, placed and turned on a board', () => {
    const fine = savedAndOpened({
      ...header(zigZag(17, HALF_PITCH)),
      place: { xMm: 200, yMm: 50, turn: 90 },
    });
    const { cellOf, positions } = gridIndex(fine.grid);
    expect(positions).toHaveLength(34);
    const last = cellOf('34');
    expect(last).toEqual([0, 16]);
    expect(last && cellCentre(fine, last)).toEqual({ xMm: 200, yMm: 50 + 16 * 1.27 });
  });

  it('forty rows of two', () => {
    const tall = header({
      rows: 40,
      cols: 2,
      pitchMm: 2.54,
      numbering: { scheme: 'zig-zag', from: 'top-left' },
    });
    const rows = seen(tall);
    expect(rows).toHaveLength(40);
    expect([rows[0], rows[1], rows[39]]).toEqual(['1 2', '3 4', '79 80']);
  });

  it('letters as labels', () => {
    const rows = ['A1 A2 A3 A4', 'B9 B10 B11 B12'];
    const lettered = header(labelled(rows), [
      { pin: 'A1', signal: 'power-switch-input' },
      { pin: 'B12', signal: 'ground', belongsTo: 'power-switch' },
    ]);
    expect(seen(lettered)).toEqual(rows);
    expect(savedAndOpened(lettered).pins).toEqual(lettered.pins);
  });

  it('gaps in the numbers, and corners without a position', () => {
    const rows = ['1 2 . 5', '. 12 13 20'];
    expect(seen(header(labelled(rows)))).toEqual(rows);
    expect(gridIndex(labelled(rows)).cellOf('3')).toBeUndefined();
  });

  it('rows further apart than the pins of a row', () => {
    const wide = header({ ...zigZag(4), rowPitchMm: 5.08 });
    expect(cellCentre(savedAndOpened(wide), [1, 3])).toEqual({ xMm: 10 + 3 * 2.54, yMm: 10 + 5.08 });
  });
});

describe('odd leads', () => {
  it('one + for two LEDs: both find their pins through one contact', () => {
    const { lead } = leadType('common-plus', 'two LEDs, one +', 'invented for this test', {
      parts: [
        { id: 'drive', kind: 'drive-led' },
        { id: 'power', kind: 'power-led' },
      ],
      plugs: [plug('plug', 'LEDS', singleRow(3))],
      wires: [
        ...wires('drive', 'plug', [
          ['anode', 2, 'red'],
          ['cathode', 1, 'white'],
        ]),
        ...wires('power', 'plug', [
          ['anode', 2, 'red'],
          ['cathode', 3, 'black'],
        ]),
      ],
    });
    expect(leadsSavedAndOpened([lead])).toEqual([lead]);

    const pin = pinsFrom(recalled('manual', 'invented for this test'));
    const connector = header(singleRow(3), [
      pin(1, 'drive-led-sink', 'HD−'),
      pin(2, 'power-led-feed', 'LED+'),
      pin(3, 'power-led-sink', 'P−'),
    ]);
    const { build } = benchOf('power-led-1x3', 'power-led-1x3');
    const wired = {
      ...build,
      board: { ...build.board, connectors: [connector] },
      case: { ...build.case, leads: [{ ...lead, id: 'lead' }] },
      seats: [seatOn()],
    };
    expect(jointsOf(wired).map(({ part, terminal, pin: met }) => [part?.id, terminal?.id, met?.pin])).toEqual(
      [
        ['drive', 'cathode', '1'],
        ['drive', 'anode', '2'],
        ['power', 'anode', '2'],
        ['power', 'cathode', '3'],
      ],
    );
  });

  it('a powered fan hub: +12 V of its own, control in, speed back from its first output alone', () => {
    const outputs = ['out-1', 'out-2', 'out-3'];
    const hub: Lead = {
      id: 'hub',
      name: 'Fan hub',
      parts: [],
      plugs: [
        plug('supply', '', singleRow(15, HALF_PITCH), { family: FAMILY.sataPower, rib: 'top' }),
        plug('board', 'PWM IN', singleRow(4), { rib: 'bottom' }),
        ...outputs.map((id) => plug(id, id.toUpperCase(), singleRow(4), { rib: 'bottom' })),
      ],
      wires: [
        { from: 'board.3', to: 'out-1.3', colour: 'green' },
        ...outputs.flatMap((id) => [
          { from: 'supply.12', to: `${id}.1`, colour: 'black' as const },
          { from: 'supply.13', to: `${id}.2`, colour: 'yellow' as const },
          { from: 'board.4', to: `${id}.4`, colour: 'blue' as const },
        ]),
      ],
    };
    const [opened] = leadsSavedAndOpened([hub]);
    expect(opened).toEqual(hub);
    expect(opened?.wires.filter(({ from }) => from === 'board.3').map(({ to }) => to)).toEqual(['out-1.3']);
  });

  it('a ribbon of 34 ways at 1.27 mm, one wire for each hole', () => {
    const holes = Array.from({ length: 34 }, (_, at) => at + 1);
    const ribbon: Lead = {
      id: 'ribbon',
      name: 'Panel ribbon',
      parts: [],
      plugs: [plug('board', '', zigZag(17, HALF_PITCH)), plug('far', '', zigZag(17, HALF_PITCH))],
      wires: holes.map((hole) => ({
        from: `board.${hole}`,
        to: `far.${hole}`,
        colour: hole === 1 ? ('red' as const) : ('grey' as const),
      })),
    };
    expect(leadsSavedAndOpened([ribbon])).toEqual([ribbon]);
  });
});
