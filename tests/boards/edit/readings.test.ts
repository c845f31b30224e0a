import { describe, expect, it } from 'vitest';
import type { PinReading } from '../../../boards/document/pin-reading';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';
const panel = posts('panel', grid(2, 5));
const onTheBench = bench([panel], []);

const ground: PinReading = { kind: 'ohms', pin: '2', ohms: 0.2 };
const supply: PinReading = { kind: 'volts', pin: '9', supply: 'running', volts: 5.03, tolerance: 0.01 };

const note = (reading: PinReading, instead?: number): Command => ({
  name: 'note-reading',
  args: { connector: 'panel', reading, ...(instead !== undefined && { instead }) },
});
const drop = (reading: number): Command => ({ name: 'drop-reading', args: { connector: 'panel', reading } });

describe('readings of a connector', () => {
  it('are noted one after the other, replaced and dropped; without any the sheet is as before', () => {
    const noted = done(onTheBench, note(ground), note(supply), note(ground));
    expect(noted.board.connectors[0]?.readings).toEqual([ground, supply, ground]);
    const replaced = done(noted, note({ ...ground, ohms: 'open' }, 0));
    expect(replaced.board.connectors[0]?.readings).toEqual([{ ...ground, ohms: 'open' }, supply, ground]);
    const fewer = done(noted, drop(1));
    expect(fewer.board.connectors[0]?.readings).toEqual([ground, ground]);
    expect(done(fewer, drop(0), drop(0))).toEqual(onTheBench);
    expect(labelOf(onTheBench, note(ground))).toBe('Note a reading on PANEL');
  });

  it('are refused at a pin that is not there, past the last, and when the list is full', () => {
    expect(toldNo(onTheBench, note({ ...ground, pin: '11' }))).toBe(
      '“board.connectors[0].readings[0]” cannot be kept: it has to be pins that the grid counts, and is “11”.',
    );
    expect(toldNo(onTheBench, drop(0))).toBe(`PANEL has no reading${NBSP}1.`);
    expect(toldNo(onTheBench, note(ground, 2))).toBe(`PANEL has no reading${NBSP}3.`);
    const full = bench([{ ...panel, readings: Array.from({ length: 512 }, () => ground) }], []);
    expect(toldNo(full, note(ground))).toBe(`A connector can hold no more than 512${NBSP}readings.`);
  });

  it('keep their labels: a numbering without one is refused', () => {
    const noted = done(onTheBench, note(supply));
    const labels = [
      ['A1', 'A2', 'A3', 'A4', 'A5'],
      ['B1', 'B2', 'B3', 'B4', 'B5'],
    ];
    const renumber: Command = {
      name: 'number-connector',
      args: { connector: 'panel', numbering: { scheme: 'free', labels } },
    };
    expect(toldNo(noted, renumber)).toBe(
      `PANEL would lose what is known of pin${NBSP}9. Choose a numbering that has the same labels.`,
    );
    expect(done(onTheBench, renumber).board.connectors[0]?.grid.numbering).toEqual({
      scheme: 'free',
      labels,
    });
  });
});
