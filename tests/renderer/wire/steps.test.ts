import { describe, expect, test } from 'vitest';
import type { Build, Seat } from '../../../boards/document/build';
import {
  type Direction,
  firstCandidate,
  otherConnector,
  stepCandidate,
  turnedBy,
} from '../../../renderer/areas/wire/placing/steps';
import { seatWords } from '../../../renderer/words/seat-words';
import { POWER_SWITCH, wiredBuild } from '../stand-in';

const build = wiredBuild();
/** Hole 1 on pin 1 of the panel header, the plug lying along the row: pins 1 and 3. */
const onPins1And3: Seat = { ...POWER_SWITCH, connector: 'panel', at: [1, 0], turn: 0 };

function laid(turn: Build['view']['turn'], mirrored: boolean): Build {
  return { ...build, view: { turn, mirrored } };
}

function walk(from: Build, seat: Seat, ...directions: Direction[]): string {
  return seatWords(
    from,
    directions.reduce((at, direction) => stepCandidate(from, at, direction), seat),
  ).replaceAll('\u00a0', ' ');
}

describe('arrow keys on the panel header, counted zig-zag from the bottom left', () => {
  test('go from cell to cell as the board lies', () => {
    expect(walk(build, onPins1And3, 'right')).toBe('PANEL, pins 3 and 5');
    expect(walk(build, onPins1And3, 'up')).toBe('PANEL, pins 2 and 4');
    expect(walk(build, onPins1And3, 'right', 'up', 'left')).toBe('PANEL, pins 2 and 4');
  });

  test('go where they point when the view is turned a quarter clockwise', () => {
    expect(walk(laid(90, false), onPins1And3, 'down')).toBe('PANEL, pins 3 and 5');
    expect(walk(laid(90, false), onPins1And3, 'right')).toBe('PANEL, pins 2 and 4');
  });

  test('go where they point when the view is mirrored', () => {
    expect(walk(laid(0, true), onPins1And3, 'left')).toBe('PANEL, pins 3 and 5');
    expect(walk(laid(0, true), onPins1And3, 'up')).toBe('PANEL, pins 2 and 4');
  });

  test('go where they point when the view is mirrored and turned', () => {
    expect(walk(laid(90, true), onPins1And3, 'up')).toBe('PANEL, pins 3 and 5');
    expect(walk(laid(270, false), onPins1And3, 'up')).toBe('PANEL, pins 3 and 5');
    expect(walk(laid(180, false), onPins1And3, 'left')).toBe('PANEL, pins 3 and 5');
  });
});

test('past the last pin the plug goes on to the neighbouring connector', () => {
  const far = stepCandidate(build, stepCandidate(build, onPins1And3, 'left'), 'left');
  expect(far.connector).toBe('speaker');
});

test('with no connector that way the plug stays', () => {
  expect(stepCandidate(build, onPins1And3, 'down')).toEqual(onPins1And3);
});

test('Page Down goes through every connector of the board and round again', () => {
  const visited = new Set<string>();
  let seat = onPins1And3;
  for (const _ of build.board.connectors) {
    visited.add(seat.connector);
    seat = otherConnector(build, seat, 1);
  }
  expect(visited.size).toBe(build.board.connectors.length);
  expect(seat.connector).toBe(onPins1And3.connector);
  expect(otherConnector(build, otherConnector(build, seat, 1), -1).connector).toBe(seat.connector);
});

test('four quarter turns come round, and back undoes forward', () => {
  expect([0, 1, 2, 3].reduce<Seat['turn']>((turn) => turnedBy(turn, 1), 90)).toBe(90);
  expect(turnedBy(turnedBy(270, 1), -1)).toBe(270);
});

test('a seated plug begins where it sits, one from the shelf where it belongs', () => {
  expect(firstCandidate(build, POWER_SWITCH)).toEqual(
    build.seats.find((seat) => seat.lead === 'power-switch'),
  );
  const bare = { ...build, seats: [] };
  expect(firstCandidate(bare, POWER_SWITCH, onPins1And3)).toBe(onPins1And3);
  expect(firstCandidate({ ...bare, board: { ...bare.board, connectors: [] } }, POWER_SWITCH)).toBeNull();
});
