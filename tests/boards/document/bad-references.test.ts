import { describe, expect, it } from 'vitest';
import { grid, partLead, posts } from '../fixtures/bench';
import { faults, soundBuild, spoilt } from './refused';

const lead = partLead('switch', 'power-switch', grid(1, 2), { a: '1', b: '2' });

describe('a document that contradicts itself', () => {
  it('has two connectors of one id', () => {
    const build = spoilt('board.connectors.1', posts('panel', grid(2, 5)));
    expect(faults(build)).toEqual([
      'board.connectors[1].id: expected an id that is not at board.connectors[0].id already, found “panel”',
    ]);
  });

  it('has two mounting holes of one id', () => {
    const hole = { id: 'a', xMm: 10, yMm: 10 };
    expect(faults(spoilt('board.outline.holes', [hole, { ...hole, xMm: 90 }]))).toEqual([
      'board.outline.holes[1].id: expected an id that is not at board.outline.holes[0].id already, found “a”',
    ]);
  });

  it('has a lead of the same id in the case and among the extras', () => {
    expect(faults(spoilt('extras', [lead]))).toEqual([
      'extras[0].id: expected an id that is not at case.leads[0].id already, found “switch”',
    ]);
  });

  it('has a part and a plug of one id in the same lead, so that a wire end could mean both', () => {
    expect(faults(spoilt('case.leads.0.parts.0.id', 'plug'))).toContain(
      'case.leads[0].plugs[0].id: expected an id that is not at case.leads[0].parts[0].id already, found “plug”',
    );
  });

  it('tells of a pin twice, or of one that the grid does not count', () => {
    expect(faults(spoilt('board.connectors.0.pins', [{ pin: '1' }, { pin: '11' }, { pin: '1' }]))).toEqual([
      'board.connectors[0].pins[1].pin: expected a label that the grid counts, found “11”',
      'board.connectors[0].pins[2].pin: expected a pin that is not at board.connectors[0].pins[0].pin already, found “1”',
    ]);
  });

  it('tells of a reading at a pin that is not there, or between a pin and itself', () => {
    const readings = [
      { kind: 'ohms', pin: '11', ohms: 'open' },
      { kind: 'continuity', pins: ['1', '1'], joined: true },
      { kind: 'lamp', plus: '2', minus: 'A1', supply: 'running', showed: 'lit' },
    ];
    expect(faults(spoilt('board.connectors.0.readings', readings))).toEqual([
      'board.connectors[0].readings[0]: expected pins that the grid counts, found “11”',
      'board.connectors[0].readings[1]: expected two different pins, found “1” twice',
      'board.connectors[0].readings[2]: expected pins that the grid counts, found “A1”',
    ]);
  });

  it('has free labels that do not fill the grid, stand twice, or are none at all', () => {
    const labels = (rows: unknown) => faults(spoilt('board.connectors.0.grid.numbering', rows));
    const at = 'board.connectors[0].grid.numbering.labels';
    expect(labels({ scheme: 'free', labels: [['1', '2', '3', '4', '5']] })).toContain(
      `${at}: expected a list of 2, as the grid has rows, found a list of 1`,
    );
    expect(
      labels({
        scheme: 'free',
        labels: [
          ['1', '2', '3', '4'],
          ['1', null, null, null, null],
        ],
      }),
    ).toEqual([
      `${at}[0]: expected a list of 5, as the grid has columns, found a list of 4`,
      `${at}[1][0]: expected a label that is not at ${at}[0][0] already, found “1”`,
    ]);
    expect(labels({ scheme: 'free', labels: Array(2).fill(Array(5).fill(null)) })).toContain(
      `${at}: expected at least one label, found a grid without any position`,
    );
  });

  it('blocks or marks a hole that is not there, or blocks one twice', () => {
    expect(faults(spoilt('case.leads.1.plugs.0.blocked', ['2', '4', '2']))).toEqual([
      'case.leads[1].plugs[0].blocked[1]: expected a hole that the grid counts, found “4”',
      'case.leads[1].plugs[0].blocked[2]: expected a hole that is not at case.leads[1].plugs[0].blocked[0] already, found “2”',
    ]);
    expect(faults(spoilt('case.leads.1.plugs.0.mark', 'A1'))).toEqual([
      'case.leads[1].plugs[0].mark: expected a hole that the grid counts, found “A1”',
    ]);
  });

  it('says of a part what only another kind can be', () => {
    expect(faults(spoilt('case.leads.1.parts.0.condition', 'stuck'))).toEqual([
      'case.leads[1].parts[0].condition: expected no condition for a drive LED, found “stuck”',
    ]);
    expect(faults(spoilt('case.leads.0.parts.0.colour', 'red'))).toEqual([
      'case.leads[0].parts[0].colour: expected no colour for a power switch, found “red”',
    ]);
  });

  it('has a wire that ends at nothing', () => {
    const end = (value: string) => faults(spoilt('case.leads.1.wires.0.to', value));
    const at = 'case.leads[1].wires[0].to';
    expect(end('plug.4')).toEqual([`${at}: expected a hole of the plug “plug”, found “plug.4”`]);
    expect(end('plug.2')).toEqual([`${at}: expected a hole that is not blocked, found “plug.2”`]);
    expect(end('socket.1')).toEqual([`${at}: expected a plug or a part of this lead, found “socket.1”`]);
    expect(end('part.base')).toEqual([
      `${at}: expected a terminal of the drive LED: anode, cathode, found “part.base”`,
    ]);
    expect(end('part.anode')).toEqual([`${at}: expected another end than “from”, found “part.anode”`]);
  });

  it('seats a lead, a plug or on a connector that is not there', () => {
    expect(faults(spoilt('seats.0.lead', 'swich'))).toEqual([
      'seats[0].lead: expected a lead that is there (perhaps “switch” is meant), found “swich”',
    ]);
    expect(faults(spoilt('seats.0.plug', 'other'))).toEqual([
      'seats[0].plug: expected a plug of “switch” that is there, found “other”',
    ]);
    expect(faults(spoilt('seats.0.connector', 'panel-2'))).toEqual([
      'seats[0].connector: expected a connector of the board or of a unit that is there (perhaps “panel” is meant), found “panel-2”',
    ]);
  });

  it('seats a plug beside the pins', () => {
    const at = (cell: readonly number[], turn = 0) => {
      const build = spoilt('seats.0.turn', turn);
      Reflect.set(Object(Reflect.get(Object(build), 'seats'))[0], 'at', cell);
      return build;
    };
    const beside = (row: number, col: number) =>
      `seats[0].at: expected a cell where the plug lies over pins of “panel”, found row ${row}, column ${col}`;
    expect(faults(at([2, 0]))).toEqual([beside(2, 0)]);
    expect(faults(at([0, 5]))).toEqual([beside(0, 5)]);
    expect(faults(at([0, -2]))).toEqual([beside(0, -2)]);
    expect(faults(at([0, 6], 180))).toEqual([beside(0, 6)]);
    expect(faults(at([-2, 0], 90))).toEqual([beside(-2, 0)]);
    expect(() => faults(at([0, -1]))).toThrow('It was opened');
    expect(() => faults(at([0, 5], 180))).toThrow('It was opened');
  });

  it('seats one plug twice', () => {
    const { seats } = soundBuild();
    expect(faults(spoilt('seats', [...seats, ...seats]))).toEqual([
      'seats[1].plug: expected a plug that is not at seats[0].plug already, found “switch / plug”',
    ]);
  });
});
