import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { connectorOf } from '../../../boards/document/lookup';
import type { Outline } from '../../../boards/document/outline';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { formFactorEntry } from '../../../boards/library/form-factors';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const reset = partLead('reset-sw', 'reset-switch', grid(1, 2), { a: '1', b: '2' });
const panel = posts('panel', grid(2, 5), { pins: ['drive-led-feed', 'power-led-feed', 'drive-led-sink'] });
const speaker = posts('speaker', grid(1, 4), { place: { xMm: 0, yMm: 40, turn: 0 } });
const seats = [seat('power-sw', 'panel', [1, 1]), seat('reset-sw', 'speaker', [0, 2])];
const onTheBench = bench([panel, speaker], [power, reset], seats);

describe('the edge of a board', () => {
  const microAtx = formFactorEntry('micro-atx').outline;

  it('is that of a form factor with its holes, or free, and one step each', () => {
    const published = done(onTheBench, { name: 'outline-board', args: { outline: microAtx } });
    expect(published.board.outline).toEqual(microAtx);
    expect(published.seats).toEqual(seats);
    const free = { widthMm: 226, depthMm: 185.5, holes: [{ id: 'h-1', xMm: 6.35, yMm: 10 }] };
    expect(done(published, { name: 'outline-board', args: { outline: free } }).board.outline).toEqual(free);
  });

  it('is told in the list of steps by what is changed', () => {
    const { board } = done(onTheBench, { name: 'outline-board', args: { outline: microAtx } });
    const label = (outline: Outline) =>
      labelOf({ ...onTheBench, board }, { name: 'outline-board', args: { outline } });
    const holes = microAtx.holes ?? [];
    expect(label({ ...microAtx, widthMm: 226 })).toBe('Set the size of the board');
    expect(label({ widthMm: 244, depthMm: 244, holes })).toBe('Set the form factor');
    expect(label({ ...microAtx, rear: 'left' })).toBe('Say where the rear panel is');
    expect(label({ ...microAtx, holes: holes.slice(1) })).toBe('Remove a mounting hole');
    expect(label({ ...microAtx, holes: [...holes, { id: 'own', xMm: 1, yMm: 1 }] })).toBe(
      'Add a mounting hole',
    );
    expect(label({ ...microAtx, holes: holes.map((hole) => ({ ...hole, xMm: 5 })) })).toBe(
      'Change a mounting hole',
    );
  });

  it('is refused without a size, with a hole twice, and with one hole too many', () => {
    const outline = (over: Partial<Outline>): Command => ({
      name: 'outline-board',
      args: { outline: { ...microAtx, ...over } },
    });
    expect(toldNo(onTheBench, outline({ widthMm: 0 }))).toBe(
      '“outline.widthMm” cannot be kept: it has to be a finite number above 0, at most 1,000, and is 0.',
    );
    expect(toldNo(onTheBench, outline({ depthMm: -244 }))).toBe(
      '“outline.depthMm” cannot be kept: it has to be a finite number above 0, at most 1,000, and is -244.',
    );
    const hole = { id: 'a', xMm: 5, yMm: 5 };
    expect(toldNo(onTheBench, outline({ holes: [hole, { ...hole, yMm: 50 }] }))).toBe(
      '“board.outline.holes[1].id” cannot be kept: it has to be an id that is not at board.outline.holes[0].id already, and is “a”.',
    );
    const many = Array.from({ length: 65 }, (_, at) => ({ ...hole, id: `h-${at}` }));
    expect(toldNo(onTheBench, outline({ holes: many }))).toBe(
      '“outline.holes” cannot be kept: it has to be a list of at most 64 entries, and is a list of 65.',
    );
  });

  it('has notes of its own, apart from those of the build', () => {
    const noted = done(onTheBench, { name: 'note-board', args: { notes: 'Print hardly legible.' } });
    expect(noted.board.notes).toBe('Print hardly legible.');
    expect(noted.notes).toBeUndefined();
    expect(done(noted, { name: 'note-board', args: { notes: '' } })).toEqual(onTheBench);
  });
});

