import { describe, expect, it } from 'vitest';
import { FAMILY } from '../../../../boards/library/families';
import { LEAD_TYPES } from '../../../../boards/library/leads';
import { cableFamilyOf, SHELL_FAMILIES } from '../../../../boards/routing/laid/cable-family';
import { bench, grid, lead, posts, seat } from '../../fixtures/bench';

describe('what a cable carries', () => {
  it('is told by every shell of the library, and not by open posts or soldered ends', () => {
    const silent = ['pin-header', 'soldered'];
    const shells = Object.values(FAMILY).filter((family) => !silent.includes(family));
    expect(Object.keys(SHELL_FAMILIES).toSorted()).toEqual(shells.toSorted());
  });

  it('is what a person would say of leads of the library', () => {
    const of = (id: string) => {
      const type = LEAD_TYPES.find((each) => each.id === id);
      if (type === undefined) throw new Error(`No lead ${id}`);
      return cableFamilyOf(bench([], []), { ...type.lead, id });
    };
    expect(of('main-power-cable-24')).toBe('supply');
    expect(of('sata-power-cable')).toBe('supply');
    expect(of('sata-data-cable')).toBe('data');
    expect(of('fan-1x4')).toBe('fan');
    expect(of('fan-on-drive-plug')).toBe('fan');
  });

  it('is what the pins are for, of a plain cable on a header', () => {
    const plain = lead('extension', grid(1, 2));
    const header = posts('panel', grid(1, 2), { pins: ['power-switch-input', 'ground'] });
    expect(cableFamilyOf(bench([header], [plain]), plain)).toBe('other');
    expect(cableFamilyOf(bench([header], [plain], [seat('extension', 'panel')]), plain)).toBe('panel');
  });
});
