import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { LIMITS } from '../../../boards/document/limits';
import type { Tray } from '../../../boards/document/tray';
import type { TrayPath, TrayPlace } from '../../../boards/document/tray-places';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { bench } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

const NBSP = '\u00a0';
const AREA = { xMm: 10, yMm: 10, widthMm: 40, heightMm: 20 };

const bare = bench([], []);
const begun = done(bare, { name: 'begin-tray', args: { widthMm: 400, heightMm: 420 } });

const point = (id: string, name?: string): TrayPlace => ({
  what: 'point',
  place: { id, kind: 'tie', xMm: 50, yMm: 60, ...(name !== undefined && { name }) },
});
const opening: TrayPlace = { what: 'opening', place: { id: 'lower', ...AREA, edge: 'grommet' } };
const standoff: TrayPlace = { what: 'standoff', place: { id: 'at-c', name: 'C', xMm: 30, yMm: 179 } };
const fan: TrayPlace = { what: 'fan', place: { id: 'behind', name: 'Rear fan', wall: 'rear' } };
const supply: TrayPlace = { what: 'supply', place: { id: 'supply', ...AREA } };

const path = (id: string, from: string, to: string, side: TrayPath['side'] = 'back'): TrayPath => ({
  id,
  from,
  to,
  lengthMm: 120,
  side,
});

const add = (places: TrayPlace[], paths: TrayPath[] = []): Command => ({
  name: 'add-to-tray',
  args: { places, paths },
});
const remove = (places: string[], paths: string[] = []): Command => ({
  name: 'remove-from-tray',
  args: { places, paths },
});
const move = (...to: readonly [place: string, xMm: number, yMm: number][]): Command => ({
  name: 'move-in-tray',
  args: { to: to.map(([place, xMm, yMm]) => ({ place, xMm, yMm })) },
});
const change = (args: TrayPlace): Command => ({ name: 'change-tray-place', args });
const changePaths = (...paths: TrayPath[]): Command => ({ name: 'change-tray-paths', args: { paths } });

/** A supply, two points behind the tray, an opening, and a point on the front: a way from end to end. */
const drawn = done(
  begun,
  add(
    [supply, point('low', 'Low tie'), point('high'), opening, point('main'), standoff, fan],
    [
      path('up', 'supply', 'low'),
      path('along', 'low', 'high'),
      path('over', 'high', 'lower'),
      path('in', 'lower', 'main', 'front'),
    ],
  ),
);

function trayOf(build: Build): Tray {
  const { tray } = build.case;
  if (tray === undefined) throw new Error('No tray');
  return tray;
}

function pathIds(build: Build): readonly string[] {
  return trayOf(build).paths.map(({ id }) => id);
}

describe('a tray', () => {
  it('begins as a bare sheet of metal, once', () => {
    expect(trayOf(begun)).toMatchObject({ widthMm: 400, heightMm: 420, points: [], openings: [], paths: [] });
    expect(toldNo(begun, { name: 'begin-tray', args: { widthMm: 1, heightMm: 1 } })).toBe(
      'This case has a tray already. Change it, or remove it first.',
    );
  });

  it('is replaced by another as a whole, which has to be sound', () => {
    expect(done(bare, { name: 'replace-tray', args: { tray: trayOf(drawn) } }).case).toEqual(drawn.case);
    const torn = { ...trayOf(begun), paths: [path('up', 'supply', 'low')] };
    expect(toldNo(drawn, { name: 'replace-tray', args: { tray: torn } })).toContain(
      '“case.tray.paths[0].from” cannot be kept',
    );
  });

  it('is removed with everything in it, and then nothing can be drawn', () => {
    const without = done(drawn, { name: 'remove-tray', args: {} });
    expect(without).toEqual(bare);
    for (const command of [add([supply]), move(['low', 1, 1]), { name: 'remove-tray', args: {} } as const])
      expect(toldNo(without, command)).toBe('This case has no tray yet. Begin one first.');
  });

  it('is of a size, with room behind it where that was measured; places keep where they are', () => {
    const size = (behindMm: number | null, widthMm = 400): Command => ({
      name: 'size-tray',
      args: { widthMm, heightMm: 420, behindMm },
    });
    const roomy = done(drawn, size(22));
    expect(roomy.case.tray).toEqual({ ...trayOf(drawn), behindMm: 22 });
    expect(labelOf(drawn, size(22))).toBe('Say how much room is behind the tray');
    expect(done(roomy, size(null))).toEqual(drawn);
    const narrow = done(drawn, size(null, 20));
    expect(trayOf(narrow)).toEqual({ ...trayOf(drawn), widthMm: 20 });
    expect(labelOf(drawn, size(null, 20))).toBe('Set the size of the tray');
    expect(toldNo(drawn, size(0))).toContain('“behindMm” cannot be kept');
  });

  it('has a place for the board, which is moved, turned and forgotten', () => {
    const lay = (board: Tray['board'] | null): Command => ({
      name: 'lay-board',
      args: { board: board ?? null },
    });
    const laid = done(drawn, lay({ xMm: 20, yMm: 15, rear: 'left' }));
    expect(trayOf(laid).board).toEqual({ xMm: 20, yMm: 15, rear: 'left' });
    expect(done(laid, lay(null))).toEqual(drawn);
    const labels = [lay({ xMm: 9, yMm: 15, rear: 'left' }), lay({ xMm: 9, yMm: 15, rear: 'top' }), lay(null)];
    expect(labels.map((command) => labelOf(laid, command))).toEqual([
      'Move the place of the board',
      'Turn the place of the board',
      'Forget where the board goes',
    ]);
    expect(labelOf(drawn, labels[0] ?? lay(null))).toBe('Say where the board goes');
  });
});

