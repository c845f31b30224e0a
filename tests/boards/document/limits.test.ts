import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import type { CaseSheet } from '../../../boards/document/case-sheet';
import type { Connector } from '../../../boards/document/connector';
import type { Lead, Plug } from '../../../boards/document/lead';
import { LIMITS } from '../../../boards/document/limits';
import { parseDocument } from '../../../boards/document/parse';
import type { Photo } from '../../../boards/document/photo';
import type { Tray } from '../../../boards/document/tray';
import type { LogEntry } from '../../../boards/document/trouble';
import type { Unit } from '../../../boards/document/unit';
import { bench, grid, partLead, posts } from '../fixtures/bench';

const TINY = posts('one', grid(1, 1));
const SWITCH = partLead('switch', 'power-switch', grid(1, 2), { a: '1', b: '2' });

const SINGLE: Plug = { id: 'single', print: '', family: 'pin-header', grid: grid(1, 1) };

function board(connectors: readonly Connector[], over: Partial<BoardSheet> = {}): BoardSheet {
  return { ...bench(connectors, []).board, ...over };
}

function caseWith(leads: readonly Lead[]): CaseSheet {
  return bench([], leads).case;
}

function many<T>(length: number, make: (at: number) => T): T[] {
  return Array.from({ length }, (_, at) => make(at));
}

function photo(over: Partial<Photo>): Photo {
  return { id: 'photo', type: 'image/png', widthPx: 100, heightPx: 100, data: 'AAAA', points: [], ...over };
}

/** At least so many letters of base64, which come in fours. */
function letters(size: number): string {
  return 'A'.repeat(Math.ceil(size / 4) * 4);
}

/** Grids that have so many cells together: as many of 64 by 64 as fit, then single ones. */
function gridsOf(cells: number): readonly ReturnType<typeof grid>[] {
  const full = LIMITS.gridSide * LIMITS.gridSide;
  const rest = cells % full;
  const rows = Math.floor(rest / LIMITS.gridSide);
  return [
    ...many(Math.floor(cells / full), () => grid(LIMITS.gridSide, LIMITS.gridSide)),
    ...(rows > 0 ? [grid(rows, LIMITS.gridSide)] : []),
    ...many(rest % LIMITS.gridSide, () => grid(1, 1)),
  ];
}

function leadOf(over: Partial<Lead>): CaseSheet {
  return caseWith([{ ...SWITCH, ...over }]);
}

function seated(count: number): unknown {
  const leads = many(Math.ceil(count / LIMITS.plugsPerLead), (at) => ({
    ...SWITCH,
    id: `lead-${at}`,
    wires: [],
    plugs: many(LIMITS.plugsPerLead, (n) => ({ ...SINGLE, id: `plug-${n}` })),
  }));
  const refs = leads.flatMap((lead) => lead.plugs.map((each) => ({ lead: lead.id, plug: each.id })));
  const seats = refs.slice(0, count).map((ref) => ({ ...ref, connector: 'one', at: [0, 0], turn: 0 }));
  return { ...bench([TINY], []), case: { ...caseWith([]), leads }, seats };
}

function troubled(log: readonly LogEntry[]): unknown {
  return { ...bench([TINY], []), trouble: { log } };
}

const AREA = { xMm: 10, yMm: 10, widthMm: 40, heightMm: 20 };

function unit(id: string): Unit {
  return { id, name: id, kind: 'drive', connectors: [] };
}

function trayPoint(id: string): Tray['points'][number] {
  return { id, kind: 'tie', xMm: 1, yMm: 1 };
}

function trayOf(over: Partial<Tray>): CaseSheet {
  const empty = { points: [], openings: [], bays: [], paths: [] };
  return { ...caseWith([]), tray: { widthMm: 400, heightMm: 400, ...empty, ...over } };
}

function wired(count: number): CaseSheet {
  const wire = SWITCH.wires[0] ?? { from: 'part.a', to: 'plug.1', colour: 'black' };
  const leads = Math.ceil(count / LIMITS.wiresPerLead);
  return caseWith(
    many(leads, (at) => ({
      ...SWITCH,
      id: `lead-${at}`,
      wires: many(Math.min(LIMITS.wiresPerLead, count - at * LIMITS.wiresPerLead), () => wire),
    })),
  );
}

