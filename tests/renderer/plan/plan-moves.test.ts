import { describe, expect, test } from 'vitest';
import { connectorOf } from '../../../boards/document/lookup';
import {
  cancel,
  copy,
  drop,
  duplicate,
  nudge,
  openPins,
  paste,
  remove,
  turn,
  walk,
} from '../../../renderer/areas/document/plan/plan-moves';
import { bench, type TestBench } from '../stand-in';

const NBSP = '\u00a0';

function onPlan(connector?: string): TestBench {
  const b = bench();
  b.session.getState().goTo('document');
  if (connector !== undefined) b.session.getState().select({ kind: 'connector', connector });
  b.session.getState().showPage('plan');
  return b;
}

function placeOf(b: TestBench, id: string) {
  return connectorOf(b.build().board, id)?.place;
}

function steps(b: TestBench): readonly string[] {
  return b.editor.getState().open?.history.past.map(({ label }) => label) ?? [];
}

describe('a connector moved by keys', () => {
  test('is a preview while the key is held, and one step for undo when it is let go', () => {
    const b = onPlan('panel');
    const before = b.build();
    for (let press = 0; press < 5; press++) nudge(b, 0.5, 0);
    expect(b.build()).toBe(before);
    expect(b.session.getState().moving).toEqual({
      connector: 'panel',
      place: { xMm: 216.5, yMm: 234, turn: 0 },
    });
    drop(b);
    expect(b.session.getState().moving).toBeNull();
    expect(placeOf(b, 'panel')).toEqual({ xMm: 216.5, yMm: 234, turn: 0 });
    expect(steps(b)).toEqual(['Place PANEL']);
    // Pin 1 is at the bottom left: one row of 2.54 mm below the first cell.
    expect(b.said()).toBe(
      `Place PANEL: 216.5${NBSP}mm from the left, 236.54${NBSP}mm from the top, not turned.`,
    );
    b.editor.getState().undo();
    expect(b.build()).toBe(before);
  });

  test('taken back by Escape, or moved back to where it was, leaves no step', () => {
    const b = onPlan('panel');
    nudge(b, 5, 0);
    cancel(b);
    drop(b);
    nudge(b, 5, 0);
    nudge(b, -5, 0);
    drop(b);
    expect(steps(b)).toEqual([]);
  });

  test('over another one or off the board is put there all the same, and told', () => {
    const b = onPlan('panel');
    nudge(b, -20, 2.5);
    drop(b);
    expect(b.said()).toContain('PANEL and SPKR stand in one place. Measure where each is.');
    nudge(b, 0, 300);
    drop(b);
    expect(b.said()).toContain('PANEL lies outside the board. Drag it onto the board, or set its place.');
    for (let press = 0; press < 500; press++) nudge(b, 5, 0);
    drop(b);
    expect(placeOf(b, 'panel')?.xMm).toBe(1_000);
  });

  test('nothing chosen, nothing moves', () => {
    const b = onPlan();
    nudge(b, 5, 0);
    turn(b, 90);
    remove(b);
    duplicate(b);
    copy(b);
    openPins(b);
    expect(b.session.getState().moving).toBeNull();
    expect(steps(b)).toEqual([]);
    expect(b.session.getState().page).toBe('plan');
  });
});

describe('the chosen connector', () => {
  test('turns about its middle, which is a step of its own', () => {
    const b = onPlan('panel');
    turn(b, 90);
    turn(b, 270);
    expect(steps(b)).toEqual(['Turn PANEL', 'Turn PANEL']);
    expect(placeOf(b, 'panel')).toEqual({ xMm: 214, yMm: 234, turn: 0 });
  });

  test('is doubled with the next print, in a free place, and the second one is chosen', () => {
    const b = onPlan('usb-1');
    const pins = connectorOf(b.build().board, 'usb-1')?.pins;
    duplicate(b);
    const { selection } = b.session.getState();
    const id = selection.kind === 'connector' ? selection.connector : '';
    const second = connectorOf(b.build().board, id);
    expect(second).toMatchObject({ print: 'USB_3', pins });
    expect(steps(b)).toEqual(['Add USB_3']);
  });

  test('is copied, and pasted on a board that is opened later', () => {
    const b = onPlan('usb-1');
    paste(b);
    expect(b.said()).toBe('Nothing is copied yet. Choose a connector and copy it first.');
    copy(b);
    const other = { ...b.build(), board: { ...b.build().board, connectors: [] }, seats: [] };
    b.editor
      .getState()
      .load(other, { handle: null, name: 'x', folder: null, stamp: null, readOnly: false }, other);
    paste(b);
    expect(b.build().board.connectors).toMatchObject([{ id: 'usb-1', print: 'USB_1', place: { turn: 0 } }]);
  });

  test('is removed with what sits on it, and comes back with undo', () => {
    const b = onPlan('panel');
    const seated = b.build().seats.length;
    remove(b);
    expect(connectorOf(b.build().board, 'panel')).toBeUndefined();
    expect(b.build().seats.length).toBeLessThan(seated);
    b.editor.getState().undo();
    expect(b.build().seats.length).toBe(seated);
  });
});

test('Tab goes through all connectors in the order of the sheet, and on past the last', () => {
  const b = onPlan();
  const walked: string[] = [];
  while (walk(b, 1)) {
    const { selection } = b.session.getState();
    if (selection.kind === 'connector') walked.push(selection.connector);
  }
  expect(walked).toEqual(b.build().board.connectors.map(({ id }) => id));
  expect(walk(b, -1)).toBe(true);
});
