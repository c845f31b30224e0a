import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import { gridIndex } from '../../../boards/document/numbering';
import { signalOf } from '../../../boards/signals/signals';
import { tried } from './bench';
import { anywhere } from './published';

function outlineAndKey({ family, grid, pins, shroud }: Connector) {
  return { family, grid, shroud, key: pins.filter(({ missing }) => missing).map(({ pin }) => pin) };
}

function signalsOf(typeId: string): ReadonlyMap<string, string | undefined> {
  return new Map(anywhere(typeId).pins.map(({ pin, signal }) => [pin, signal]));
}

// Worked out from the keys: panel 10, USB 2.0 9, 1394 9, audio 8, serial 10.
describe('headers that shape does not tell apart', () => {
  it.each([
    ['panel-2x5', 'serial-2x5-ribbon'],
    ['panel-2x5', 'serial-2x5-straight'],
    ['usb2-2x5', 'ieee1394-2x5'],
    ['hd-audio-2x5', 'ac97-audio-2x5'],
    ['hd-audio-2x5', 'ac97-audio-2x5-early'],
    ['hd-audio-2x5', 'ac97-audio-2x5-dual-mode'],
  ])('%s and %s have the same outline and the same key', (one, other) => {
    expect(outlineAndKey(anywhere(one))).toEqual(outlineAndKey(anywhere(other)));
  });

  it('let a keyed block into their twin and nowhere else', () => {
    const blocks = [
      'panel-block-2x5',
      'serial-block-2x5',
      'usb2-block-2x5',
      'ieee1394-block-2x5',
      'hd-audio-block-2x5',
      'ac97-audio-block-2x5',
    ];
    const headers = [
      'panel-2x5',
      'serial-2x5-ribbon',
      'usb2-2x5',
      'ieee1394-2x5',
      'hd-audio-2x5',
      'ac97-audio-2x5',
    ];
    const enters = blocks.map((block) =>
      headers.map((header) => (tried(block, header).refusals.length === 0 ? 'yes' : '·')).join(' '),
    );
    expect(enters).toEqual([
      'yes yes · · · ·',
      'yes yes · · · ·',
      '· · yes yes · ·',
      '· · yes yes · ·',
      '· · · · yes yes',
      '· · · · yes yes',
    ]);
  });
});

describe('what the keys of blocks stop, and what nothing stops', () => {
  it('a USB block turned end for end meets its key', () => {
    expect(tried('usb2-block-2x5', 'usb2-2x5', { at: [1, 4], turn: 180 }).refusals).toEqual([
      { code: 'blocked-hole', hole: '9', pin: '2' },
    ]);
  });

  it('a USB block a column too far towards pin 1 meets its key at pin 7', () => {
    expect(tried('usb2-block-2x5', 'usb2-2x5', { at: [0, -1] }).refusals).toContainEqual({
      code: 'blocked-hole',
      hole: '9',
      pin: '7',
    });
  });

  it('a USB block a column too far from pin 1 sits, with the +5 V wires on D−', () => {
    const { refusals, landings } = tried('usb2-block-2x5', 'usb2-2x5', { at: [0, 1] });
    expect(refusals).toEqual([]);
    expect(landings.filter(({ hole }) => hole === '1' || hole === '2').map(({ pin }) => pin?.signal)).toEqual(
      ['usb-d-minus', 'usb-d-minus'],
    );
  });

  it('a single row of USB turned end for end sits, with +5 V on ground', () => {
    const { refusals, landings } = tried('usb2-row-1x4', 'usb2-2x5', { at: [1, 3], turn: 180 });
    expect(refusals).toEqual([]);
    expect(landings.map(({ hole, pin }) => [hole, pin?.signal])).toEqual([
      ['1', 'ground'],
      ['2', 'usb-d-plus'],
      ['3', 'usb-d-minus'],
      ['4', 'usb-vbus'],
    ]);
  });

  it('a single row of five turned end for end puts its shield on +5 V', () => {
    const { refusals, landings } = tried('usb2-row-1x5', 'usb2-2x5', { at: [1, 4], turn: 180 });
    expect(refusals).toEqual([]);
    expect(landings.find(({ hole }) => hole === '5')?.pin?.signal).toBe('usb-vbus');
  });

  it('the ramp of a fan header stops a turned plug, not a shifted one', () => {
    expect(tried('fan-1x4', 'fan-1x4', { at: [0, 3], turn: 180 }).refusals).toEqual([
      { code: 'guide', side: 'bottom', connector: 'header' },
    ]);
    const shifted = tried('fan-1x4', 'fan-1x4', { at: [0, 1] });
    expect(shifted.refusals).toEqual([]);
    expect(shifted.overhang).toEqual(['4']);
    expect(shifted.landings[0]?.pin?.signal).toBe('fan-supply');
  });

  it('a three-wire fan goes on the first three of four pins', () => {
    const { refusals, landings } = tried('fan-1x3', 'fan-1x4');
    expect(refusals).toEqual([]);
    expect(landings.map(({ pin }) => pin?.signal)).toEqual(['ground', 'fan-supply', 'fan-tach']);
  });

  it('the box of a USB 3 header stops a turned plug and every shift', () => {
    expect(tried('usb3-block', 'usb3-19').refusals).toEqual([]);
    expect(tried('usb3-block', 'usb3-19', { at: [1, 9], turn: 180 }).refusals).not.toEqual([]);
    expect(tried('usb3-block', 'usb3-19', { at: [0, 1] }).refusals).not.toEqual([]);
    expect(tried('usb3-block', 'usb3-19', { at: [0, -1] }).refusals).not.toEqual([]);
  });

  it('a latch keeps a supply plug from being turned, and a card plug out of a CPU socket', () => {
    expect(tried('cpu-power-cable-8', 'cpu-power-2x4', { plug: 'board' }).refusals).toEqual([]);
    expect(
      tried('cpu-power-cable-8', 'cpu-power-2x4', { plug: 'board', at: [1, 3], turn: 180 }).refusals,
    ).toEqual([{ code: 'guide', side: 'bottom', connector: 'header' }]);
    expect(tried('card-power-cable-8', 'cpu-power-2x4', { plug: 'board' }).refusals).toMatchObject([
      { code: 'family' },
    ]);
  });

  it('a plug at 2.54 mm does not go on pins at 2.00 mm', () => {
    expect(tried('usb2-block-2x5', 'usb3-19').refusals).toEqual([
      { code: 'pitch', plugMm: 2.54, connectorMm: 2 },
    ]);
  });
});

