import { describe, expect, it } from 'vitest';
import type { Turn } from '../../../boards/base/units';
import type { Seat } from '../../../boards/document/build';
import type { Grid } from '../../../boards/document/grid';
import type { Lead } from '../../../boards/document/lead';
import { placesOf } from '../../../boards/fit/places';
import { makeConnector } from '../../../boards/library/make-connector';
import { bench, lead } from '../fixtures/bench';

/** Counted as the headers are: pin 1 at the lower left, pin 2 above it. */
const BLOCK: Grid = {
  rows: 2,
  cols: 5,
  pitchMm: 2.54,
  numbering: { scheme: 'zig-zag', from: 'bottom-left' },
};

const LYING_STRAIGHT = { at: [0, 0], turn: 0 };
const TURNED_BY_HALF = { at: [1, 4], turn: 180 };

/** The places in which the whole plug lies on the connector, nothing hanging over. */
function insideOf(type: string, plug: Lead): readonly { readonly at: Seat['at']; readonly turn: Turn }[] {
  const connector = makeConnector(type, { id: 'it', print: 'IT', place: { xMm: 0, yMm: 0, turn: 0 } });
  const { rows, cols } = connector.grid;
  const size = plug.plugs[0]?.grid ?? BLOCK;
  return placesOf(bench([connector], [plug]), { lead: plug.id, plug: 'plug' })
    .filter(({ at: [row, col], turn }) => {
      const along = turn === 0 || turn === 180 ? size : { rows: size.cols, cols: size.rows };
      const top = turn === 180 || turn === 270 ? row - along.rows + 1 : row;
      const left = turn === 90 || turn === 180 ? col - along.cols + 1 : col;
      return top >= 0 && left >= 0 && top + along.rows <= rows && left + along.cols <= cols;
    })
    .map(({ at, turn }) => ({ at, turn }));
}

describe('the 2x5 headers and their keys', () => {
  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 10: no pin at position 10 of the panel.
  it('pin 10 of the panel keeps a keyed block from turning', () => {
    expect(insideOf('panel-2x5', lead('panel', BLOCK, { blocked: ['10'] }))).toEqual([LYING_STRAIGHT]);
  });

  // The key only works in a block that has it: common practice, no source.
  it('an unkeyed block goes onto the panel both ways', () => {
    expect(insideOf('panel-2x5', lead('panel', BLOCK))).toEqual([LYING_STRAIGHT, TURNED_BY_HALF]);
  });

  // Board product guides, front-panel USB 2.0 header: no pin at position 9.
  it('pin 9 of the USB header keeps a keyed block from turning', () => {
    expect(insideOf('usb2-2x5', lead('usb', BLOCK, { blocked: ['9'] }))).toEqual([LYING_STRAIGHT]);
  });

  // Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 4 and Table 6: position 8 in both.
  it.each(['hd-audio-2x5', 'ac97-audio-2x5', 'ac97-audio-2x5-early', 'ac97-audio-2x5-dual-mode'])(
    'an audio block enters %s: the shape does not tell them apart',
    (type) => {
      expect(insideOf(type, lead('audio', BLOCK, { blocked: ['8'] }))).toEqual([LYING_STRAIGHT]);
    },
  );

  // Board product guides: USB 2.0 and IEEE 1394 headers have the same outline and the same key.
  it('a USB block enters a 1394 header as if made for it: a trap', () => {
    expect(insideOf('ieee1394-2x5', lead('usb', BLOCK, { blocked: ['9'] }))).toEqual([LYING_STRAIGHT]);
  });

  // A single-board manual: the serial header misses pin 10, as the panel does, in either order of its lines.
  it.each(['serial-2x5-ribbon', 'serial-2x5-straight'])(
    'a panel block enters %s as if made for it: a trap',
    (type) => {
      expect(insideOf(type, lead('panel', BLOCK, { blocked: ['10'] }))).toEqual([LYING_STRAIGHT]);
    },
  );

  it.each([
    ['panel-2x5', '9'],
    ['usb2-2x5', '10'],
    ['hd-audio-2x5', '9'],
  ])('a block with another key does not enter %s', (type, blocked) => {
    expect(insideOf(type, lead('block', BLOCK, { blocked: [blocked] }))).toEqual([]);
  });

  // Geometry only: two rows, two columns to begin at, both ways round.
  it('an unkeyed 1x4 plug lies on a 2x5 header four ways in each row', () => {
    const row: Grid = { rows: 1, cols: 4, pitchMm: 2.54, numbering: { scheme: 'by-row', from: 'top-left' } };
    const places = insideOf('usb2-2x5', lead('usb', row));
    expect(places).toHaveLength(8);
    expect(places.filter(({ at }) => at[0] === 0)).toEqual([
      { at: [0, 0], turn: 0 },
      { at: [0, 1], turn: 0 },
      { at: [0, 3], turn: 180 },
      { at: [0, 4], turn: 180 },
    ]);
  });

  // The outer shroud of the 19-pin header has its slot on one side, and position 20 is missing.
  it('a ribbed 19-pin plug enters its header one way', () => {
    const grid: Grid = {
      rows: 2,
      cols: 10,
      pitchMm: 2,
      numbering: { scheme: 'u-shaped', from: 'bottom-left' },
    };
    const { shroud } = makeConnector('usb3-19', {
      id: 'it',
      print: 'IT',
      place: { xMm: 0, yMm: 0, turn: 0 },
    });
    const plug = lead('usb3', grid, { blocked: ['20'], ...(shroud?.guide && { rib: shroud.guide }) });
    expect(insideOf('usb3-19', plug)).toEqual([LYING_STRAIGHT]);
  });
});
