import { describe, expect, it } from 'vitest';
import type { Mm } from '../../../boards/base/units';
import { applyCommand } from '../../../boards/edit/apply';
import { LEAD_TYPES } from '../../../boards/library/leads';
import { firstCable, firstPieces, lengthLabel } from '../../../renderer/areas/route/cables/cable-fields';
import { bench } from '../../boards/fixtures/bench';

function leadOf(id: string) {
  const type = LEAD_TYPES.find((each) => each.id === id);
  if (type === undefined) throw new Error(`No lead ${id}`);
  return { ...type.lead, id: 'cable' };
}

function measured(id: string, lengths: Readonly<Record<string, Mm>>, start = '') {
  return firstCable(leadOf(id), { diameterMm: 6, lengthsMm: new Map(Object.entries(lengths)), start });
}

describe('a cable that is measured first', () => {
  it('has for each of its pieces the length that was measured of that piece, and no other', () => {
    expect(measured('sata-power-cable', { first: 450, second: 150 })?.runs).toEqual([
      { from: 'supply', to: 'first', lengthMm: 450 },
      { from: 'first', to: 'second', lengthMm: 150 },
    ]);
    expect(measured('sata-data-cable', { drive: 500 })?.runs).toEqual([
      { from: 'board', to: 'drive', lengthMm: 500 },
    ]);
  });

  it('is not kept while a piece of it is not measured', () => {
    for (const id of ['sata-power-cable', 'main-power-cable-20-and-4', 'cpu-power-cable-4-and-4'])
      for (const { to } of firstPieces(leadOf(id))) expect(measured(id, { [to]: 600 }), id).toBeUndefined();
    expect(
      firstCable(leadOf('sata-data-cable'), {
        diameterMm: undefined,
        lengthsMm: new Map([['drive', 500]]),
        start: '',
      }),
    ).toBeUndefined();
  });

  it('begins at its part where it has one, and there at a place if somebody has said it', () => {
    expect(measured('usb2-singles', {})).toBeUndefined();
    expect(measured('fan-1x4', { plug: 300 })).not.toHaveProperty('start');
    expect(measured('fan-1x4', { plug: 300 }, 'front')).toMatchObject({
      start: 'front',
      runs: [{ to: 'plug', lengthMm: 300 }],
    });
  });

  it('asks for every piece by both ends of it, each in other words', () => {
    for (const { lead } of LEAD_TYPES) {
      const build = bench([], [{ ...lead, id: 'cable' }]);
      const labels = firstPieces(lead).map((piece) => lengthLabel(build, leadOf(lead.id), piece));
      expect(new Set(labels).size, lead.id).toBe(labels.length);
    }
    const cable = leadOf('sata-power-cable');
    expect(firstPieces(cable).map((piece) => lengthLabel(bench([], [cable]), cable, piece))).toEqual([
      'Length from plug\u00a01 to plug\u00a02, mm',
      'Length from plug\u00a02 to plug\u00a03, mm',
    ]);
  });

  it('can be kept, of every lead that the library has', () => {
    for (const { lead, id } of LEAD_TYPES) {
      const each = { ...lead, id: 'cable' };
      if (firstPieces(each).length === 0) continue;
      const lengthsMm = new Map(firstPieces(each).map(({ to }, at) => [to, 100 + at]));
      const cable = firstCable(each, { diameterMm: 6, lengthsMm, start: '' });
      if (cable === undefined) throw new Error(`${id} is not measured`);
      const kept = applyCommand(bench([], [each]), { name: 'measure-lead', args: { lead: 'cable', cable } });
      expect(kept.ok, id).toBe(true);
    }
  });
});
