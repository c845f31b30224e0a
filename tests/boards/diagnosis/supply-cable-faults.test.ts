import { describe, expect, it } from 'vitest';
import { faultsAsWritten } from '../../../boards/diagnosis/faults/as-written';
import { asBuilt } from '../../../boards/diagnosis/faults/own/own-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import { predict } from '../../../boards/diagnosis/predict';
import { LOOK_TRIALS } from '../../../boards/diagnosis/trials/looks';
import { demo } from '../findings/demo';
import { bench } from '../findings/harness';
import { pairs, supplies } from '../findings/supplies';
import { casesOf, chanceOfSeeing, endsOf, faultOf, sumOf } from './faults-by-name';

describe('cables of the supply that are off', () => {
  const build = demo('every-cable');

  it('are named with the socket that each belongs in, and as often met in all as on any machine', () => {
    const of = (caseOf: string) => casesOf(build, caseOf);
    expect(of('processor-plug-off').map(({ name }) => name)).toEqual([
      'CPU power is not in at CPU/CARD 1 of Supply.',
      'CPU power is not in at CPU_12V.',
    ]);
    expect(of('drive-plug-off').map(({ name }) => name)).toContain(
      'Drive power is not in at POWER of Drive B.',
    );
    const any = SUPPLY_FAULTS.find(({ id }) => id === 'processor-plug-off');
    expect(sumOf(of('processor-plug-off'))).toBeCloseTo(0.9 * (any?.weight ?? 0), 9);
  });

  it('show what the board’s manual and the teaching texts say of it', () => {
    // Without its own +12 V the processor does nothing: fans turn, and there is no picture (common practice, no source).
    expect(endsOf(faultOf(build, 'supply-cpu/board/off/'))).toEqual(new Set(['no-code']));
    expect(endsOf(faultOf(build, 'supply-main/board/off/'))).toContain('no-standby');
    expect(chanceOfSeeing(faultOf(build, 'supply-sata/first/off/'), 'drive-missing')).toBeGreaterThan(0.8);
  });

  it('are found by the look at that plug, as the one of any machine is', () => {
    const look = LOOK_TRIALS.find(({ id }) => id === 'look-processor-plug');
    const off = faultOf(build, 'supply-cpu/board/off/');
    const [outcome] = predict(off);
    if (!outcome) throw new Error('It shows something');
    expect(look?.chances([off], outcome)['plug-off']).toBeGreaterThan(0.9);
  });

  it('weigh as much as everything else together where the build itself has one off', () => {
    const seats = build.seats.filter(({ lead, plug }) => lead !== 'supply-cpu' || plug !== 'board');
    const faults = faultsAsWritten({ ...build, seats });
    const off = faults.filter(({ id }) => id === 'supply-cpu/board/off/');
    expect(off.map(({ name }) => name)).toEqual(['CPU power is not in at CPU_12V.']);
    expect(sumOf(off) / sumOf(faults)).toBeCloseTo(0.5, 9);
  });

  it('are told of the supply’s end where that lies loose, and of the socket where no cable is left for it', () => {
    const loose = build.seats.filter(({ lead, plug }) => lead !== 'supply-card' || plug !== 'supply');
    expect(faultOf({ ...build, seats: loose }, 'supply-card/supply/off/').name).toBe(
      'Card power is not in at the supply.',
    );
    const leads = build.case.leads.filter(({ id }) => id !== 'supply-card');
    const extras = build.extras.filter(({ id }) => id !== 'supply-card');
    const seats = build.seats.filter(({ lead }) => lead !== 'supply-card');
    const without = { ...build, extras, seats, case: { ...build.case, leads } };
    expect(faultOf(without, 'off/card-power').name).toBe('Nothing feeds POWER of Graphics card.');
  });
});

