import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Connector, Pin } from '../../../boards/document/connector';
import { connectorOf, pinAt, pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { applyCommand, labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { arbitraryConnector } from '../arbitrary-build';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

// How a header is edited: common practice, no source.

const NBSP = '\u00a0';
const panel = posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } }), {
  pins: ['drive-led-feed', 'power-led-feed', 'drive-led-sink', 'power-led-sink', 'ground', null],
});
const onBoard = bench([panel], []);

const change = (...pins: readonly Pin[]): Command => ({
  name: 'change-pins',
  args: { connector: 'panel', pins: [...pins] },
});

const mirror = (way: 'left-right' | 'top-bottom' | 'half-turn', connector = 'panel'): Command => ({
  name: 'mirror-pins',
  args: { connector, way },
});

function panelAfter(...commands: readonly Command[]): Connector {
  const connector = connectorOf(done(onBoard, ...commands).board, 'panel');
  if (connector === undefined) throw new Error('The board has no panel');
  return connector;
}

describe('many pins changed at once', () => {
  it('are set exactly: what was known of them goes, nothing else is touched', () => {
    const manual = { kind: 'manual', where: 'page 9' } as const;
    const command = change({ pin: '3', signal: 'ground', source: manual }, { pin: '1', missing: true });
    const changed = panelAfter(command);
    expect(pinOf(changed, '1')).toEqual({ pin: '1', missing: true });
    expect(pinOf(changed, '3')).toEqual({ pin: '3', signal: 'ground', source: manual });
    for (const pin of ['2', '4', '5', '6']) expect(pinOf(changed, pin)).toBe(pinOf(panel, pin));
    expect(labelOf(onBoard, command)).toBe('Change 2 pins of PANEL');
    expect(labelOf(onBoard, change({ pin: '3' }))).toBe('Change pin 3 of PANEL');
  });

  it('leave the list when nothing is said of them any more', () => {
    expect(panelAfter(change({ pin: '3' }, { pin: '9' })).pins.map(({ pin }) => pin)).toEqual([
      '1',
      '2',
      '4',
      '5',
      '6',
    ]);
  });

  it('set exactly the ones that are named, whatever they are', () => {
    fc.assert(
      fc.property(arbitraryConnector('panel'), fc.nat(), (connector, seed) => {
        const labels = gridIndex(connector.grid).positions.map(({ label }) => label);
        const chosen = labels.filter((_, at) => ((seed >> (at % 24)) & 1) === 1);
        fc.pre(chosen.length > 0);
        const pins = chosen.map((pin): Pin => ({ pin, signal: 'ground', confidence: 1 }));
        const changed = applyCommand(bench([connector], []), change(...pins));
        if (!changed.ok) throw new Error(changed.problem.code);
        const next = connectorOf(changed.value.board, 'panel');
        if (next === undefined) throw new Error('gone');
        for (const label of labels)
          expect(pinOf(next, label)).toEqual(
            chosen.includes(label)
              ? { pin: label, signal: 'ground', confidence: 1 }
              : pinOf(connector, label),
          );
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it('are refused with labels that the connector has not, and with labels named twice', () => {
    expect(toldNo(onBoard, change({ pin: '11' }))).toBe(
      `PANEL has no pin${NBSP}11. Choose labels that it counts.`,
    );
    expect(toldNo(onBoard, change({ pin: '3' }, { pin: '3', missing: true }))).toBe(
      `The list for PANEL names pin${NBSP}3 more than once. Keep one line for each pin.`,
    );
  });
});

describe('what is known of a header, mirrored for a manual drawn from the other side', () => {
  it('moves to the position opposite, and the numbers stay', () => {
    // 2 4 6 8 10 above 1 3 5 7 9.
    const mirrored = panelAfter(mirror('left-right'));
    expect(mirrored.grid).toBe(panel.grid);
    expect(pinOf(mirrored, '9').signal).toBe('drive-led-feed');
    expect(pinOf(mirrored, '10').signal).toBe('power-led-feed');
    expect(pinOf(mirrored, '6')).toEqual({ pin: '6', missing: true });
    expect(pinOf(panelAfter(mirror('top-bottom')), '2').signal).toBe('drive-led-feed');
    expect(pinOf(panelAfter(mirror('half-turn')), '10').signal).toBe('drive-led-feed');
    expect(labelOf(onBoard, mirror('left-right'))).toBe('Mirror the pins of PANEL');
    expect(labelOf(onBoard, mirror('half-turn'))).toBe('Turn the pins of PANEL');
  });

  it('is as before when it is mirrored twice, and a half turn is one after the other', () => {
    fc.assert(
      fc.property(arbitraryConnector('panel'), (connector) => {
        const build = bench([connector], []);
        for (const way of ['left-right', 'top-bottom', 'half-turn'] as const) {
          const once = applyCommand(build, mirror(way));
          if (once.ok) expect(done(once.value, mirror(way))).toEqual(build);
          else expect(connector.grid.numbering.scheme).toBe('free');
        }
        const half = applyCommand(build, mirror('half-turn'));
        const across = applyCommand(build, mirror('left-right'));
        const both = across.ok ? applyCommand(across.value, mirror('top-bottom')) : across;
        if (half.ok && both.ok) expect(both.value).toEqual(half.value);
      }),
      { seed: 42, numRuns: 300 },
    );
  });

  it('is refused where the grid has no position opposite', () => {
    const labels = [
      ['A', 'B', null],
      ['C', 'D', 'E'],
    ];
    const odd = posts('panel', grid(2, 3, { numbering: { scheme: 'free', labels } }));
    const build = bench([{ ...odd, pins: [{ pin: 'A', signal: 'ground' }] }], []);
    expect(toldNo(build, mirror('left-right'))).toBe(
      `What is known of pin${NBSP}A would come to lie where PANEL has no position. Give the grid a position there, or clear them first.`,
    );
    expect(done(build, mirror('top-bottom')).board.connectors[0]?.pins).toEqual([
      { pin: 'C', signal: 'ground' },
    ]);
  });
});

describe('another numbering', () => {
  const byRow = { scheme: 'by-row', from: 'top-left' } as const;
  const number = (over: object): Command => ({
    name: 'number-connector',
    args: { connector: 'panel', numbering: byRow, ...over },
  });

  it('takes what is known along with its number, or leaves it in its place', () => {
    const withNumber = panelAfter(number({}));
    expect(pinOf(withNumber, '1').signal).toBe('drive-led-feed');
    const inPlace = panelAfter(number({ keep: 'positions' }));
    for (let row = 0; row < 2; row++)
      for (let col = 0; col < 5; col++)
        expect(pinAt(inPlace, [row, col])?.signal).toBe(pinAt(panel, [row, col])?.signal);
    expect(pinOf(inPlace, '6').signal).toBe('drive-led-feed');
  });

  it('lets pins without a position go only when that is wanted', () => {
    const labels = [
      ['1', '2', '3', '4', '5'],
      [null, null, null, null, null],
    ];
    const free = { numbering: { scheme: 'free', labels } };
    expect(toldNo(onBoard, number(free))).toMatch(/would lose what is known of pin\u00a06\./);
    expect(panelAfter(number({ ...free, anyway: true })).pins).toHaveLength(5);
  });
});

describe('two sources that disagree about a pin', () => {
  const reading: Pin = {
    pin: '9',
    signal: 'reserved',
    name: 'RSVD',
    print: 'R',
    source: { kind: 'manual', where: 'page 9' },
    confidence: 0.9,
    notes: 'Tiny print.',
    alternatives: [
      { signal: 'ground', source: { kind: 'print' } },
      { signal: 'supply-5v', source: { kind: 'measured', where: '4.98 V' }, confidence: 0.8 },
    ],
  };
  const believe = (alternative: number, pin = '9'): Command => ({
    name: 'believe-source',
    args: { connector: 'panel', pin, alternative },
  });

  it('change places, and print and notes stay with the pin', () => {
    expect(pinOf(panelAfter(change(reading), believe(1)), '9')).toEqual({
      pin: '9',
      signal: 'supply-5v',
      print: 'R',
      source: { kind: 'measured', where: '4.98 V' },
      confidence: 0.8,
      notes: 'Tiny print.',
      alternatives: [
        { signal: 'ground', source: { kind: 'print' } },
        {
          signal: 'reserved',
          name: 'RSVD',
          source: { kind: 'manual', where: 'page 9' },
          confidence: 0.9,
        },
      ],
    });
  });

  it('are as before when they change places twice', () => {
    expect(pinOf(panelAfter(change(reading), believe(1), believe(1)), '9')).toEqual(reading);
  });

  it('have to be there', () => {
    const build = done(onBoard, change(reading));
    expect(toldNo(build, believe(2))).toBe(`No other source says that of pin${NBSP}9 of PANEL.`);
    expect(toldNo(build, believe(0, '1'))).toBe(`No other source says that of pin${NBSP}1 of PANEL.`);
  });
});
