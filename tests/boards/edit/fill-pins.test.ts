import { describe, expect, it } from 'vitest';
import type { Pin } from '../../../boards/document/connector';
import { LIMITS } from '../../../boards/document/limits';
import { connectorOf, pinOf } from '../../../boards/document/lookup';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench, grid, posts } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

// How the statements of several sources stand beside each other: common practice, no source.

const NBSP = '\u00a0';
const MANUAL = { kind: 'manual', where: 'page 12' } as const;
const PRINT = { kind: 'print' } as const;
const GUESS = { kind: 'guessed', where: 'looks like the common panel' } as const;

const blank = bench([posts('panel', grid(2, 5), { pins: [] })], []);

function fill(...pins: readonly Pin[]): Command {
  return { name: 'fill-pins', args: { connector: 'panel', pins: [...pins] } };
}

/** What is known of pin 1 once each of these has been said of it in turn. */
function afterHearing(...told: readonly Omit<Pin, 'pin'>[]): Pin {
  const build = done(blank, ...told.map((pin) => fill({ pin: '1', ...pin })));
  const panel = connectorOf(build.board, 'panel');
  if (panel === undefined) throw new Error('The board has no panel');
  return pinOf(panel, '1');
}

describe('pins filled from one source', () => {
  it('are written together, in counting order, as one step', () => {
    const command = fill({ pin: '2', signal: 'power-led-feed' }, { pin: '1', signal: 'drive-led-feed' });
    const [panel] = done(blank, command).board.connectors;
    expect(panel?.pins.map(({ pin }) => pin)).toEqual(['1', '2']);
    expect(labelOf(blank, command)).toBe('Fill 2 pins of PANEL');
  });

  it('are refused with labels that the connector has not, and with labels named twice', () => {
    expect(toldNo(blank, fill({ pin: '1' }, { pin: '11' }, { pin: 'A2' }))).toBe(
      `PANEL has no pins${NBSP}11 and A2. Choose labels that it counts.`,
    );
    expect(toldNo(blank, fill({ pin: '3' }, { pin: '3' }))).toBe(
      `The list for PANEL names pin${NBSP}3 more than once. Keep one line for each pin.`,
    );
    expect(toldNo(blank, fill())).toMatch(/pins.* cannot be kept/);
  });
});