interface Case {
  /** A document that has just so many. */
  readonly make: (size: number) => unknown;
  readonly path: string;
  readonly expected: string;
}

/** One row for every limit that is about what a document holds. */
const HOLDS: Readonly<Partial<Record<keyof typeof LIMITS, Case>>> = {
  idLength: {
    make: (size) => board([], { id: 'a'.repeat(size) }),
    path: 'id',
    expected: 'an id: up to 64 lower-case letters and digits, joined by single hyphens',
  },
  textLength: {
    make: (size) => board([], { name: 'n'.repeat(size) }),
    path: 'name',
    expected: 'one line of 1 to 200 plain characters',
  },
  noteLength: {
    make: (size) => board([], { notes: 'n'.repeat(size) }),
    path: 'notes',
    expected: 'a text of at most 10,000 plain characters',
  },
  schemaAddressLength: {
    make: (size) => board([], { $schema: 'a'.repeat(size) }),
    path: '“$schema”',
    expected: 'the path or address of this schema, of at most 2,000 characters',
  },
  gridSide: {
    make: (size) => board([posts('one', grid(1, size))]),
    path: 'connectors[0].grid.cols',
    expected: 'a whole number from 1 to 64',
  },
  connectors: {
    make: (size) => board(many(size, (at) => ({ ...TINY, id: `c-${at}` }))),
    path: 'connectors',
    expected: 'a list of at most 2,000 entries',
  },
  mountingHoles: {
    make: (size) => {
      const holes = many(size, (at) => ({ id: `hole-${at}`, xMm: at, yMm: at }));
      return board([], { outline: { widthMm: 200, depthMm: 200, holes } });
    },
    path: 'outline.holes',
    expected: 'a list of at most 64 entries',
  },
  pins: {
    make: (size) => board(gridsOf(size).map((each, at) => posts(`c-${at}`, each))),
    path: 'connectors',
    expected: 'at most 20,000 pins in all',
  },
  photos: {
    make: (size) => board([], { photos: many(size, (at) => photo({ id: `photo-${at}` })) }),
    path: 'photos',
    expected: 'a list of at most 8 entries',
  },
  photoSidePx: {
    make: (size) => board([], { photos: [photo({ widthPx: size })] }),
    path: 'photos[0].widthPx',
    expected: 'a whole number from 16 to 2,000',
  },
  photoLength: {
    make: (size) => board([], { photos: [photo({ data: letters(size) })] }),
    path: 'photos[0].data',
    expected: 'the picture file in base64, at most 4,194,304 letters',
  },
  photosLength: {
    make: (size) => {
      const whole = Math.floor(size / LIMITS.photoLength);
      const rest = letters(size % LIMITS.photoLength);
      const data = [...many(whole, () => letters(LIMITS.photoLength)), ...(rest === '' ? [] : [rest])];
      return board([], { photos: data.map((each, at) => photo({ id: `photo-${at}`, data: each })) });
    },
    path: 'photos',
    expected: 'pictures of at most 18\u00a0MB in all',
  },
  pointsPerPhoto: {
    make: (size) => {
      const full = posts('one', grid(LIMITS.gridSide, LIMITS.gridSide));
      const points = many(size, (at) => ({ connector: 'one', pin: String(at + 1), xPx: 1, yPx: 1 }));
      return board([full], { photos: [photo({ points })] });
    },
    path: 'photos[0].points',
    expected: 'a list of at most 1,024 entries',
  },
  alternativesPerPin: {
    make: (size) => {
      const alternatives = many(size, () => ({
        signal: 'ground' as const,
        source: { kind: 'print' as const },
      }));
      return board([{ ...TINY, pins: [{ pin: '1', alternatives }] }]);
    },
    path: 'connectors[0].pins[0].alternatives',
    expected: 'a list of at most 8 entries',
  },
  valuesPerPin: {
    make: (size) => {
      const values = many(size, () => ({ parameter: 'led-feed-ohms' as const, value: 470 }));
      return board([{ ...TINY, pins: [{ pin: '1', values }] }]);
    },
    path: 'connectors[0].pins[0].values',
    expected: 'a list of at most 8 entries',
  },
  readingsPerConnector: {
    make: (size) =>
      board([{ ...TINY, readings: many(size, () => ({ kind: 'ohms', pin: '1', ohms: 'open' })) }]),
    path: 'connectors[0].readings',
    expected: 'a list of at most 512 entries',
  },
  leads: {
    make: (size) => caseWith(many(size, (at) => ({ ...SWITCH, id: `lead-${at}` }))),
    path: 'leads',
    expected: 'a list of at most 2,000 entries',
  },
  plugsPerLead: {
    make: (size) =>
      leadOf({
        wires: [],
        plugs: many(size, (at) => ({ ...SINGLE, id: `plug-${at}` })),
      }),
    path: 'leads[0].plugs',
    expected: 'a list of 1 to 64 entries',
  },
  partsPerLead: {
    make: (size) => leadOf({ wires: [], parts: many(size, (at) => ({ id: `part-${at}`, kind: 'fan' })) }),
    path: 'leads[0].parts',
    expected: 'a list of at most 64 entries',
  },
  wiresPerLead: {
    make: (size) => leadOf({ wires: many(size, () => ({ from: 'part.a', to: 'plug.1', colour: 'red' })) }),
    path: 'leads[0].wires',
    expected: 'a list of at most 1,024 entries',
  },
  holes: {
    make: (size) => caseWith(gridsOf(size).map((each, at) => partLead(`lead-${at}`, 'fan', each, {}))),
    path: 'leads',
    expected: 'at most 20,000 holes in all',
  },
  wires: { make: wired, path: 'leads', expected: 'at most 20,000 wires in all' },
  stepsDone: {
    make: (size) => ({ ...bench([TINY], []), done: many(size, (at) => `step-${at}`) }),
    path: 'done',
    expected: 'a list of at most 30,000 entries',
  },
  stepLength: {
    make: (size) => ({ ...bench([TINY], []), done: ['x'.repeat(size)] }),
    path: 'done[0]',
    expected: 'the name of a step: up to 400 letters, digits, plain signs and single spaces',
  },
  logEntries: {
    make: (size) => troubled(many(size, () => ({ kind: 'started-over' }))),
    path: 'trouble.log',
    expected: 'a list of at most 2,000 entries',
  },
  priors: {
    make: (size) => ({ ...bench([TINY], []), priors: many(size, () => ({ cause: 'memory', factor: 2 })) }),
    path: 'priors',
    expected: 'a list of at most 200 entries',
  },
  codeLength: {
    make: (size) => troubled([{ kind: 'tried', trial: 'x'.repeat(size), result: 'same' }]),
    path: 'trouble.log[0].trial',
    expected: 'a code: up to 80 lower-case letters and digits, joined by single hyphens or colons',
  },
  remarkLength: {
    make: (size) => troubled([{ kind: 'remark', text: 'x'.repeat(size) }]),
    path: 'trouble.log[0].text',
    expected: 'a text of 1 to 1,000 plain characters',
  },
  trayPoints: {
    make: (size) => trayOf({ points: many(size, (at) => trayPoint(`point-${at}`)) }),
    path: 'tray.points',
    expected: 'a list of at most 2,000 entries',
  },
  trayOpenings: {
    make: (size) =>
      trayOf({ openings: many(size, (at) => ({ ...AREA, id: `opening-${at}`, edge: 'grommet' as const })) }),
    path: 'tray.openings',
    expected: 'a list of at most 64 entries',
  },
  trayBays: {
    make: (size) => trayOf({ bays: many(size, (at) => ({ ...AREA, id: `bay-${at}` })) }),
    path: 'tray.bays',
    expected: 'a list of at most 64 entries',
  },
  trayStandoffs: {
    make: (size) => trayOf({ standoffs: many(size, (at) => ({ id: `standoff-${at}`, xMm: at, yMm: 1 })) }),
    path: 'tray.standoffs',
    expected: 'a list of at most 64 entries',
  },
  trayFans: {
    make: (size) => trayOf({ fans: many(size, (at) => ({ id: `fan-${at}`, wall: 'front' as const })) }),
    path: 'tray.fans',
    expected: 'a list of at most 64 entries',
  },
  trayPaths: {
    make: (size) =>
      trayOf({
        points: [trayPoint('a'), trayPoint('b')],
        paths: many(size, (at) => ({
          id: `path-${at}`,
          from: 'a',
          to: 'b',
          lengthMm: 100,
          side: 'back' as const,
        })),
      }),
    path: 'tray.paths',
    expected: 'a list of at most 10,000 entries',
  },
  drivePlaces: {
    make: (size) =>
      board([], { drivePlaces: many(size, (at) => ({ id: `place-${at}`, name: `M.2 ${at}` })) }),
    path: 'drivePlaces',
    expected: 'a list of at most 16 entries',
  },
  choices: {
    make: (size) => ({
      ...bench([], []),
      choices: many(size, (at) => ({ kind: 'header', of: `fan-${at}`, on: 'fan-1' })),
    }),
    path: 'choices',
    expected: 'a list of at most 1,000 entries',
  },
  units: {
    make: (size) => ({ ...bench([], []), units: many(size, (at) => unit(`unit-${at}`)) }),
    path: 'units',
    expected: 'a list of at most 64 entries',
  },
  connectorsPerUnit: {
    make: (size) => ({
      ...bench([], []),
      units: [{ ...unit('drive'), connectors: many(size, (at) => posts(`socket-${at}`, grid(1, 1))) }],
    }),
    path: 'units[0].connectors',
    expected: 'a list of at most 64 entries',
  },
  routes: {
    make: (size) => ({
      ...bench([], []),
      routes: many(size, (at) => ({ lead: `lead-${at}`, plug: 'plug', paths: [] })),
    }),
    path: 'routes',
    expected: 'a list of at most 10,000 entries',
  },
  pathsPerRoute: {
    make: (size) => ({
      ...bench([], []),
      routes: [{ lead: 'lead', plug: 'plug', paths: many(size, (at) => `path-${at}`) }],
    }),
    path: 'routes[0].paths',
    expected: 'a list of at most 256 entries',
  },
  seats: { make: seated, path: 'seats', expected: 'a list of at most 10,000 entries' },
};

