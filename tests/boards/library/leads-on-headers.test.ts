import { describe, expect, it } from 'vitest';
import { gridIndex } from '../../../boards/document/numbering';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { jointsOf } from '../../../boards/fit/joints';
import { LEAD_TYPES } from '../../../boards/library/leads/index';
import { benchOf, seatOn } from './bench';

/** Lead, header, and for each plug the pin under its first cell. */
type Pair = readonly [lead: string, header: string, plugs: Readonly<Record<string, string>>];

const PAIRS: readonly Pair[] = [
  ['power-switch-1x2', 'panel-2x5', { plug: '6' }],
  ['electronic-power-switch-1x2', 'panel-2x5', { plug: '6' }],
  ['drive-led-1x2', 'panel-2x5', { plug: '1' }],
  ['power-led-1x2', 'panel-2x5', { plug: '2' }],
  ['two-colour-power-led-1x2', 'panel-2x5', { plug: '2' }],
  ['power-led-singles', 'panel-2x5', { plus: '2', minus: '4' }],
  ['power-led-1x3', 'power-led-1x3', { plug: '1' }],
  ['power-led-key-lock-1x5', 'power-led-key-lock-1x5', { plug: '1' }],
  ['panel-block-2x5', 'panel-2x5', { plug: '2' }],
  ['panel-block-2x5', 'panel-2x5-supply', { plug: '2' }],
  ['speaker-1x4', 'speaker-1x4', { plug: '1' }],
  ['buzzer-1x4', 'speaker-1x4', { plug: '1' }],
  ['case-open-1x2', 'case-open-1x2', { plug: '1' }],
  ['usb2-block-2x5', 'usb2-2x5', { plug: '2' }],
  ['usb2-block-2x5-shield', 'usb2-2x5', { plug: '2' }],
  ['usb2-row-1x4', 'usb2-2x5', { plug: '1' }],
  ['usb2-row-1x5', 'usb2-2x5', { plug: '2' }],
  [
    'usb2-singles',
    'usb2-2x5',
    { 'first-vbus': '1', 'first-d-minus': '3', 'first-d-plus': '5', 'first-ground': '7' },
  ],
  ['usb3-block', 'usb3-19', { plug: '20' }],
  ['usb-c-front', 'usb-c-front-20', { plug: '1' }],
  ['hd-audio-block-2x5', 'hd-audio-2x5', { plug: '2' }],
  ['ac97-audio-block-2x5', 'ac97-audio-2x5', { plug: '2' }],
  [
    'audio-singles',
    'ac97-audio-2x5',
    { mic: '1', ground: '2', bias: '3', right: '5', 'right-return': '6', left: '9', 'left-return': '10' },
  ],
  ['ieee1394-block-2x5', 'ieee1394-2x5', { plug: '2' }],
  ['serial-block-2x5', 'serial-2x5-ribbon', { plug: '2' }],
  ['fan-1x2', 'fan-1x4', { plug: '1' }],
  ['fan-1x3', 'fan-1x3', { plug: '1' }],
  ['fan-1x4', 'fan-1x4', { plug: '1' }],
];

describe('a lead on the header it is made for', () => {
  it.each(PAIRS)('%s fits %s, and every wire meets a signal it wants', (leadType, header, plugs) => {
    const { build, lead, connector } = benchOf(leadType, header);
    const seats = Object.entries(plugs).map(([plug, pin]) => {
      const [row, col] = gridIndex(connector.grid).cellOf(pin) ?? [];
      if (row === undefined || col === undefined) throw new Error(`No pin ${pin} on ${header}`);
      return seatOn({ plug, at: [row, col] });
    });
    const wired = { ...build, seats };
    expect(seats.flatMap((seat) => fitSeat(wired, seat).refusals)).toEqual([]);

    const joints = jointsOf(wired);
    expect(joints).toHaveLength(lead.wires.length);
    const astray = joints.filter(({ pin, part, terminal }) => {
      const samePort =
        part?.channel === undefined || pin?.channel === undefined || part.channel === pin.channel;
      return !terminal?.wants.some((signal) => signal === pin?.signal) || !samePort;
    });
    expect(astray.map(({ hole, pin }) => [hole, pin?.pin])).toEqual([]);
  });

  it('a reset lead lies on pins 5 and 7, either way round', () => {
    const { build } = benchOf('reset-switch-1x2', 'panel-2x5');
    const meets = ([0, 180] as const).map((turn) => {
      const seat = seatOn({ at: [1, turn === 0 ? 2 : 3], turn });
      return jointsOf({ ...build, seats: [seat] }).map(({ pin }) => pin?.signal);
    });
    expect(meets).toEqual([
      ['ground', 'reset-switch-input'],
      ['reset-switch-input', 'ground'],
    ]);
  });

  it('a two-way plug lies across the rows when it is turned: 5 and 6 of AC’97 bridged', () => {
    const { build } = benchOf('audio-singles-bridged', 'ac97-audio-2x5');
    const seat = seatOn({ plug: 'right', at: [0, 2], turn: 90 });
    expect(fitSeat(build, seat).refusals).toEqual([]);
    expect(jointsOf({ ...build, seats: [seat] }).map(({ pin }) => pin?.pin)).toEqual(['6', '5']);
  });
});

describe('cables of the supply', () => {
  const ROWS: readonly (readonly [
    cable: string,
    header: string,
    plug: string,
    at: readonly [number, number],
  ])[] = [
    ['main-power-cable-24', 'main-power-24', 'board', [0, 0]],
    ['main-power-cable-20', 'main-power-20', 'board', [0, 0]],
    ['main-power-cable-20', 'main-power-24', 'board', [0, 0]],
    ['main-power-cable-20-and-4', 'main-power-24', 'twenty', [0, 0]],
    ['main-power-cable-20-and-4', 'main-power-24', 'four', [0, 10]],
    ['cpu-power-cable-4', 'cpu-power-2x2', 'board', [0, 0]],
    ['cpu-power-cable-4-and-4', 'cpu-power-2x4', 'second', [0, 2]],
    ['card-power-cable-6-and-2', 'card-power-2x4', 'six', [0, 0]],
    ['card-power-cable-6-and-2', 'card-power-2x4', 'two', [0, 3]],
    ['sata-data-cable', 'sata-data-7', 'board', [0, 0]],
    ['sata-power-adapter', 'sata-power-15', 'drive', [0, 0]],
    ['peripheral-power-cable', 'peripheral-power-1x4', 'drive', [0, 0]],
  ];

  it.each(ROWS)('%s goes on %s (%s)', (cable, header, plug, [row, col]) => {
    const { build } = benchOf(cable, header);
    expect(fitSeat(build, seatOn({ plug, at: [row, col] })).refusals).toEqual([]);
  });

  it('a supply’s own end fits no connector of the library', () => {
    const ends = LEAD_TYPES.flatMap(({ lead }) => lead.plugs.filter(({ id }) => id === 'supply'));
    expect(ends.length).toBeGreaterThan(0);
    expect(new Set(ends.map(({ family }) => family))).toEqual(new Set(['supply-side']));
  });
});
