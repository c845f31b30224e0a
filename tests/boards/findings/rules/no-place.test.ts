import { describe, expect, test } from 'vitest';
import { wordsOf } from '../../../../boards/findings/words';
import { makeLead } from '../../../../boards/library/make-lead';
import { bench } from '../harness';

describe('a lead that the board has no pins for', () => {
  // Common practice, no source: many boards have no key lock.
  const board = bench().header('usb2-2x5', 'usb').lead('power-led-key-lock-1x5', 'lock');

  test('a note, with the job', () => {
    expect(board.finding('no-place')).toMatchObject({
      severity: 'note',
      leads: ['lock'],
      pins: [],
      data: { plug: { lead: 'lock', plug: 'plug' }, job: 'power-led' },
      remedies: [{ command: { name: 'set-lead-aside', args: { lead: 'lock', aside: true } } }],
    });
  });

  test('a board that has the header has a place', () => {
    expect(board.header('power-led-key-lock-1x5', 'pled').codes()).not.toContain('no-place');
  });
});

describe('a lead of single plugs of which one alone would find pins', () => {
  // The pins of a fan header have a ground, which the − of a power LED could go to, and nothing that feeds one.
  const fan = bench().header('fan-1x4', 'fan');
  const { plugs } = makeLead('power-led-singles', { id: 'power', name: 'POWER' });

  test('the plug that has none is named, whichever of them is written first', () => {
    for (const each of [plugs, plugs.toReversed()]) {
      const build = fan.lead('power-led-singles', 'power', { plugs: each });
      expect(build.finding('no-place').data.plug).toEqual({ lead: 'power', plug: 'plus' });
    }
  });

  test('what is said of it is the job of its own part', () => {
    const build = fan.lead('power-led-singles', 'power', {
      parts: [
        { id: 'speaker', kind: 'speaker' },
        { id: 'led', kind: 'power-led' },
      ],
      plugs: plugs.toReversed(),
    });
    const finding = build.finding('no-place');
    expect(wordsOf(finding, build.build)).toMatchObject({
      title: 'This board has no place for POWER (P LED+).',
      reason: 'No connector has power LED pins that this plug fits.',
    });
  });
});
