import { describe, expect, test } from 'vitest';
import type { Tray } from '../../../boards/document/tray';
import { trayPathOf, trayPlaceOf } from '../../../boards/document/tray-places';
import { beginNew, beginPath, join, makePlace, put } from '../../../renderer/areas/route/tray/tray-additions';
import { choose } from '../../../renderer/areas/route/tray/tray-bench';
import {
  cancel,
  drop,
  grow,
  nudge,
  remove,
  turnBoard,
  walk,
  write,
} from '../../../renderer/areas/route/tray/tray-moves';
import type { TrayPart } from '../../../renderer/store/session';
import { bench } from '../stand-in';

const SMALL: Tray = {
  widthMm: 300,
  heightMm: 200,
  points: [
    { id: 'front-tie', kind: 'tie', xMm: 100, yMm: 50 },
    { id: 'back-tie', kind: 'tie', xMm: 200, yMm: 50 },
  ],
  openings: [{ id: 'hole', xMm: 140, yMm: 40, widthMm: 20, heightMm: 40, edge: 'grommet' }],
  bays: [],
  board: { xMm: 10, yMm: 10, rear: 'left' },
  fans: [{ id: 'fan', wall: 'rear' }],
  paths: [{ id: 'there', from: 'back-tie', to: 'hole', lengthMm: 60, side: 'back' }],
};

function onMap(part?: TrayPart) {
  const b = bench();
  b.run({ name: 'replace-tray', args: { tray: SMALL } });
  b.session.getState().goTo('route');
  if (part) choose(b, part);
  const tray = () => {
    const { tray: now } = b.build().case;
    if (now === undefined) throw new Error('The case has a tray');
    return now;
  };
  return { ...b, tray };
}

function steps(b: ReturnType<typeof onMap>): readonly string[] {
  return (b.editor.getState().open?.history.past ?? []).slice(1).map(({ label }) => label);
}

describe('a chosen place', () => {
  test('is moved by any number of key presses in one step', () => {
    const b = onMap({ kind: 'point', id: 'front-tie' });
    nudge(b, 1, 0);
    nudge(b, 10, -10);
    expect(b.tray()).toEqual(SMALL);
    drop(b);
    expect(trayPlaceOf(b.tray(), 'front-tie')?.place).toMatchObject({ xMm: 111, yMm: 40 });
    expect(steps(b)).toHaveLength(1);
  });

  test('stays where it was when the move is taken back', () => {
    const b = onMap({ kind: 'opening', id: 'hole' });
    nudge(b, 10, 0);
    cancel(b);
    drop(b);
    expect(b.tray()).toEqual(SMALL);
    expect(b.session.getState().selection.kind).toBe('on-tray');
  });

  test('that is an opening is made larger, and never smaller than a millimetre', () => {
    const b = onMap({ kind: 'opening', id: 'hole' });
    grow(b, 10, -1);
    drop(b);
    expect(trayPlaceOf(b.tray(), 'hole')?.place).toMatchObject({ widthMm: 30, heightMm: 39 });
    grow(b, -200, 0);
    drop(b);
    expect(trayPlaceOf(b.tray(), 'hole')?.place).toMatchObject({ widthMm: 1, heightMm: 39 });
  });

  test('that is a fan goes to the wall where the arrow points', () => {
    const b = onMap({ kind: 'fan', id: 'fan' });
    nudge(b, 0, -1);
    drop(b);
    expect(b.tray().fans).toEqual([{ id: 'fan', wall: 'top' }]);
    // The rear is on the left, so right is the front of the case.
    nudge(b, 1, 0);
    drop(b);
    expect(b.tray().fans).toEqual([{ id: 'fan', wall: 'front' }]);
  });

  test('takes the paths that lead to it along when it is removed, and undo brings all back', () => {
    const b = onMap({ kind: 'opening', id: 'hole' });
    remove(b);
    expect(b.tray().openings).toEqual([]);
    expect(b.tray().paths).toEqual([]);
    b.editor.getState().undo();
    expect(b.tray()).toEqual(SMALL);
  });

  test('nothing chosen, nothing moves', () => {
    const b = onMap();
    nudge(b, 10, 0);
    grow(b, 10, 0);
    remove(b);
    turnBoard(b);
    put(b);
    expect(b.session.getState().trayDraft).toBeNull();
    expect(steps(b)).toEqual([]);
  });
});