describe('the connectors of a board', () => {
  it('are added and removed; what sat on one comes off', () => {
    const fan = posts('fan', grid(1, 3));
    const more = done(onTheBench, { name: 'add-connector', args: { connector: fan } });
    expect(more.board.connectors).toEqual([panel, speaker, fan]);
    const fewer = done(more, { name: 'remove-connector', args: { connector: 'panel' } });
    expect(fewer.board.connectors).toEqual([speaker, fan]);
    expect(fewer.seats).toEqual(seats.slice(1));
    expect(toldNo(fewer, { name: 'remove-connector', args: { connector: 'panel' } })).toBe(
      'There is no connector “panel” on this board.',
    );
  });

  it('go with what was chosen to go there, so that the next of its id has a free choice', () => {
    const choices: NonNullable<Build['choices']> = [
      { kind: 'header', of: 'fan', on: 'panel' },
      { kind: 'port', of: 'disk', on: 'panel' },
      // A cable that happens to have the same id is another thing.
      { kind: 'branch', of: 'disk', on: 'panel' },
      { kind: 'port', of: 'other-disk', on: 'speaker' },
    ];
    const again = done(
      { ...onTheBench, choices },
      { name: 'remove-connector', args: { connector: 'panel' } },
      { name: 'add-connector', args: { connector: panel } },
    );
    expect(again.choices).toEqual(choices.slice(2));
  });

  it('are refused when the id is taken, when they contradict themselves, or when the board is full', () => {
    const add = (connector: Connector): Command => ({ name: 'add-connector', args: { connector } });
    expect(toldNo(onTheBench, add(panel))).toBe('There is a connector “panel” already. Choose another id.');
    expect(toldNo(onTheBench, add({ ...panel, id: 'other', pins: [{ pin: '11' }] }))).toBe(
      '“board.connectors[2].pins[0].pin” cannot be kept: it has to be a label that the grid counts, and is “11”.',
    );
    const full = bench(
      Array.from({ length: 2_000 }, (_, at) => posts(`fan-${at}`, grid(1, 3))),
      [],
    );
    expect(toldNo(full, add(panel))).toBe(`A board can hold no more than 2,000${NBSP}connectors.`);
  });

  it('have a print, a title and a place', () => {
    const place = { xMm: 12.5, yMm: 7, turn: 90 } as const;
    const changed = done(
      onTheBench,
      { name: 'rename-connector', args: { connector: 'panel', print: 'JFP', title: 'front panel' } },
      { name: 'place-connector', args: { connector: 'panel', place } },
    );
    expect(connectorOf(changed.board, 'panel')).toEqual({
      ...panel,
      print: 'JFP',
      title: 'front panel',
      place,
    });
    expect(changed.seats).toEqual(seats);
    expect(labelOf(onTheBench, { name: 'remove-connector', args: { connector: 'panel' } })).toBe(
      'Remove PANEL',
    );
  });
});

describe('what is known of a pin', () => {
  it('takes the place of what was known, in the order of the count', () => {
    const changed = done(
      onTheBench,
      { name: 'change-pin', args: { connector: 'panel', pin: { pin: '10', missing: true } } },
      { name: 'change-pin', args: { connector: 'panel', pin: { pin: '5', signal: 'ground' } } },
      { name: 'change-pin', args: { connector: 'panel', pin: { pin: '2', signal: 'power-led-sink' } } },
    );
    expect(connectorOf(changed.board, 'panel')?.pins).toEqual([
      { pin: '1', signal: 'drive-led-feed' },
      { pin: '2', signal: 'power-led-sink' },
      { pin: '3', signal: 'drive-led-sink' },
      { pin: '5', signal: 'ground' },
      { pin: '10', missing: true },
    ]);
  });

  it('is refused for a pin that the connector has not', () => {
    const pin: Command = { name: 'change-pin', args: { connector: 'panel', pin: { pin: '11' } } };
    expect(toldNo(onTheBench, pin)).toBe(`PANEL has no position${NBSP}11.`);
  });
});

