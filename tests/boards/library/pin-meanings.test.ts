import { describe, expect, it } from 'vitest';
import { gridIndex } from '../../../boards/document/numbering';
import { signalOf } from '../../../boards/signals/signals';
import { anywhere } from './published';

function signalsOf(typeId: string): ReadonlyMap<string, string | undefined> {
  return new Map(anywhere(typeId).pins.map(({ pin, signal }) => [pin, signal]));
}

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
