import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centreOf, contains, type Point } from '../../../boards/drawing/geometry';
import { measureByTable } from '../../../boards/drawing/measure';
import type { Target } from '../../../renderer/canvas/canvas-props';
import { hitIndex } from '../../../renderer/canvas/hit-index';
import type { Scene } from '../../../renderer/canvas/scene/scene';
import { sceneOf } from '../../../renderer/canvas/scene/scene-of';
import { wiredBoard } from './wired-board';

/** From near, without wires. */
const NEAR = { flags: true, wireReachMm: null };

function drawn(seed: number, apart: number): Scene {
  const build = wiredBoard(seed, apart);
  return sceneOf(build, { view: build.view, measure: measureByTable });
}

/** The slow, obvious way: everything, from the top down. */
function bruteForce(scene: Scene, point: Point): Target | null {
  const plugs = [
    ...scene.plugs.map(({ ref, body }) => ({ box: body, plug: ref })),
    ...scene.flags.map(({ plug, box }) => ({ box, plug })),
  ].filter(({ box }) => contains(box, point));
  const plug = plugs.at(-1)?.plug;
  if (plug) return { kind: 'plug', plug };
  const pins = scene.blocks.flatMap(({ connector, pins, names }) =>
    [...pins, ...names].map(({ pin, box }) => ({ box, pin: { connector: connector.id, pin } })),
  );
  const pin = pins.filter(({ box }) => contains(box, point)).at(-1)?.pin;
  if (pin) return { kind: 'pin', pin };
  const connectors = [
    ...scene.blocks.map(({ connector, shell }) => ({ box: shell, connector: connector.id })),
    ...scene.titles.map(({ connector, box }) => ({ box, connector })),
  ];
  const connector = connectors.filter(({ box }) => contains(box, point)).at(-1)?.connector;
  return connector === undefined ? null : { kind: 'connector', connector };
}

describe('what lies under the pointer', () => {
  it('is what looking through everything finds', () => {
    fc.assert(
      fc.property(
        fc.nat(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (seed, across, down) => {
          const scene = drawn(seed % 12, 20);
          const { x, y, width, height } = scene.bounds;
          const point = { x: x + across * width, y: y + down * height };
          expect(hitIndex(scene)(point, NEAR)).toEqual(bruteForce(scene, point));
        },
      ),
      { seed: 20261125, numRuns: 400 },
    );
  });

  it('is every pin at its middle, unless a plug covers it', () => {
    for (const seed of [1, 2, 3]) {
      const scene = drawn(seed, 60);
      const hit = hitIndex(scene);
      for (const { connector, pins } of scene.blocks)
        for (const { pin, box } of pins) {
          const target = hit(centreOf(box), NEAR);
          if (target?.kind !== 'plug')
            expect(target).toEqual({ kind: 'pin', pin: { connector: connector.id, pin } });
        }
    }
  });

  it('is a plug at its body and at its flag', () => {
    const scene = drawn(5, 60);
    const hit = hitIndex(scene);
    expect(scene.flags.length).toBeGreaterThan(0);
    for (const { plug, box } of scene.flags) expect(hit(centreOf(box), NEAR)).toEqual({ kind: 'plug', plug });
  });

  it('is no flag from afar, where flags are not drawn', () => {
    const scene = drawn(5, 60);
    const hit = hitIndex(scene);
    const bare = { ...scene, flags: [] };
    for (const { box } of scene.flags)
      expect(hit(centreOf(box), { ...NEAR, flags: false })).toEqual(bruteForce(bare, centreOf(box)));
  });

  it('is a wire within reach of it, the nearest of several, and none without a reach', () => {
    const scene = drawn(5, 60);
    const hit = hitIndex(scene);
    let met = 0;
    for (const { plug, wire, path } of scene.wires) {
      const [from, to] = path.slice(-2);
      if (!from || !to) throw new Error('A wire has a leg');
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      const under = hit(middle, NEAR);
      if (under?.kind === 'plug' || under?.kind === 'pin') continue;
      expect(under?.kind).not.toBe('wire');
      expect(hit(middle, { ...NEAR, wireReachMm: 0.3 })).toEqual({ kind: 'wire', plug, wire });
      met += 1;
    }
    expect(met).toBeGreaterThan(0);
  });

  it('is nothing on empty ground', () => {
    const scene = drawn(5, 60);
    expect(hitIndex(scene)({ x: scene.bounds.x - 50, y: scene.bounds.y - 50 }, NEAR)).toBeNull();
  });
});
