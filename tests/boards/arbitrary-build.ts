import fc from 'fast-check';
import { TURNS } from '../../boards/base/units';
import type { BoardSheet } from '../../boards/document/board-sheet';
import type { Build } from '../../boards/document/build';
import type { CaseSheet } from '../../boards/document/case-sheet';
import { type Connector, type Pin, type Place, SIDES, SOURCE_KINDS } from '../../boards/document/connector';
import { CORNERS, type Grid, type Numbering, SCHEMES } from '../../boards/document/grid';
import { type Lead, type Plug, WIRE_COLOURS, type Wire } from '../../boards/document/lead';
import { leadsOf } from '../../boards/document/lookup';
import { gridIndex } from '../../boards/document/numbering';
import { FORM_FACTORS, type Outline } from '../../boards/document/outline';
import { PHOTO_TYPES, type Photo } from '../../boards/document/photo';
import type { PinReading } from '../../boards/document/pin-reading';
import type { LogEntry } from '../../boards/document/trouble';
import { UNIT_KINDS, type Unit } from '../../boards/document/unit';
import { placesOf } from '../../boards/fit/places';
import { type PartKindId, partKindOf } from '../../boards/signals/part-kinds';
import { JOBS } from '../../boards/signals/signal';
import { SIGNAL_IDS } from '../../boards/signals/signals';
import { cableFor, routesFor } from './arbitrary-cable';
import { fanRatingFor, ratingFor } from './arbitrary-rating';
import { readingFor } from './arbitrary-reading';
import { trayFor } from './arbitrary-tray';
import { Dice } from './dice';

/** Names as people type them, in any script, with quotes, and now and then any letters at all. */
export const arbitraryName = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom('POWER SW', 'H.D.D. LED+', 'Front “A”', 'вкл', '電源', '__proto__'),
  },
  {
    weight: 1,
    arbitrary: fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
      .map((text) => text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '·')),
  },
);

/** One number from which a whole thing is made up. */
export const arbitrarySeed = fc.nat();
function placeOn(dice: Dice): Place {
  return { xMm: dice.below(800) / 4, yMm: dice.below(800) / 4, turn: dice.pick(TURNS) ?? 0 };
}

/** A numbering for a grid of that size: counted, or free with a position left out here and there. */
export function numberingFor(rows: number, cols: number, dice: Dice): Numbering {
  if (!dice.oneIn(5))
    return { scheme: dice.pick(SCHEMES) ?? 'zig-zag', from: dice.pick(CORNERS) ?? 'top-left' };
  const labels = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: cols }, (__, col) => {
      const first = row === 0 && col === 0;
      return !first && dice.oneIn(5) ? null : `A${row * cols + col + 1}`;
    }),
  );
  return { scheme: 'free', labels };
}

function gridOf(dice: Dice, maxRows: number, maxCols: number): Grid {
  const rows = 1 + dice.below(maxRows);
  const cols = 1 + dice.below(maxCols);
  const grid = { rows, cols, pitchMm: dice.oneIn(6) ? 2 : 2.54, numbering: numberingFor(rows, cols, dice) };
  return dice.oneIn(5) ? { ...grid, rowPitchMm: 2.54 } : grid;
}

/** What might be known of a pin. */
export function pinFor(label: string, dice: Dice, name: string): Pin {
  if (dice.oneIn(8)) return { pin: label, missing: true };
  return {
    pin: label,
    ...(!dice.oneIn(5) && { signal: dice.pick(SIGNAL_IDS) ?? 'ground' }),
    ...(dice.oneIn(4) && { channel: dice.pick(['A', 'B', '1']) ?? 'A' }),
    ...(dice.oneIn(5) && { belongsTo: dice.pick(JOBS) ?? 'fan' }),
    ...(dice.oneIn(3) && { name }),
    ...(dice.oneIn(3) && { source: { kind: dice.pick(SOURCE_KINDS) ?? 'manual', where: 'page 3' } }),
    ...(dice.oneIn(4) && { confidence: dice.below(101) / 100 }),
    ...(dice.oneIn(6) && { alternatives: [{ signal: 'ground', source: { kind: 'measured' } }] }),
    ...(dice.oneIn(6) && { notes: `${name}\n` }),
  };
}