describe('adding to a tray', () => {
  it('puts each thing with those of its kind, and paths to things that are new', () => {
    expect(trayOf(drawn)).toMatchObject({
      points: [{ id: 'low' }, { id: 'high' }, { id: 'main' }],
      openings: [{ id: 'lower' }],
      standoffs: [{ id: 'at-c' }],
      fans: [{ id: 'behind' }],
      supply: { id: 'supply' },
      paths: [{ id: 'up' }, { id: 'along' }, { id: 'over' }, { id: 'in' }],
    });
  });

  it('is called by what is added', () => {
    const labels = [
      add([fan]),
      add([opening]),
      add([point('a'), point('b'), standoff]),
      add([], [path('short', 'low', 'main')]),
      add([], [path('a', 'low', 'high'), path('b', 'low', 'high')]),
    ];
    expect(labels.map((command) => labelOf(drawn, command))).toEqual([
      'Add Rear fan',
      `Add 1${NBSP}opening`,
      `Add 2${NBSP}points and 1${NBSP}standoff`,
      `Add the path from Low tie to tie point${NBSP}3`,
      `Add 2${NBSP}paths`,
    ]);
  });

  it('refuses an id that is taken, be it by a thing of another kind or by one in the same step', () => {
    expect(toldNo(drawn, add([point('lower')]))).toBe('There is a place “lower” already. Choose another id.');
    expect(toldNo(drawn, add([point('new'), point('new')]))).toBe(
      'There is a place “new” already. Choose another id.',
    );
    expect(toldNo(drawn, add([], [path('up', 'low', 'high')]))).toBe(
      'There is a path “up” already. Choose another id.',
    );
  });

  it('refuses a second supply', () => {
    expect(toldNo(drawn, add([{ what: 'supply', place: { id: 'second', ...AREA } }]))).toBe(
      'The tray has a place for the supply already. Move that one.',
    );
  });

  it('refuses a path that leads nowhere a cable goes', () => {
    expect(toldNo(drawn, add([], [path('new', 'low', 'top')]))).toBe('There is no place “top” in the tray.');
    expect(toldNo(drawn, add([], [path('new', 'low', 'at-c')]))).toBe(
      'No path leads to C. Lead it to a point, an opening, a bay or the supply.',
    );
    expect(toldNo(drawn, add([], [path('new', 'low', 'low')]))).toBe(
      'A path from Low tie back to itself leads nowhere. Choose another end.',
    );
  });

  it('refuses a path that would go through the metal at a point', () => {
    expect(toldNo(drawn, add([], [path('new', 'low', 'main', 'front')]))).toBe(
      'Paths on the back of the tray meet at Low tie. Only through an opening does a path come to the other side: put one in between, or change the side of all of them together.',
    );
    expect(
      toldNo(begun, add([point('a'), point('b')], [path('x', 'a', 'b'), path('y', 'b', 'a', 'front')])),
    ).toContain('meet at “a”');
    expect(pathIds(done(drawn, add([], [path('new', 'supply', 'main', 'front')])))).toContain('new');
  });

  it.each([
    ['trayPoints', (at: number) => point(`p-${at}`), 'tray points'],
    [
      'trayOpenings',
      (at: number): TrayPlace => ({ ...opening, place: { ...opening.place, id: `o-${at}` } }) as TrayPlace,
      'openings',
    ],
    ['trayBays', (at: number): TrayPlace => ({ what: 'bay', place: { id: `b-${at}`, ...AREA } }), 'bays'],
    [
      'trayStandoffs',
      (at: number): TrayPlace => ({ what: 'standoff', place: { id: `s-${at}`, xMm: 1, yMm: 1 } }),
      'standoff places',
    ],
    [
      'trayFans',
      (at: number): TrayPlace => ({ what: 'fan', place: { id: `f-${at}`, wall: 'top' } }),
      'fan places',
    ],
  ] as const)('stops at %s', (limit, make, what) => {
    const places = Array.from({ length: LIMITS[limit] }, (_, at) => make(at));
    const full = done(begun, add(places));
    expect(toldNo(full, add([make(LIMITS[limit])]))).toBe(
      `A tray can hold no more than ${LIMITS[limit].toLocaleString('en')}${NBSP}${what}.`,
    );
  });

  it('stops at trayPaths', () => {
    const paths = Array.from({ length: LIMITS.trayPaths }, (_, at) => path(`path-${at}`, 'a', 'b'));
    const full = done(begun, add([point('a'), point('b')], paths));
    expect(toldNo(full, add([], [path('one-more', 'a', 'b')]))).toBe(
      `A tray can hold no more than 10,000${NBSP}paths.`,
    );
  });
});

