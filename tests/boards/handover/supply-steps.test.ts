import { describe, expect, it } from 'vitest';
import { fromToOf } from '../../../boards/handover/from-to';
import { benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { stepWords } from '../../../boards/handover/steps/step-words';
import { demo } from '../findings/demo';
import { bench } from '../findings/harness';
import { plain, supplies } from '../findings/supplies';

const { build } = supplies({ cables: 'ash', outlets: 'ash' }).bench;
const withCard = { ...build, fitted: ['graphics-card' as const] };

function titles(of: typeof withCard): readonly string[] {
  const steps = benchStepsOf(of);
  if (!steps.ok) throw new Error('A ring');
  return steps.value.map((step) => plain(stepWords(of, step).title));
}

// Common practice, no source: the supply's cables bridge what a meter would tell, and a card covers the headers.
describe('the cables of a supply that is in the build', () => {
  const told = titles(withCard);
  const at = (start: string) => told.findIndex((title) => title.startsWith(start));

  it('are steps of their own, each plug with its pins, in place of one step for all of them', () => {
    expect(told.filter((title) => title.includes('cable of ASH'))).toHaveLength(8);
    expect(told).not.toContain('Plug in the leads of the supply');
  });

  it('go into the supply before the device', () => {
    expect(at('SATA cable of ASH on')).toBeGreaterThan(-1);
    expect(at('SATA cable of ASH on')).toBeLessThan(at('SATA cable of ASH (SATA 1) on'));
    expect(at('CPU cable of ASH on')).toBeLessThan(at('CPU cable of ASH (CPU) on'));
  });

  it('go on a card once it is in, and are there before the last look', () => {
    expect(told.at(-1)).toMatch(/look/i);
    expect(at('Card cable of ASH (CARD) on')).toBeGreaterThan(
      told.findIndex((title) => /card/i.test(title) && !title.includes('ASH')),
    );
  });

  it('have a card put in that a cable goes on, also where nothing says what the machine has', () => {
    const { fitted: _, ...silent } = withCard;
    const steps = benchStepsOf(silent);
    if (!steps.ok) throw new Error('A ring');
    const ids = steps.value.map(({ id }) => id);
    expect(ids).toContain('graphics-card');
    expect(ids.indexOf('graphics-card')).toBeLessThan(ids.indexOf('plug ash-card card'));
    const without = benchStepsOf({ ...silent, fitted: ['cooler'] });
    expect(without.ok && without.value.map(({ id }) => id)).not.toContain('graphics-card');
    const noCard = benchStepsOf(demo('wired'));
    expect(noCard.ok && noCard.value.map(({ id }) => id)).not.toContain('graphics-card');
  });

  it('come after everything that is measured', () => {
    const leads = bench()
      .with(withCard)
      .header('panel-2x5', 'panel')
      .lead('power-switch-1x2', 'power')
      .seat('power', 'panel', '6').build;
    const steps = benchStepsOf(leads);
    if (!steps.ok) throw new Error('A ring');
    const kinds = steps.value.map((step) =>
      step.kind === 'plug' && step.seated.lead.id.startsWith('ash-') ? 'cable' : step.kind,
    );
    expect(kinds).toContain('meter');
    expect(kinds.lastIndexOf('meter')).toBeLessThan(kinds.indexOf('cable'));
  });

  it('leave out what is soldered in', () => {
    const fixed = bench()
      .unit('supply-fixed', 'psu')
      .header('cpu-power-2x4', 'cpu')
      .seat('psu-cpu', 'cpu', '1', { plug: 'board' }).build;
    const steps = benchStepsOf(fixed);
    if (!steps.ok) throw new Error('A ring');
    expect(steps.value.filter(({ kind }) => kind === 'plug')).toHaveLength(1);
  });
});

describe('the from-to list', () => {
  it('names unit and pin at both ends of every wire', () => {
    const row = fromToOf(build).find(({ connector, pin }) => connector === 'POWER of DISK' && pin === '7');
    // The made-up sheet of Ash: +5 V is pin 3 of a drive outlet. SATA P7 is +5 V, from a hardware handbook, Table 13-7.
    expect(row).toMatchObject({
      lead: 'SATA cable of ASH',
      from: 'DRIVES 1 of ASH pin 3',
      colour: 'red',
      connector: 'POWER of DISK',
      signal: '+5 V',
    });
  });
});
