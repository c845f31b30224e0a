import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import type { Build } from '../../../boards/document/build';
import { gridIndex } from '../../../boards/document/numbering';
import { centreOf, contains, overlap } from '../../../boards/drawing/geometry';
import { orientationOf, oriented } from '../../../boards/drawing/orientation';
import { cellCentre } from '../../../boards/fit/geometry';
import { seatedPlugs } from '../../../boards/fit/seated-plug';
import { wiresOf } from '../../../boards/handover/steps/bench-steps';
import { type CloseUp, closeUpOfPlug } from '../../../boards/handover/steps/close-up';
import { arbitraryBuild } from '../arbitrary-build';
import { demo } from '../findings/demo';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';

const WIRED = demo('wired');

function near(build: Build, lead: string): CloseUp {
  const seated = seatedPlugs(build).find((each) => each.lead.id === lead);
  if (!seated) throw new Error(`${lead} is not seated`);
  return closeUpOfPlug(build, seated, true);
}

describe('a header from near by', () => {
  it.each(TURNS.flatMap((turn) => [false, true].map((mirrored) => ({ turn, mirrored }))))(
    'has its pins as they lie before the person: turned $turn, mirrored $mirrored',
    (view) => {
      const build = { ...WIRED, view };
      for (const seated of seatedPlugs(build)) {
        const { connector } = seated;
        const shape = closeUpOfPlug(build, seated, true);
        const orientation = orientationOf(view);
        const [one, ...others] = shape.pins;
        const placeOf = (pin: string) => {
          const at = gridIndex(connector.grid).cellOf(pin);
          if (!at) throw new Error(`No cell for ${pin}`);
          const { xMm, yMm } = cellCentre(connector, at);
          return oriented(orientation, { x: xMm, y: yMm });
        };
        for (const other of others) {
          if (!one) throw new Error('No pin');
          const [here, there] = [centreOf(one.box), centreOf(other.box)];
          const [truly, besides] = [placeOf(one.pin), placeOf(other.pin)];
          expect(sign(there.x - here.x)).toBe(sign(besides.x - truly.x));
          expect(sign(there.y - here.y)).toBe(sign(besides.y - truly.y));
        }
      }
    },
  );

  it('shows the positions under the plug, none over another, and says where the header goes on', () => {
    fc.assert(
      fc.property(arbitraryBuild, (build) => {
        for (const seated of seatedPlugs(build)) {
          const shape = closeUpOfPlug(build, seated, false);
          const met = wiresOf(seated).flatMap(({ pin }) => (pin ? [pin.pin] : []));
          const shown = shape.pins.map(({ pin }) => pin);
          for (const pin of met) expect(shown).toContain(pin);
          const all = gridIndex(seated.connector.grid).positions.length;
          expect(shape.goesOn.length > 0).toBe(shown.length < all);
          for (const pin of shape.pins) {
            expect(contains(shape.window, centreOf(pin.box))).toBe(true);
            for (const other of shape.pins)
              if (other !== pin) expect(overlap(pin.box, other.box)).toBe(false);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('of forty pins shows ten columns, on the side where the plug is', () => {
    const pins = Array.from({ length: 40 }, () => 'ground' as const);
    const header = posts('long', grid(2, 20), { pins });
    const lead = partLead('led', 'power-led', grid(1, 2), { anode: '1', cathode: '2' });
    const build = bench([header], [lead], [seat('led', 'long', [0, 17])]);
    const shape = near(build, 'led');
    expect(shape.pins).toHaveLength(20);
    expect(shape.goesOn).toEqual(['left']);
    expect(near(bench([header], [lead], [seat('led', 'long', [0, 9])]), 'led').goesOn).toEqual([
      'left',
      'right',
    ]);
  });

  it('has the mark beside the marked pin, inside the plug', () => {
    const { plug, pins } = near(WIRED, 'power-led');
    const marked = pins.find(({ pin }) => pin === '2');
    if (!plug?.mark || !marked) throw new Error('No mark');
    for (const point of plug.mark) expect(contains(plug.body, point)).toBe(true);
    const tip = plug.mark[0];
    expect(Math.hypot(tip.x - centreOf(marked.box).x, tip.y - centreOf(marked.box).y)).toBeLessThan(1);
  });
});

function sign(value: number): number {
  return Math.abs(value) < 1e-6 ? 0 : Math.sign(value);
}