describe('numbering a connector another way', () => {
  it('keeps what is known with its number, and puts it in the new order', () => {
    const changed = done(onTheBench, {
      name: 'number-connector',
      args: {
        connector: 'panel',
        numbering: {
          scheme: 'free',
          labels: [
            ['3', '1', '9', null, null],
            ['2', '4', null, null, null],
          ],
        },
      },
    });
    expect(connectorOf(changed.board, 'panel')?.pins.map(({ pin }) => pin)).toEqual(['3', '1', '2']);
    expect(changed.seats).toEqual(seats);
  });

  it('is refused when what is known would belong to no pin any more', () => {
    const labels = [
      ['1', 'A2', 'A3', 'A4', 'A5'],
      ['B1', 'B2', 'B3', 'B4', 'B5'],
    ];
    expect(
      toldNo(onTheBench, {
        name: 'number-connector',
        args: { connector: 'panel', numbering: { scheme: 'free', labels } },
      }),
    ).toBe(
      `PANEL would lose what is known of pins${NBSP}2 and 3. Choose a numbering that has the same labels.`,
    );
  });

  it('is refused when free labels do not fill the grid', () => {
    expect(
      toldNo(onTheBench, {
        name: 'number-connector',
        args: { connector: 'panel', numbering: { scheme: 'free', labels: [['1', '2', '3', '4', '5']] } },
      }),
    ).toBe(
      '“board.connectors[0].grid.numbering.labels” cannot be kept: it has to be a list of 2, as the grid has rows, and is a list of 1.',
    );
  });
});

describe('putting another sheet into the build', () => {
  it('keeps plugs on a board where they still fit and takes the others off', () => {
    const { board } = bench([posts('panel', grid(2, 5), { print: 'F_PANEL' })], []);
    const changed = done(onTheBench, { name: 'replace-board', args: { board } });
    expect(changed.board).toEqual(board);
    expect(changed.seats).toEqual(seats.slice(0, 1));
    const narrow = bench([posts('panel', grid(1, 3)), speaker], []).board;
    expect(done(onTheBench, { name: 'replace-board', args: { board: narrow } }).seats).toEqual(
      seats.slice(1),
    );
  });

  it('keeps plugs of a case whose leads are there and fit', () => {
    const wide = { ...reset, plugs: reset.plugs.map((plug) => ({ ...plug, family: 'usb3' })) };
    const sheet = bench([], [power, wide]).case;
    const changed = done(onTheBench, { name: 'replace-case', args: { case: sheet } });
    expect(changed.case).toEqual(sheet);
    expect(changed.seats).toEqual(seats.slice(0, 1));
  });

  it('refuses a case with a lead that the extras have already', () => {
    const { case: sheet } = onTheBench;
    const build = { ...bench([panel], []), extras: [power] };
    expect(toldNo(build, { name: 'replace-case', args: { case: sheet } })).toBe(
      '“extras[0].id” cannot be kept: it has to be an id that is not at case.leads[0].id already, and is “power-sw”.',
    );
  });
});

describe('what a person says of a build', () => {
  it('is its name, its board, its notes and how the board lies', () => {
    const changed = done(
      onTheBench,
      { name: 'rename-build', args: { name: 'Study machine 3' } },
      { name: 'rename-board', args: { name: 'Bench board' } },
      { name: 'note-build', args: { notes: 'Reset lead is short.\n' } },
      { name: 'turn-view', args: { turn: 270, mirrored: true } },
    );
    expect(changed).toEqual({
      ...onTheBench,
      name: 'Study machine 3',
      board: { ...onTheBench.board, name: 'Bench board' },
      notes: 'Reset lead is short.\n',
      view: { turn: 270, mirrored: true },
    });
    expect(done(changed, { name: 'note-build', args: { notes: '' } })).not.toHaveProperty('notes');
  });
});