/** Limits of the text, and of the answer: tested below. */
const OTHERS: readonly string[] = ['fileBytes', 'depth', 'problemsShown', 'problemsCounted'];

describe('what a document may hold', () => {
  it('is checked for every limit', () => {
    expect([...Object.keys(HOLDS), ...OTHERS].sort()).toEqual(Object.keys(LIMITS).sort());
  });

  it.each(Object.entries(HOLDS))(
    '%s: as many as the limit, and not one more',
    (name, { make, ...problem }) => {
      const limit = LIMITS[name as keyof typeof LIMITS];
      expect(parseDocument(JSON.stringify(make(limit)))).toMatchObject({ ok: true });
      expect(parseDocument(JSON.stringify(make(limit + 1)))).toMatchObject({
        ok: false,
        problem: { code: 'invalid', fields: [problem], more: 0 },
      });
    },
  );

  it('is a text of 32 MB, and not a letter more', () => {
    const text = JSON.stringify(board([TINY]));
    expect(parseDocument(text.padEnd(LIMITS.fileBytes))).toMatchObject({ ok: true });
    expect(parseDocument(text.padEnd(LIMITS.fileBytes + 1))).toEqual({
      ok: false,
      problem: { code: 'too-large', bytes: LIMITS.fileBytes + 1, limitBytes: LIMITS.fileBytes },
    });
  });

  it('is 64 levels of brackets, and not one more', () => {
    const nested = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;
    expect(parseDocument(nested(64))).toMatchObject({ problem: { code: 'not-ours' } });
    expect(parseDocument(`\n${nested(65)}`)).toEqual({
      ok: false,
      problem: { code: 'too-deep', line: 2, limit: 64 },
    });
    const side = `${'[{"a":1},'.repeat(60)}0${']'.repeat(60)}`;
    expect(parseDocument(side)).toMatchObject({ problem: { code: 'not-ours' } });
  });

  it('is refused with 20 mistakes by their places, and how many more there are up to a thousand', () => {
    const told = (mistakes: number) => {
      const parsed = parseDocument(JSON.stringify({ ...board([]), connectors: many(mistakes, () => 1) }));
      if (parsed.ok || parsed.problem.code !== 'invalid') throw new Error('It is not refused for its fields');
      const { fields, more } = parsed.problem;
      return [fields.length, more];
    };
    expect([told(20), told(21)]).toEqual([
      [20, 0],
      [20, 1],
    ]);
    expect([told(999), told(1_000), told(1_001)]).toEqual([
      [20, 979],
      [20, 980],
      [20, 980],
    ]);
  });
});
