import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import type { Unit } from '../../../boards/document/unit';
import { makeUnit } from '../../../boards/library/make-unit';
import { UNIT_TYPES } from '../../../boards/library/units/index';
import type { SignalId } from '../../../boards/signals/signals';
import { done } from '../edit/carried-out';
import { bench } from '../findings/harness';

const IN_BUILD = { id: 'one', name: 'One' };

/** The build with a library unit in it, as the window puts it there. */
function withUnit(type: string, id = 'one', build: Build = bench().build): Build {
  return done(build, { name: 'add-unit', args: makeUnit(type, { id, name: id }) });
}

function signals(unit: Unit | undefined, connector: string): readonly (SignalId | undefined)[] {
  return unit?.connectors.find(({ id }) => id === connector)?.pins.map(({ signal }) => signal) ?? [];
}

describe('the units of the library', () => {
  it('have ids of their own, and a source each', () => {
    expect(new Set(UNIT_TYPES.map(({ id }) => id)).size).toBe(UNIT_TYPES.length);
    expect(UNIT_TYPES.filter(({ source }) => source === '')).toEqual([]);
  });

  it.each(UNIT_TYPES)(
    '$id goes into a build with its cables where they sit, opens again, and comes twice',
    ({ id }) => {
      const twice = withUnit(id, 'two', withUnit(id));
      expect(twice.units?.map((unit) => unit.id)).toEqual(['one', 'two']);
    },
  );

  it.each(UNIT_TYPES)('$id says of every pin where that was read', ({ unit }) => {
    const silent = unit.connectors.flatMap(({ pins }) =>
      pins.filter(
        ({ source, confidence, missing }) => !missing && (!source?.where || confidence === undefined),
      ),
    );
    expect(silent).toEqual([]);
  });

  it('do not make up one that is not there', () => {
    expect(() => makeUnit('toaster', IN_BUILD)).toThrow('toaster');
  });
});

describe('two modular supplies, which are made up as two makers are', () => {
  const [ash, birch] = ['ash', 'birch'].map((name) => makeUnit(`supply-modular-${name}`, IN_BUILD).unit);

  it('have sockets of the same shapes', () => {
    const shapes = (unit: Unit | undefined) =>
      unit?.connectors.map(({ family, grid }) => [family, grid.rows, grid.cols]);
    expect(shapes(ash)).toEqual(shapes(birch));
  });

  it('have other pins behind those for CPU, cards and drives', () => {
    for (const connector of ['one-power-1', 'one-drives-1'])
      expect(signals(ash, connector)).not.toEqual(signals(birch, connector));
  });

  // microATX specification v1.2, Figure 8.
  it('have main power alike, straight through', () => {
    expect(signals(ash, 'one-main')).toEqual(signals(birch, 'one-main'));
  });
});

describe('cables of the supplies', () => {
  const fed: readonly (readonly [cable: string, plug: string, hole: string, rail: SignalId])[] = [
    // 12 V CPU connector with eight pins, from a pinout page.
    ['cpu', 'board', '1', 'ground'],
    ['cpu', 'board', '8', 'supply-12v'],
    // ATX 3.0 power supply design guide (336521), Table 5-5; sense contacts are grounded.
    ['card', 'card', '1', 'supply-12v'],
    ['card', 'card', '4', 'ground'],
    ['card', 'card', '6', 'ground'],
    ['card', 'card', '8', 'ground'],
    // Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7.
    ['sata', 'first', '1', 'supply-3v3'],
    ['sata', 'first', '4', 'ground'],
    ['sata', 'second', '7', 'supply-5v'],
    ['sata', 'second', '15', 'supply-12v'],
    // From memory: +12 V, ground, ground, +5 V.
    ['drive', 'drive', '1', 'supply-12v'],
    ['drive', 'drive', '4', 'supply-5v'],
  ];

  it.each(['ash', 'birch'])('of %s bring each contact the rail that its paper names', (maker) => {
    const { unit, leads } = makeUnit(`supply-modular-${maker}`, IN_BUILD);
    const outlet = { cpu: 'power-1', card: 'power-1', sata: 'drives-1', drive: 'drives-1' };
    for (const [cable, plug, hole, rail] of fed) {
      const wire = leads
        .find(({ id }) => id === `one-${cable}`)
        ?.wires.find(({ to }) => to === `${plug}.${hole}`);
      const pin = wire?.from.replace('supply.', '');
      const where = unit.connectors.find(({ id }) => id === `one-${outlet[cable as keyof typeof outlet]}`);
      expect(where?.pins.find((each) => each.pin === pin)?.signal, `${cable} ${plug}.${hole}`).toBe(rail);
    }
  });
});

// Common practice, no source: two speed signals on one wire would jump about.
it.each(['fan-hub-header', 'fan-hub-supply'])('%s hands back the speed of its first outlet alone', (type) => {
  const { unit } = makeUnit(type, IN_BUILD);
  const telling = unit.connectors.filter(
    ({ id, pins }) => id.startsWith('one-fan-') && pins.some(({ signal }) => signal === 'fan-tach'),
  );
  expect(telling.map(({ id }) => id)).toEqual(['one-fan-1']);
});