describe('moving in a tray', () => {
  it('takes any number of places in one step, and leaves the measured paths as they are', () => {
    const both = move(['low', 70, 80], ['lower', 90, 100], ['supply', 0, 300], ['at-c', 31, 180]);
    const moved = trayOf(done(drawn, both));
    expect(labelOf(drawn, both)).toBe(`Move 4${NBSP}places`);
    expect(moved).toMatchObject({
      points: [
        { id: 'low', xMm: 70, yMm: 80 },
        { xMm: 50, yMm: 60 },
        { xMm: 50, yMm: 60 },
      ],
      openings: [{ xMm: 90, yMm: 100, widthMm: 40 }],
      supply: { xMm: 0, yMm: 300 },
      standoffs: [{ xMm: 31, yMm: 180 }],
    });
    expect(moved.paths).toEqual(trayOf(drawn).paths);
    expect(labelOf(drawn, move(['low', 70, 80]))).toBe('Move Low tie');
  });

  it('refuses a fan, a place that is not there and one named twice', () => {
    expect(toldNo(drawn, move(['behind', 1, 1]))).toBe(
      'Rear fan is in a wall of the case, and not on the tray. Choose another wall for it.',
    );
    expect(toldNo(drawn, move(['low', 1, 1], ['top', 1, 1]))).toBe('There is no place “top” in the tray.');
    expect(toldNo(drawn, move(['low', 1, 1], ['low', 2, 2]))).toBe(
      'The place “low” is named twice. Say once what becomes of it.',
    );
  });
});

describe('changing a place of a tray', () => {
  it('writes what is known of it, and is called by what changes', () => {
    const named = change(point('high', 'High tie'));
    expect(trayOf(done(drawn, named)).points.map(({ name }) => name)).toEqual([
      'Low tie',
      'High tie',
      undefined,
    ]);
    expect(labelOf(drawn, named)).toBe(`Rename tie point${NBSP}2`);
    const turnedFan = change({ ...fan, place: { ...fan.place, wall: 'top', strutsFace: 'outward' } });
    expect(trayOf(done(drawn, turnedFan)).fans).toEqual([
      { id: 'behind', name: 'Rear fan', wall: 'top', strutsFace: 'outward' },
    ]);
    expect(labelOf(drawn, turnedFan)).toBe('Change Rear fan');
    expect(labelOf(drawn, change({ ...standoff, place: { ...standoff.place, xMm: 33 } }))).toBe('Move C');
  });

  it('refuses a place that is not there, and to make something else of one', () => {
    expect(toldNo(drawn, change(point('top')))).toBe('There is no place “top” in the tray.');
    expect(toldNo(drawn, change({ what: 'bay', place: { id: 'low', ...AREA } }))).toBe(
      'Low tie is something else already. Remove it, and add the other.',
    );
  });
});

