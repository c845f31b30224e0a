import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import type { Lead } from '../../../../boards/document/lead';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { cableRemarks, cableRemarkWords } from '../../../../boards/routing/laid/cable-remarks';
import { verdictOf } from '../../../../boards/routing/laid/run-verdict';
import { laidMachine } from './laid-machine';

function changed(id: string, change: (lead: Lead) => Lead): Build {
  const machine = laidMachine();
  const leads = machine.case.leads.map((lead) => (lead.id === id ? change(lead) : lead));
  return { ...machine, case: { ...machine.case, leads } };
}

function said(build: Build, id: string): readonly string[] {
  const laid = asLaid(build);
  const run = laid?.runs.find(({ lead }) => lead.id === id);
  if (!laid || !run) throw new Error(`No run of ${id}`);
  return cableRemarks(build, laid, run).map((remark) => cableRemarkWords(remark).replaceAll('\u00a0', ' '));
}

function longer(id: string, lengthMm: number): Build {
  return changed(id, (lead) =>
    lead.cable ? { ...lead, cable: { ...lead.cable, runs: [{ to: 'plug', lengthMm }] } } : lead,
  );
}

describe('rules of thumb of single cables (common practice, no source)', () => {
  it('want data cables short: half a metre is calm, a metre the most that Serial ATA allows (from memory)', () => {
    expect(said(longer('data', 500), 'data')).toEqual([]);
    expect(said(longer('data', 501), 'data')).toEqual([
      'It is 501 mm long. Up to 1,000 mm is allowed; 500 mm or less gives less trouble (common practice).',
    ]);
    expect(said(longer('data', 1_001), 'data')).toEqual([
      'It is 1,001 mm long, and Serial ATA allows 1,000 mm. Take a shorter one.',
    ]);
  });

  it('keep sound away from supply and fan leads', () => {
    const asAudio = (lead: Lead): Lead => ({ ...lead, parts: [{ id: 'part', kind: 'hd-audio' }], wires: [] });
    const beside = changed('button', asAudio);
    expect(said(beside, 'button')).toEqual([
      'It lies along one path with FAN-TOP and 1 more: keep sound away from supply and fans, or it hums (common practice).',
    ]);
    const alone = { ...beside, routes: (beside.routes ?? []).filter(({ lead }) => lead === 'button') };
    expect(said(alone, 'button')).toEqual([]);
  });

  it('tie back a twin plug that nobody needs', () => {
    const twin = changed('button', (lead) => ({
      ...lead,
      plugs: [...lead.plugs, ...lead.plugs.map((plug) => ({ ...plug, id: 'old', print: 'OLD' }))],
    }));
    expect(said(twin, 'button')).toEqual([
      'OLD is not in use. Tie it back so that it touches nothing (common practice).',
    ]);
    expect(said(laidMachine(), 'button')).toEqual([]);
  });

  it('leave so much at both ends that no plug is pulled: a cable that just spans its way is too short', () => {
    const laid = asLaid(laidMachine());
    const run = laid?.runs.find(({ lead }) => lead.id === 'main');
    const route = run?.state.kind === 'laid' ? run.state.route : undefined;
    const slack = run?.lead.cable?.slackMm ?? 0;
    if (!route || slack === 0) throw new Error('Not laid');
    const verdictAt = (lengthMm: number) => {
      const build = longer('main', lengthMm);
      const again = asLaid(build);
      const same = again?.runs.find(({ lead }) => lead.id === 'main');
      return again && same && verdictOf(again, same).kind;
    };
    expect(verdictAt(route.totalMm)).toBe('too-short');
    expect(verdictAt(route.totalMm + 2 * slack)).toBe('laid');
  });
});