describe('what a wrong twin does, from the signals alone', () => {
  it('1394 has +12 V on the two pins where USB has ground', () => {
    const usb = signalsOf('usb2-2x5');
    const firewire = signalsOf('ieee1394-2x5');
    const twelveOnGround = [...usb].filter(([pin, signal]) => {
      const there = firewire.get(pin);
      return signal === 'ground' && there === 'ieee1394-power';
    });
    expect(twelveOnGround.map(([pin]) => pin)).toEqual(['7', '8']);
    expect(signalOf('ieee1394-power').volts).toBe(12);
  });

  it('the +5 V of AC’97 is on pin 7, on pin 4, or nowhere', () => {
    const supplied = (typeId: string) =>
      anywhere(typeId)
        .pins.filter(({ signal }) => signal === 'ac97-supply')
        .map(({ pin }) => pin);
    expect(supplied('ac97-audio-2x5')).toEqual(['7']);
    expect(supplied('ac97-audio-2x5-early')).toEqual(['4']);
    expect(supplied('ac97-audio-2x5-dual-mode')).toEqual([]);
  });

  it('eight pins for a CPU and eight for a card have +12 V in opposite rows', () => {
    const rowsOfTwelve = (typeId: string) => {
      const { grid, pins } = anywhere(typeId);
      const rows = pins
        .filter(({ signal }) => signal === 'supply-12v')
        .map(({ pin }) => gridIndex(grid).cellOf(pin)?.[0]);
      return [...new Set(rows)];
    };
    expect(rowsOfTwelve('cpu-power-2x4')).toEqual([1]);
    expect(rowsOfTwelve('card-power-2x4')).toEqual([0]);
  });
});

describe('grounds that are there for one job', () => {
  it('panel pin 5 is for the reset switch and pin 8 for the power switch', () => {
    const { pins } = anywhere('panel-2x5');
    const owned = pins
      .filter(({ signal }) => signal === 'ground')
      .map(({ pin, belongsTo }) => [pin, belongsTo]);
    expect(owned).toEqual([
      ['5', 'reset-switch'],
      ['8', 'power-switch'],
    ]);
  });

  it.each([
    ['power-led-key-lock-1x5', ['power-led', 'key-lock']],
    ['case-open-1x2', ['case-open']],
    ['usb2-2x5', ['usb2', 'usb2']],
    ['usb3-19', ['usb3', 'usb3', 'usb3', 'usb3']],
    ['ieee1394-2x5', ['ieee1394', 'ieee1394', 'ieee1394']],
    ['hd-audio-2x5', ['hd-audio']],
    ['fan-1x4', ['fan']],
  ])('of %s', (typeId, jobs) => {
    const grounds = anywhere(typeId).pins.filter(({ signal }) => signal === 'ground');
    expect(grounds.map(({ belongsTo }) => belongsTo)).toEqual(jobs);
  });
});

describe('papers that contradict each other', () => {
  it.each([
    ['panel-2x5', '9', ['supply-5v']],
    ['speaker-1x4', '1', ['speaker-drive']],
    ['speaker-1x4-reversed', '1', ['speaker-feed']],
    ['case-open-1x2', '1', ['ground']],
    ['case-open-1x2-ground-first', '1', ['case-open-input']],
    ['usb2-2x5', '10', ['usb-over-current']],
    ['usb2-2x5-over-current', '10', ['no-connection']],
    ['ac97-audio-2x5', '4', ['ac97-supply', 'hd-presence']],
    ['ac97-audio-2x5', '7', ['ac97-phones-on', 'no-connection']],
    ['main-power-24', '20', ['supply-minus-5v']],
    ['sata-power-15', '3', ['drive-power-disable']],
  ])('%s pin %s keeps what the others say', (typeId, label, others) => {
    const pin = anywhere(typeId).pins.find((candidate) => candidate.pin === label);
    expect(pin?.alternatives?.map(({ signal }) => signal)).toEqual(others);
  });
});
