import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import { tried } from './bench';
import { anywhere } from './published';

function outlineAndKey({ family, grid, pins, shroud }: Connector) {
  return { family, grid, shroud, key: pins.filter(({ missing }) => missing).map(({ pin }) => pin) };
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