function readingsOn(grid: Grid, dice: Dice): PinReading[] {
  const labels = gridIndex(grid).positions.map(({ label }) => label);
  return Array.from({ length: 1 + dice.below(3) }, () => readingFor(labels, dice)).filter(
    (reading) => reading !== undefined,
  );
}

/** A small connector: up to 3 by 5 positions, of which something is known here and there. */
export function arbitraryConnector(id: string): fc.Arbitrary<Connector> {
  return fc.record({ seed: arbitrarySeed, name: arbitraryName }).map(({ seed, name }): Connector => {
    const dice = new Dice(seed);
    const grid = gridOf(dice, 3, 5);
    const known = gridIndex(grid).positions.filter(() => !dice.oneIn(4));
    return {
      id,
      print: name,
      title: `the connector ${id}`,
      family: dice.oneIn(8) ? 'usb3' : 'pin-header',
      grid,
      pins: known.map(({ label }) => pinFor(label, dice, name)),
      ...(dice.oneIn(8) && { shroud: { walls: [...SIDES], guide: 'bottom' } }),
      place: placeOn(dice),
      ...(dice.oneIn(4) && { rating: ratingFor(dice) }),
      ...(dice.oneIn(2) && { readings: readingsOn(grid, dice) }),
      ...(dice.oneIn(5) && { notes: name }),
    };
  });
}

const KINDS: readonly PartKindId[] = [
  'power-switch',
  'drive-led',
  'two-colour-power-led',
  'speaker',
  'usb2-port',
  'fan',
];

function plugOf(id: string, print: string, dice: Dice): Plug {
  const grid = gridOf(dice, 2, 5);
  const labels = gridIndex(grid).positions.map(({ label }) => label);
  const blocked = labels.length > 2 && dice.oneIn(4) ? [dice.pick(labels) ?? '1'] : undefined;
  return {
    id,
    print,
    family: dice.oneIn(8) ? 'usb3' : 'pin-header',
    grid,
    ...(blocked && { blocked }),
    ...(dice.oneIn(3) && { mark: dice.pick(labels) ?? '1' }),
    ...(dice.oneIn(8) && { rib: dice.pick(SIDES) ?? 'top' }),
  };
}

/** A small lead: one or two parts, one or two plugs, and as many wires as holes can take. */
export function arbitraryLead(id: string): fc.Arbitrary<Lead> {
  return fc.record({ seed: arbitrarySeed, name: arbitraryName }).map(({ seed, name }): Lead => {
    const dice = new Dice(seed);
    const parts = Array.from({ length: 1 + dice.below(2) }, (_, at) => {
      const kind = dice.pick(KINDS) ?? 'speaker';
      return {
        id: `part-${at + 1}`,
        kind,
        ...(dice.oneIn(4) && { channel: 'A' }),
        ...(kind === 'fan' && dice.oneIn(2) && { fan: fanRatingFor(dice) }),
      };
    });
    const plugs = Array.from({ length: dice.oneIn(4) ? 2 : 1 }, (_, at) =>
      plugOf(at === 0 ? 'plug' : 'plug-2', dice.oneIn(4) ? '' : name, dice),
    );
    const holes = plugs.flatMap((plug) =>
      gridIndex(plug.grid)
        .positions.filter(({ label }) => !plug.blocked?.includes(label))
        .map(({ label }) => `${plug.id}.${label}`),
    );
    const terminals = parts.flatMap((part) =>
      partKindOf(part.kind).terminals.map((terminal) => `${part.id}.${terminal.id}`),
    );
    const wires = terminals.flatMap((from, at): readonly Wire[] => {
      const to = holes[at % 3 === 2 ? Math.max(0, at - 1) : at];
      const colour = dice.pick(WIRE_COLOURS) ?? 'black';
      if (to === undefined) return [];
      return [dice.oneIn(3) ? { from, to, colour, stripe: 'white' } : { from, to, colour }];
    });
    const cable = dice.oneIn(3) ? cableFor(dice, plugs) : undefined;
    const lead: Lead = { id, name, parts, plugs, wires, ...(cable && { cable }) };
    return dice.oneIn(8) ? { ...lead, setAside: true } : lead;
  });
}