describe('noting what is in places of standoffs', () => {
  const note = (...seen: readonly [standoff: string, seen: 'set' | 'empty' | null][]): Command => ({
    name: 'note-standoffs',
    args: { seen: seen.map(([id, look]) => ({ standoff: id, seen: look })) },
  });
  const two = done(drawn, add([{ what: 'standoff', place: { id: 'fixed', xMm: 1, yMm: 1, fixed: true } }]));

  it('writes it for any number of places in one step, and forgets it again', () => {
    const seen = done(two, note(['at-c', 'empty'], ['fixed', 'set']));
    expect(trayOf(seen).standoffs?.map((each) => each.seen)).toEqual(['empty', 'set']);
    expect(labelOf(two, note(['at-c', 'empty']))).toBe('Note what is in C');
    expect(labelOf(two, note(['at-c', 'empty'], ['fixed', 'set']))).toBe(
      `Note what is in 2${NBSP}standoff places`,
    );
    expect(done(seen, note(['at-c', null], ['fixed', null]))).toEqual(two);
  });

  it('refuses a place that is not there, one named twice, and an empty one that cannot be', () => {
    expect(toldNo(two, note(['low', 'set']))).toBe('There is no place “low” in the tray.');
    expect(toldNo(two, note(['at-c', 'set'], ['at-c', 'empty']))).toContain('is named twice');
    expect(toldNo(two, note(['fixed', 'empty']))).toBe(
      `Standoff${NBSP}2 is pressed into the metal, so it cannot be empty. Say first that it can be taken out, if it can.`,
    );
  });
});

describe('changing paths of a tray', () => {
  it('says another length, other ends, another side', () => {
    const longer = changePaths({ ...path('up', 'supply', 'low'), lengthMm: 150.5 });
    expect(trayOf(done(drawn, longer)).paths[0]?.lengthMm).toBe(150.5);
    expect(labelOf(drawn, longer)).toBe('Change the length of the path from supply unit to Low tie');
    const elsewhere = changePaths(path('up', 'supply', 'high'));
    expect(trayOf(done(drawn, elsewhere)).paths[0]?.to).toBe('high');
    expect(labelOf(drawn, elsewhere)).toBe('Change the ends of the path from supply unit to Low tie');
    const alone = done(begun, add([supply, opening], [path('up', 'supply', 'lower')]));
    const front = changePaths(path('up', 'supply', 'lower', 'front'));
    expect(trayOf(done(alone, front)).paths[0]?.side).toBe('front');
    expect(labelOf(alone, front)).toBe(`Put the path from supply unit to opening${NBSP}1 on the front`);
  });

  it('lets paths that meet at points change sides together only', () => {
    const front = (id: string, from: string, to: string) => path(id, from, to, 'front');
    expect(toldNo(drawn, changePaths(front('along', 'low', 'high')))).toContain('meet at Low tie');
    const all = [front('up', 'supply', 'low'), front('along', 'low', 'high'), front('over', 'high', 'lower')];
    expect(labelOf(drawn, changePaths(...all))).toBe(`Change 3${NBSP}paths`);
    expect(trayOf(done(drawn, changePaths(...all))).paths.map(({ side }) => side)).toEqual(
      Array(4).fill('front'),
    );
  });

  it('refuses a path that is not there, one named twice, and one that cannot be', () => {
    expect(toldNo(drawn, changePaths(path('down', 'low', 'high')))).toBe(
      'There is no path “down” in the tray.',
    );
    const up = path('up', 'supply', 'low');
    expect(toldNo(drawn, changePaths(up, up))).toBe(
      'The path “up” is named twice. Say once what becomes of it.',
    );
    expect(toldNo(drawn, changePaths(path('up', 'supply', 'supply')))).toContain('back to itself');
  });
});

describe('removing from a tray', () => {
  it('takes the paths along that lead to a place, and says how many', () => {
    expect(pathIds(done(drawn, remove(['low'])))).toEqual(['over', 'in']);
    expect(labelOf(drawn, remove(['low']))).toBe(`Remove Low tie with 2${NBSP}paths`);
    expect(labelOf(drawn, remove(['supply']))).toBe(`Remove supply unit with 1${NBSP}path`);
    expect(labelOf(drawn, remove(['at-c']))).toBe('Remove C');
  });

  it('takes places and paths in one step', () => {
    const command = remove(['low', 'high', 'behind'], ['in']);
    const left = trayOf(done(drawn, command));
    expect(left.paths).toEqual([]);
    expect(left).not.toHaveProperty('fans');
    expect(labelOf(drawn, command)).toBe(`Remove 2${NBSP}points and 1${NBSP}fan with 4${NBSP}paths`);
    expect(labelOf(drawn, remove([], ['in']))).toBe(
      `Remove the path from opening${NBSP}1 to tie point${NBSP}3`,
    );
    expect(labelOf(drawn, remove([], ['in', 'up']))).toBe(`Remove 2${NBSP}paths`);
  });

  it('leaves a bare tray when everything goes', () => {
    const everything = remove(['supply', 'low', 'high', 'lower', 'main', 'at-c', 'behind']);
    expect(done(drawn, everything)).toEqual(begun);
  });

  it('refuses what is not there', () => {
    expect(toldNo(drawn, remove(['top']))).toBe('There is no place “top” in the tray.');
    expect(toldNo(drawn, remove([], ['up', 'down']))).toBe('There is no path “down” in the tray.');
  });
});
