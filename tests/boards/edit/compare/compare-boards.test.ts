import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../../boards/document/board-sheet';
import type { Connector } from '../../../../boards/document/connector';
import { compareBoards, countDifferences } from '../../../../boards/edit/compare/compare-boards';
import { arbitraryBoard } from '../../arbitrary-build';
import { bench, grid, posts } from '../../fixtures/bench';

const panel = posts('panel', grid(2, 5), { pins: ['drive-led-feed', 'power-led-feed', 'drive-led-sink'] });
const fan = posts('fan', grid(1, 4), { place: { xMm: 50, yMm: 40, turn: 0 } });

const sheet = (...connectors: readonly Connector[]): BoardSheet => bench(connectors, []).board;

/** What differs, as "connector: fields" and "connector pin: fields". */
function told(mine: BoardSheet, theirs: BoardSheet): readonly string[] {
  return compareBoards(mine, theirs).connectors.flatMap(({ key, fields, pins }) => [
    ...(fields.length > 0 ? [`${key}: ${fields.join(', ')}`] : []),
    ...pins.filter((pin) => pin.fields.length > 0).map((pin) => `${pin.key}: ${pin.fields.join(', ')}`),
  ]);
}

describe('two sheets of a board', () => {
  it('do not differ where they are one', () => {
    fc.assert(
      fc.property(arbitraryBoard, (board) => {
        expect(countDifferences(compareBoards(board, board))).toBe(0);
        expect(compareBoards(board, { ...board, id: 'copy' }).connectors).toHaveLength(
          board.connectors.length,
        );
      }),
      { seed: 71, numRuns: 300 },
    );
  });

  it('differ where a pin carries another signal, another source or another name', () => {
    const [first, second, third] = panel.pins;
    if (!first || !second || !third) throw new Error('The panel has three pins');
    const pins = [
      { ...first, signal: 'ground' as const },
      { ...second, source: { kind: 'measured' as const } },
      { ...third, name: 'HDD-' },
    ];
    expect(told(sheet(panel), sheet({ ...panel, pins }))).toEqual([
      'pin panel 1: signal',
      'pin panel 2: source',
      'pin panel 3: name',
    ]);
  });

  it('tell a connector that was added, taken away, renamed or moved', () => {
    expect(told(sheet(panel), sheet(panel, fan))).toEqual(['connector +fan: connector']);
    expect(told(sheet(panel, fan), sheet(panel))).toEqual(['connector fan: connector']);
    const place = { ...fan.place, xMm: 90 };
    expect(told(sheet(fan), sheet({ ...fan, place }))).toEqual(['connector fan: place']);
    expect(told(sheet(fan), sheet({ ...fan, print: 'CHA_FAN' }))).toEqual(['connector fan: print']);
  });

  it('lay a connector over the one of the same print, whatever id it has', () => {
    const theirs = { ...panel, id: 'connector-7' };
    expect(told(sheet(panel, fan), sheet(fan, theirs))).toEqual([]);
  });

  it('lay connectors with no print over each other by where they stand, within what a ruler tells', () => {
    const bare = { ...fan, print: '' };
    const measured = { ...bare, id: 'other', place: { ...fan.place, xMm: fan.place.xMm + 3 } };
    expect(told(sheet(bare), sheet(measured))).toEqual(['connector fan: place']);
    const elsewhere = { ...measured, place: { ...fan.place, xMm: fan.place.xMm + 60 } };
    expect(told(sheet(bare), sheet(elsewhere))).toEqual([
      'connector fan: connector',
      'connector +other: connector',
    ]);
  });

  it('do not take one of two connectors of the same print for the other', () => {
    const twins = [fan, { ...fan, id: 'fan-2', place: { ...fan.place, yMm: 90 } }];
    const theirs = twins.map((each, at) => ({ ...each, id: `other-${at}` })).toReversed();
    expect(told(sheet(...twins), sheet(...theirs))).toEqual([]);
  });

  it('that count otherwise are laid over each other by position where what they say stands there', () => {
    const along = { ...panel.grid, numbering: { scheme: 'by-row', from: 'top-left' } as const };
    const zigzag = { ...panel.grid, numbering: { scheme: 'zig-zag', from: 'top-left' } as const };
    const mine: Connector = { ...panel, grid: along, pins: [{ pin: '6', signal: 'power-led-feed' }] };
    const theirs: Connector = { ...panel, grid: zigzag, pins: [{ pin: '2', signal: 'power-led-feed' }] };
    expect(told(sheet(mine), sheet(theirs))).toEqual([
      'connector panel: numbering',
      ...['2', '3', '4', '5', '6', '7', '8', '9'].map((label) => `pin panel ${label}: pin`),
    ]);
  });

  it('that count otherwise are laid over each other by number where only the drawing was turned', () => {
    const from = (corner: 'top-left' | 'bottom-right') =>
      ({ ...panel.grid, numbering: { scheme: 'zig-zag', from: corner } }) as const;
    const mine: Connector = { ...panel, grid: from('top-left') };
    const theirs: Connector = { ...panel, grid: from('bottom-right') };
    expect(told(sheet(mine), sheet(theirs))).toEqual(['connector panel: numbering']);
  });

  it('are laid over each other by number where one drew the same header turned by half, and where one says nothing', () => {
    const counted = (from: 'top-left' | 'bottom-right') =>
      ({ ...panel.grid, numbering: { scheme: 'zig-zag', from } }) as const;
    const place = { xMm: 10, yMm: 10, turn: 0 } as const;
    const mine: Connector = { ...panel, grid: counted('top-left'), place, pins: [] };
    // The first cell of the turned one is the last of the other: four columns and one row further.
    const turned = { xMm: 10 + 4 * 2.54, yMm: 10 + 2.54, turn: 180 } as const;
    const pins: Connector['pins'] = [
      { pin: '1', signal: 'drive-led-feed' },
      { pin: '6', signal: 'power-switch-input' },
      { pin: '10', missing: true },
    ];
    const theirs: Connector = { ...panel, grid: counted('bottom-right'), place: turned, pins };
    const alone = ['pin panel 1: signal', 'pin panel 6: signal', 'pin panel 10: missing'];
    expect(told(sheet(mine), sheet(theirs))).toEqual(['connector panel: place, numbering', ...alone]);
    expect(told(sheet(mine), sheet({ ...theirs, place }))).toEqual(['connector panel: numbering', ...alone]);
    // Three signals that agree by position agree on opposite corners of a header that was turned.
    const opposite: Connector = {
      ...mine,
      pins: pins.map((pin) => ({ ...pin, pin: String(11 - Number(pin.pin)) })),
    };
    expect(told(sheet(opposite), sheet(theirs))).toContain('pin panel 1: missing, signal');
  });
});