/** A cable: two plugs and wires from one to the other, mostly straight through, now and then measured. */
export function arbitraryCable(id: string): fc.Arbitrary<Lead> {
  return fc.record({ seed: arbitrarySeed, name: arbitraryName }).map(({ seed, name }): Lead => {
    const dice = new Dice(seed);
    const near = plugOf('near', name, dice);
    const far = dice.oneIn(3)
      ? plugOf('far', '', dice)
      : { ...near, id: 'far', ...(dice.oneIn(2) && { family: 'usb3' }) };
    const [from, to] = [near, far].map((plug) =>
      gridIndex(plug.grid)
        .positions.map(({ label }) => label)
        .filter((label) => !plug.blocked?.includes(label)),
    );
    const wires = (from ?? []).flatMap((hole): readonly Wire[] => {
      const end = to?.includes(hole) && !dice.oneIn(6) ? hole : dice.pick(to ?? []);
      const colour = dice.pick(WIRE_COLOURS) ?? 'black';
      return end === undefined ? [] : [{ from: `near.${hole}`, to: `far.${end}`, colour }];
    });
    const measured = dice.oneIn(2) && {
      cable: {
        diameterMm: 4 + dice.below(8),
        slackMm: dice.below(60),
        runs: [{ from: 'near', to: 'far', lengthMm: 100 + dice.below(900) }],
      },
    };
    return { id, name, parts: [], plugs: [near, far], wires, ...measured };
  });
}

/** A unit with one or two small connectors, somewhere on the tray or nowhere. */
export function arbitraryUnit(id: string): fc.Arbitrary<Unit> {
  return fc
    .record({
      seed: arbitrarySeed,
      name: arbitraryName,
      connectors: fc.tuple(arbitraryConnector(`${id}-in`), arbitraryConnector(`${id}-out`)),
    })
    .map(({ seed, name, connectors }): Unit => {
      const dice = new Dice(seed);
      return {
        id,
        name,
        kind: dice.pick(UNIT_KINDS) ?? 'other',
        ...(dice.oneIn(2) && { at: 'bay-1' }),
        connectors: connectors.slice(0, 1 + dice.below(2)),
        ...(dice.oneIn(5) && { notes: name }),
      };
    });
}

/** An outline: of a form factor or free, with a few holes or none, some of them beyond the edge. */
export function outlineFor(dice: Dice, name: string): Outline {
  const holes = Array.from({ length: dice.below(4) }, (_, at) => ({
    id: `hole-${at + 1}`,
    ...(dice.oneIn(2) && { label: name }),
    xMm: dice.below(1_300) / 4,
    yMm: dice.below(1_000) / 4,
    ...(dice.oneIn(2) && { diameterMm: 3.96 }),
  }));
  return {
    widthMm: 50 + dice.below(1_000) / 4,
    depthMm: 305.5,
    ...(dice.oneIn(3) && { formFactor: dice.pick(FORM_FACTORS) ?? 'atx' }),
    ...(dice.oneIn(3) && { rear: dice.pick(SIDES) ?? 'left' }),
    ...(holes.length > 0 && { holes }),
  };
}

/** A small picture (its data are only letters here), with some pins of some connectors pointed at. */
export function photoFor(dice: Dice, connectors: readonly Connector[]): Photo {
  const [widthPx, heightPx] = [100 + dice.below(1_900), 100 + dice.below(1_900)];
  const points = connectors.flatMap(({ id, grid }) =>
    gridIndex(grid)
      .positions.filter(() => dice.oneIn(3))
      .map(({ label }) => ({
        connector: id,
        pin: label,
        xPx: dice.below(4 * widthPx) / 4,
        yPx: dice.below(4 * heightPx) / 4,
      })),
  );
  const data = dice.pick(['AAAA', '////iA==', 'iVBORw0KGgo=']) ?? 'AAAA';
  return { id: 'photo', type: dice.pick(PHOTO_TYPES) ?? 'image/png', widthPx, heightPx, data, points };
}