describe('a new place', () => {
  test('comes beside the chosen one, is moved, put down by Enter and chosen', () => {
    const b = onMap({ kind: 'point', id: 'front-tie' });
    beginNew(b, 'opening');
    nudge(b, 10, 0);
    expect(b.tray()).toEqual(SMALL);
    put(b);
    const [, opening] = b.tray().openings;
    // 40 mm by 24 mm about the point 20 mm beside the tie at 100, 50, and 10 mm on.
    expect(opening).toMatchObject({ xMm: 110, yMm: 58, widthMm: 40, heightMm: 24, edge: 'grommet' });
    expect(b.session.getState().selection).toEqual({
      kind: 'on-tray',
      part: { kind: 'opening', id: opening?.id },
    });
    expect(steps(b)).toHaveLength(1);
  });

  test('is dropped by Escape', () => {
    const b = onMap();
    beginNew(b, 'tie');
    cancel(b);
    put(b);
    expect(b.tray()).toEqual(SMALL);
  });

  test('that would be a second supply unit is refused in words', () => {
    const b = onMap();
    beginNew(b, 'supply');
    put(b);
    expect(b.tray().supply).toMatchObject({ widthMm: 150, heightMm: 86 });
    expect(makePlace(b, 'supply', { x: 0, y: 0 }, null)).toBeNull();
    expect(b.said()).toBe('The tray has a place for the supply unit already. Move that one.');
  });

  test('has an id of its own, however many there are', () => {
    const b = onMap();
    for (let n = 0; n < 4; n++) {
      beginNew(b, 'fan');
      put(b);
    }
    const ids = b.tray().fans?.map(({ id }) => id) ?? [];
    expect(ids).toHaveLength(5);
    expect(new Set(ids).size).toBe(5);
  });
});

describe('a path', () => {
  test('is as long as the straight way at first, on the side of the point at its end, and chosen', () => {
    const b = onMap();
    join(b, 'hole', 'back-tie');
    const path = b.tray().paths.at(-1);
    expect(path).toMatchObject({ from: 'hole', to: 'back-tie', side: 'back' });
    // From the middle of the opening at 150, 60 to the tie at 200, 50: √(50² + 10²) = 51.0 mm.
    expect(path?.lengthMm).toBe(51);
    expect(b.session.getState().selection).toMatchObject({ part: { kind: 'path', id: path?.id } });
    expect(b.said()).toContain('Measure it');
  });

  test('between points that no path meets yet lies on the side that is looked at', () => {
    const b = onMap();
    b.session.getState().lookFrom('back');
    join(b, 'front-tie', 'hole');
    expect(b.tray().paths.at(-1)?.side).toBe('back');
  });

  test('from one side of the metal to the other without an opening is refused with what would help', () => {
    const b = onMap();
    join(b, 'front-tie', 'hole');
    join(b, 'front-tie', 'back-tie');
    expect(b.tray().paths).toHaveLength(2);
    expect(b.said()).toContain('Only through an opening');
  });

  test('is drawn by keys: begun at the chosen place, ended at the next one', () => {
    const b = onMap({ kind: 'point', id: 'front-tie' });
    beginPath(b);
    // Only places that paths lead to are walked to: the fan and the board are passed over.
    expect(walk(b, 1)).toBe(true);
    expect(walk(b, 1)).toBe(true);
    expect(b.session.getState().selection).toMatchObject({ part: { kind: 'opening', id: 'hole' } });
    put(b);
    expect(b.tray().paths.at(-1)).toMatchObject({ from: 'front-tie', to: 'hole', side: 'front' });
  });

  test('needs a place to begin at', () => {
    const b = onMap({ kind: 'fan', id: 'fan' });
    beginPath(b);
    expect(b.session.getState().trayDraft).toBeNull();
    expect(b.said()).toContain('Choose the place where the path begins');
  });

  test('is removed alone', () => {
    const b = onMap({ kind: 'path', id: 'there' });
    remove(b);
    expect(trayPathOf(b.tray(), 'there')).toBeUndefined();
    expect(b.tray().points).toEqual(SMALL.points);
  });
});

describe('the board', () => {
  test('turns about its corner, moves, and is forgotten', () => {
    const b = onMap({ kind: 'board', id: 'board' });
    turnBoard(b);
    expect(b.tray().board).toEqual({ xMm: 10, yMm: 10, rear: 'top' });
    nudge(b, 10, 0);
    drop(b);
    expect(b.tray().board).toEqual({ xMm: 20, yMm: 10, rear: 'top' });
    remove(b);
    expect(b.tray().board).toBeUndefined();
    expect(steps(b)).toHaveLength(3);
  });
});

test('Tab goes through places, paths and the board, and on past the last', () => {
  const b = onMap();
  const walked: string[] = [];
  while (walk(b, 1)) {
    const { selection } = b.session.getState();
    if (selection.kind === 'on-tray') walked.push(selection.part.id);
  }
  expect(walked).toEqual(['front-tie', 'back-tie', 'hole', 'fan', 'there', 'board']);
  expect(walk(b, -1)).toBe(true);
});

test('What is written of a place that is gone is refused, and nothing changes', () => {
  const b = onMap();
  const gone = { what: 'point', place: { id: 'gone', kind: 'tie', xMm: 0, yMm: 0 } } as const;
  expect(write(b, gone)).toBe(false);
  expect(b.tray()).toEqual(SMALL);
});
