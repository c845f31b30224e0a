import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import { BuildZ } from '../../../boards/document/build';
import { overlap } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { crossings } from './crossings';
import { wiredBoard } from './wired-board';

const measure = measureByTable;
const SLOW = 30_000;
const DEMO = new URL('../../../boards/library/demo/', import.meta.url);
const demoBuild = (name: string) =>
  BuildZ.parse(JSON.parse(readFileSync(new URL(`${name}.build.json`, DEMO), 'utf8')));

describe('nothing in the drawing lies over a name, and no wire over a flag', () => {
  for (const name of ['wired', 'eight-slips'])
    for (const turn of TURNS)
      for (const mirrored of [false, true])
        it(`in the demo build ${name}, turned by ${turn}${mirrored ? ', mirrored' : ''}`, () => {
          const build = demoBuild(name);
          const scene = sceneOf(build, { view: { turn, mirrored }, measure });
          expect(scene.plugs).toHaveLength(build.seats.length);
          expect(crossings(scene)).toEqual([]);
        });

  it(
    'on any board whose connectors stand apart',
    () => {
      fc.assert(
        fc.property(fc.nat(), (seed) => {
          const build = wiredBoard(seed, 60);
          expect(crossings(sceneOf(build, { view: build.view, measure }))).toEqual([]);
        }),
        { seed: 20261125, numRuns: 40 },
      );
    },
    SLOW,
  );

  it(
    'on boards so crowded that names and flags have to give way',
    () => {
      fc.assert(
        fc.property(fc.nat(), fc.integer({ min: 14, max: 34 }), (seed, apart) => {
          const build = wiredBoard(seed, apart);
          const scene = sceneOf(build, { view: build.view, measure });
          const shells = scene.blocks.map(({ shell }) => shell);
          // Connectors that stand in each other are no board.
          fc.pre(shells.every((a) => shells.every((b) => a === b || !overlap(a, b))));
          expect(crossings(scene)).toEqual([]);
        }),
        { seed: 20261125, numRuns: 40 },
      );
    },
    SLOW,
  );
});

describe('every seated plug can be told by its print', () => {
  it(
    'each has at least one flag, or its print on its body',
    () => {
      fc.assert(
        fc.property(fc.nat(), fc.integer({ min: 14, max: 60 }), (seed, apart) => {
          const build = wiredBoard(seed, apart);
          const { flags } = sceneOf(build, { view: build.view, measure });
          const told = new Set(flags.map(({ plug }) => plug.lead));
          expect(build.seats.filter(({ lead }) => !told.has(lead))).toEqual([]);
        }),
        { seed: 20261125, numRuns: 25 },
      );
    },
    SLOW,
  );

  it('in the demo every plug has room for a flag', () => {
    const build = demoBuild('wired');
    const { flags } = sceneOf(build, { view: build.view, measure });
    expect(flags.filter(({ onBody }) => onBody)).toEqual([]);
  });
});