describe('two sources of one pin', () => {
  it('that agree leave the surer one standing, and what only the other knew', () => {
    expect(
      afterHearing(
        { signal: 'ground', belongsTo: 'reset-switch', source: PRINT, confidence: 0.9 },
        { signal: 'ground', name: 'GND', source: MANUAL, confidence: 0.95 },
      ),
    ).toEqual({
      pin: '1',
      signal: 'ground',
      belongsTo: 'reset-switch',
      name: 'GND',
      source: MANUAL,
      confidence: 0.95,
    });
  });

  it('that disagree are both kept, the newer one in front', () => {
    expect(
      afterHearing(
        { signal: 'reserved', name: 'RSVD', source: PRINT, confidence: 0.9 },
        { signal: 'supply-5v', name: '+5V', source: MANUAL, confidence: 0.95 },
      ),
    ).toEqual({
      pin: '1',
      signal: 'supply-5v',
      name: '+5V',
      source: MANUAL,
      confidence: 0.95,
      alternatives: [{ signal: 'reserved', name: 'RSVD', source: PRINT, confidence: 0.9 }],
    });
  });

  it('that disagree about whether a pin stands there are both kept', () => {
    expect(
      afterHearing({ missing: true, name: 'KEY', source: PRINT }, { signal: 'ground', source: MANUAL }),
    ).toEqual({
      pin: '1',
      signal: 'ground',
      source: MANUAL,
      alternatives: [{ signal: 'no-connection', missing: true, name: 'KEY', source: PRINT }],
    });
  });

  it('are kept apart when the same signal belongs to another port', () => {
    const pin = afterHearing(
      { signal: 'usb-vbus', channel: 'A', source: PRINT },
      { signal: 'usb-vbus', channel: 'B', source: MANUAL },
    );
    expect(pin.alternatives).toEqual([{ signal: 'usb-vbus', channel: 'A', source: PRINT }]);
  });

  it('leave what was read standing when the newer one is a guess', () => {
    const pin = afterHearing({ signal: 'supply-5v', source: MANUAL }, { signal: 'reserved', source: GUESS });
    expect(pin.signal).toBe('supply-5v');
    expect(pin.alternatives).toEqual([{ signal: 'reserved', source: GUESS }]);
  });

  it('leave what was read standing when a guess says the same, however sure each of them is', () => {
    const read = { signal: 'ground', source: MANUAL } as const;
    const guess = { signal: 'ground', source: GUESS, confidence: 0.5 } as const;
    const port = { ...guess, belongsTo: 'reset-switch' } as const;
    expect(afterHearing(read, guess)).toEqual({ pin: '1', ...read });
    expect(afterHearing(guess, read)).toEqual({ pin: '1', ...read });
    expect(afterHearing({ ...read, confidence: 0.3 }, port)).toEqual({
      pin: '1',
      ...read,
      belongsTo: 'reset-switch',
      confidence: 0.3,
    });
    expect(afterHearing({ signal: 'ground' }, guess)).toEqual({ pin: '1', ...guess });
  });

  it('leave what was read without a word of doubt standing when a doubtful reading says the same', () => {
    const sure = { signal: 'ground', source: MANUAL } as const;
    const doubtful = { signal: 'ground', source: PRINT, confidence: 0.5 } as const;
    expect(afterHearing(sure, doubtful)).toEqual({ pin: '1', ...sure });
    expect(afterHearing(doubtful, sure)).toEqual({ pin: '1', ...sure });
  });

  it('leave a signal standing when the newer one is a word that nobody understood', () => {
    const pin = afterHearing({ signal: 'ground', source: MANUAL }, { name: 'XYZZY', source: PRINT });
    expect(pin.signal).toBe('ground');
    expect(pin.alternatives).toEqual([{ signal: 'unknown', name: 'XYZZY', source: PRINT }]);
  });

  it('let a guess say what a word means that nobody understood, and keep where the word was read', () => {
    const pin = afterHearing({ name: 'XYZZY', source: PRINT }, { signal: 'ground', source: GUESS });
    expect(pin.signal).toBe('ground');
    expect(pin.alternatives).toEqual([{ signal: 'unknown', name: 'XYZZY', source: PRINT }]);
  });

  it('never lose one that had no source', () => {
    const pin = afterHearing({ signal: 'ground' }, { signal: 'supply-5v', source: MANUAL });
    expect(pin.alternatives).toEqual([
      { signal: 'ground', source: { kind: 'guessed', where: 'no source was given' } },
    ]);
  });

  it('are kept once, however often they are told', () => {
    const two = [
      { signal: 'ground', source: PRINT },
      { signal: 'supply-5v', source: MANUAL },
    ] as const;
    expect(afterHearing(...two, ...two, ...two).alternatives).toEqual([
      { signal: 'ground', source: PRINT },
      { signal: 'supply-5v', source: MANUAL },
    ]);
  });

  it('leave measured values and notes where they are', () => {
    const values = [{ parameter: 'led-feed-ohms' as const, value: 330 }];
    const pin = afterHearing(
      { signal: 'power-led-feed', values, notes: 'bent', source: MANUAL },
      { signal: 'drive-led-feed', source: PRINT },
    );
    expect(pin).toMatchObject({ signal: 'drive-led-feed', values, notes: 'bent' });
  });

  it('leave the notes of both, whether they say the same or not', () => {
    const [mine, theirs] = [{ notes: 'bent' }, { notes: 'under the label' }];
    for (const [known, told] of [
      [{ signal: 'ground' }, { signal: 'ground' }],
      [
        { signal: 'ground', confidence: 0.9 },
        { signal: 'ground', confidence: 0.5 },
      ],
      [{ signal: 'ground' }, { signal: 'supply-5v' }],
      [{}, { signal: 'ground' }],
      [{ signal: 'ground' }, {}],
    ] as const)
      expect(afterHearing({ ...known, ...mine }, { ...told, ...theirs }).notes).toBe('bent\nunder the label');
    expect(afterHearing({ signal: 'ground', ...mine }, { signal: 'ground', ...mine }).notes).toBe('bent');
    const long = { notes: 'a'.repeat(LIMITS.noteLength) };
    expect(toldNo(done(blank, fill({ pin: '1', ...long })), fill({ pin: '1', ...theirs }))).toMatch(
      /letters/,
    );
  });

  it('are refused when there is no room for one more statement', () => {
    const said = Array.from({ length: LIMITS.alternativesPerPin + 1 }, (_, at) => ({
      pin: '1',
      signal: 'ground' as const,
      channel: String(at),
      source: PRINT,
    }));
    const full = done(blank, ...said.map((pin) => fill(pin)));
    expect(toldNo(full, fill({ pin: '1', signal: 'supply-5v', source: MANUAL }))).toBe(
      `Of one pin a sheet can hold no more than 8${NBSP}statements.`,
    );
  });
});