/** A log of a trouble: answers, trials and remarks, some of them of questions that nobody asks any more. */
function logFor(dice: Dice): LogEntry[] {
  const lines: readonly LogEntry[] = [
    { kind: 'noticed', what: 'nothing-on-press', answer: 'yes', day: '2026-11-26' },
    { kind: 'noticed', what: 'standby-light', answer: 'no' },
    { kind: 'noticed', what: 'no-longer-asked', answer: 'yes' },
    { kind: 'tried', trial: 'bare-pins', result: 'same' },
    { kind: 'remark', text: 'Two plugs\nlook alike.' },
    { kind: 'started-over', day: '2024-02-29' },
  ];
  return Array.from({ length: 1 + dice.below(4) }, () => dice.pick(lines) ?? { kind: 'started-over' });
}

export const arbitraryBoard: fc.Arbitrary<BoardSheet> = fc
  .record({
    name: arbitraryName,
    connectors: fc.tuple(...['one', 'two', 'three'].map(arbitraryConnector)),
    kept: fc.integer({ min: 1, max: 3 }),
    seed: arbitrarySeed,
  })
  .map(({ name, connectors, kept, seed }) => {
    const dice = new Dice(seed);
    const outline = outlineFor(dice, name);
    const standing = connectors.slice(0, kept);
    return {
      format: 'leadwright/board',
      version: 1,
      id: 'board',
      name,
      outline,
      connectors: standing,
      ...(dice.oneIn(2) && { photos: [photoFor(dice, standing)] }),
    };
  });

export const arbitraryCase: fc.Arbitrary<CaseSheet> = fc
  .record({
    name: arbitraryName,
    leads: fc.tuple(...['red', 'green', 'blue'].map(arbitraryLead)),
    kept: fc.integer({ min: 1, max: 3 }),
    seed: arbitrarySeed,
  })
  .map(({ name, leads, kept, seed }) => {
    const dice = new Dice(seed);
    return {
      format: 'leadwright/case',
      version: 1,
      id: 'case',
      name,
      leads: leads.slice(0, kept),
      ...(dice.oneIn(2) && { tray: trayFor(dice, name) }),
    };
  });

/** A small build: one to three connectors, one to four leads, some of their plugs seated where they fit. */
export const arbitraryBuild: fc.Arbitrary<Build> = fc
  .record({
    name: arbitraryName,
    board: arbitraryBoard,
    case: arbitraryCase,
    extras: fc.tuple(arbitraryLead('loose'), arbitraryCable('cable')),
    units: fc.tuple(arbitraryUnit('supply'), arbitraryUnit('drive')),
    seed: arbitrarySeed,
  })
  .map(({ seed, extras, units, ...sheets }) => {
    const dice = new Dice(seed);
    let build: Build = {
      format: 'leadwright/build',
      version: 1,
      id: 'build',
      ...sheets,
      extras: extras.filter(() => dice.oneIn(2)),
      ...(!dice.oneIn(3) && { units: units.slice(0, 1 + dice.below(2)) }),
      seats: [],
      ...(dice.oneIn(3) && { routes: [{ lead: 'cable', plug: 'far', paths: ['path-1', 'path-2'] }] }),
      view: { turn: dice.pick(TURNS) ?? 0, mirrored: dice.oneIn(2) },
      ...(dice.oneIn(2) && { trouble: { log: logFor(dice) } }),
      ...(dice.oneIn(3) && { priors: [{ cause: 'no-longer-a-cause', factor: 0.01 + dice.below(9) }] }),
    };
    const first = build.case.leads.map((lead) => ({ lead: lead.id, plug: lead.plugs[0]?.id ?? '' }));
    const ofCables = build.extras
      .filter(({ parts }) => parts.length === 0)
      .flatMap(({ id, plugs }) => plugs.map((plug) => ({ lead: id, plug: plug.id })));
    for (const ref of [...first, ...ofCables]) {
      const seat = dice.oneIn(2) ? dice.pick(placesOf(build, ref)) : undefined;
      if (seat !== undefined) build = { ...build, seats: [...build.seats, seat] };
    }
    const paths = (build.case.tray?.paths ?? []).map(({ id }) => id);
    const routes = routesFor(dice, leadsOf(build), paths);
    return routes.length === 0 ? build : { ...build, routes };
  });
