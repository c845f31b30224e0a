import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../../boards/document/board-sheet';
import type { Connector } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import type { Photo } from '../../../../boards/document/photo';
import type { PinReading } from '../../../../boards/document/pin-reading';
import { compareBoards } from '../../../../boards/edit/compare/compare-boards';
import { mergeBoards } from '../../../../boards/edit/compare/merge-boards';
import type { Take } from '../../../../boards/edit/compare/taking';
import { bench, grid, posts } from '../../fixtures/bench';

const panel = posts('panel', grid(2, 2));
const along = { ...panel.grid, numbering: { scheme: 'by-row', from: 'top-left' } as const };
const zigzag = { ...panel.grid, numbering: { scheme: 'zig-zag', from: 'top-left' } as const };

const sheet = (connector: Connector, photos: readonly Photo[] = []): BoardSheet => ({
  ...bench([connector], []).board,
  ...(photos.length > 0 && { photos: [...photos] }),
});

function taken(mine: BoardSheet, theirs: BoardSheet, take: Take) {
  return mergeBoards(compareBoards(mine, theirs), () => take);
}

function merged(mine: BoardSheet, theirs: BoardSheet, take: Take = 'both'): BoardSheet {
  const result = taken(mine, theirs, take);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

describe('readings of two sheets', () => {
  const ohms = (pin: string, value: number): PinReading => ({ kind: 'ohms', pin, ohms: value });
  const withReadings = (base: Connector, ...readings: PinReading[]): Connector => ({ ...base, readings });

  it('are joined, each once', () => {
    const mine = withReadings(panel, ohms('1', 0.2), ohms('2', 470));
    const theirs = withReadings(panel, ohms('1', 0.2), ohms('3', 9_800));
    expect(merged(sheet(mine), sheet(theirs)).connectors[0]?.readings).toEqual([
      ohms('1', 0.2),
      ohms('2', 470),
      ohms('3', 9_800),
    ]);
  });

  it('are noted under the numbers that stand, where the sheets count differently', () => {
    // By row, the pin right of pin 1 is pin 2; by zig-zag it is pin 3. Both say that it is ground.
    const mine: Connector = { ...panel, grid: along, pins: [{ pin: '2', signal: 'ground' }] };
    const theirs: Connector = { ...panel, grid: zigzag, pins: [{ pin: '3', signal: 'ground' }] };
    const touch: PinReading = { kind: 'touch', pins: ['1', '3'], supply: 'standby', did: 'started' };
    const lamp: PinReading = { kind: 'lamp', plus: '2', minus: '3', supply: 'running', showed: 'lit' };
    const both = merged(sheet(mine), sheet(withReadings(theirs, ohms('3', 0.1), touch, lamp)));
    expect(both.connectors[0]?.readings).toEqual([
      ohms('2', 0.1),
      { ...touch, pins: ['1', '2'] },
      { ...lamp, plus: '3', minus: '2' },
    ]);
  });

  it('of theirs come with theirs, and of mine stay with mine', () => {
    const mine = withReadings(panel, ohms('1', 1));
    const theirs = withReadings(panel, ohms('2', 2));
    expect(merged(sheet(mine), sheet(theirs), 'theirs').connectors[0]?.readings).toEqual([ohms('2', 2)]);
    expect(merged(sheet(mine), sheet(theirs), 'mine').connectors[0]?.readings).toEqual([ohms('1', 1)]);
  });

  it('are refused where they are more than a connector can hold', () => {
    const many = (from: number) =>
      Array.from({ length: LIMITS.readingsPerConnector }, (_, at) => ohms('1', from + at));
    const [mine, theirs] = [withReadings(panel, ...many(0)), withReadings(panel, ...many(10_000))];
    expect(taken(sheet(mine), sheet(theirs), 'both')).toMatchObject({
      problem: { code: 'full', what: 'readings', limit: LIMITS.readingsPerConnector },
    });
  });
});

describe('photos of two sheets', () => {
  const photo = (data: string, ...pins: readonly string[]): Photo => ({
    id: 'photo',
    type: 'image/png',
    widthPx: 400,
    heightPx: 300,
    data,
    points: pins.map((pin, at) => ({ connector: 'panel', pin, xPx: 10 * at, yPx: 20 })),
  });

  it('stand beside each other, each with an id of its own', () => {
    const both = merged(sheet(panel, [photo('AAAA', '1')]), sheet(panel, [photo('BBBB', '2')]));
    expect(both.photos?.map(({ id, data }) => [id, data])).toEqual([
      ['photo', 'AAAA'],
      ['photo-2', 'BBBB'],
    ]);
  });

  it('are one where they are the same picture, with what either points at', () => {
    const both = merged(
      sheet(panel, [photo('AAAA', '1', '2')]),
      sheet(panel, [photo('AAAA', '4', '2', '3')]),
    );
    expect(both.photos?.map(({ points }) => points.map(({ pin }) => pin))).toEqual([['1', '2', '4', '3']]);
  });

  it('point at the same connector, whatever id and numbers it has in the other sheet', () => {
    const mine: Connector = { ...panel, grid: along, pins: [{ pin: '2', signal: 'ground' }] };
    const theirs: Connector = { ...panel, id: 'other', grid: zigzag, pins: [{ pin: '3', signal: 'ground' }] };
    const points = [{ connector: 'other', pin: '3', xPx: 5, yPx: 5 }];
    const both = merged(sheet(mine), sheet(theirs, [{ ...photo('AAAA'), points }]));
    expect(both.photos?.[0]?.points).toEqual([{ connector: 'panel', pin: '2', xPx: 5, yPx: 5 }]);
  });

  it('are refused where they are more than a board can hold', () => {
    const many = (letter: string) =>
      Array.from({ length: LIMITS.photos }, (_, at) => ({ ...photo(`${letter}AA${at}`), id: `photo-${at}` }));
    expect(taken(sheet(panel, many('A')), sheet(panel, many('B')), 'both')).toMatchObject({
      problem: { code: 'full', what: 'photos', limit: LIMITS.photos },
    });
  });
});