describe('a cable of another supply', () => {
  it('that is written down shows what it brings: ground for +12 V trips the supply, +12 V for +5 V burns the drive', () => {
    // The two makers of the library have their rows of +12 V and ground exchanged, and +5 V and +12 V at drives.
    for (const [cables, outlets] of [pairs, pairs.toReversed()] as const) {
      const { build } = supplies({ cables: cables ?? 'ash', outlets: outlets ?? 'birch' }).bench;
      const cpu = faultOf(build, `${cables}-cpu/supply/other-cable/`);
      expect(endsOf(cpu)).toEqual(new Set(['trips']));
      expect(chanceOfSeeing(cpu, 'drive-missing')).toBeLessThan(0.1);
      const sata = faultOf(build, `${cables}-sata/supply/other-cable/`);
      expect(endsOf(sata)).toEqual(new Set(['runs']));
      expect(chanceOfSeeing(sata, 'smoke')).toBeGreaterThan(0.4);
      expect(chanceOfSeeing(sata, 'drive-missing')).toBeGreaterThan(0.8);
      const faults = faultsAsWritten(build);
      const written = faults.filter(({ id }) => id.endsWith('/other-cable/'));
      expect(written.map(({ lead }) => lead)).toEqual(
        [
          `${cables}-cpu`,
          `${cables}-card`,
          `${cables}-sata`,
          // Of main power only one that would be in its place: makers agree there.
          `${cables}-main`,
        ].toSorted(
          (a, b) =>
            written.findIndex((each) => each.lead === a) - written.findIndex((each) => each.lead === b),
        ),
      );
      const there = written.filter(({ lead }) => lead !== `${cables}-main`);
      expect(sumOf(there) / sumOf(faults)).toBeCloseTo(0.5, 9);
    }
  });

  it('is thought of only for cables that come off the supply', () => {
    const fixed = bench()
      .header('main-power-24', 'main')
      .unit('supply-fixed', 'own')
      .seat('own-main', 'main', '1', { plug: 'board' }).build;
    const ids = asBuilt(fixed, SUPPLY_FAULTS).flatMap(({ id, caseOf }) =>
      caseOf === 'cable-of-another' ? [id] : [],
    );
    expect(ids).toEqual([]);
  });
});

describe('a plug of the supply where it does not belong', () => {
  it('turned round at a four-pin drive brings +12 V for +5 V: smoke, and no drive', () => {
    const build = bench()
      .unit('supply-modular-ash', 'own')
      .unit('drive-peripheral', 'old')
      .seat('own-drive', 'own-drives-1', '1', { plug: 'supply' })
      .seat('own-drive', 'old-power', '1', { plug: 'drive' }).build;
    const turned = asBuilt(build, SUPPLY_FAULTS).find(({ id }) => id.startsWith('own-drive/drive/turned/'));
    if (!turned) throw new Error('A four-pin plug may be turned');
    expect(turned.seat?.turn).toBe(180);
    expect(chanceOfSeeing(turned, 'smoke')).toBeGreaterThan(0.4);
    expect(chanceOfSeeing(turned, 'drive-missing')).toBeGreaterThan(0.8);
    // As it is then written, it is suspected for itself.
    const seats = build.seats.map((seat) => (seat.plug === 'drive' && turned.seat ? turned.seat : seat));
    const faults = faultsAsWritten({ ...build, seats });
    const there = faults.filter(({ id }) => id === turned.id);
    expect(sumOf(there) / sumOf(faults)).toBeCloseTo(0.5, 9);
  });

  it('of a card on the processor’s socket lays +12 V on ground: the supply trips', () => {
    const crossed = asBuilt(demo('every-cable'), SUPPLY_FAULTS).filter(({ id }) => id.includes('/crossed/'));
    expect(crossed.map(({ name }) => name).toSorted()).toEqual([
      'CPU power was forced on POWER of Graphics card.',
      'Card power was forced on CPU_12V.',
    ]);
    for (const fault of crossed) expect(endsOf(fault)).toEqual(new Set(['trips']));
  });
});
