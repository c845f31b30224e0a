import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../boards/edit/apply';
import { findingsOf } from '../../../boards/findings/findings';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { asLaid } from '../../../boards/routing/laid/as-laid';
import { remediesFor } from '../../../boards/routing/laid/remedies';
import { routeDifferences, takingRoutesOver } from '../../../boards/routing/laid/route-differences';
import { verdictOf } from '../../../boards/routing/laid/run-verdict';
import { allRoutes } from '../../../boards/routing/search/all-routes';
import { cramped, everyCable, letterbox, wired } from './demo-files';

function laidOf(build: typeof wired) {
  const laid = asLaid(build);
  if (laid === undefined) throw new Error('A case without a tray');
  return laid;
}

function verdicts(build: typeof wired): Readonly<Record<string, string>> {
  const laid = laidOf(build);
  return Object.fromEntries(laid.runs.map((run) => [run.id, verdictOf(laid, run).kind]));
}

describe.each([
  ['with every cable', everyCable],
  ['of a cramped case', cramped],
])('the demo %s', (_, build) => {
  it('has every plug where it fits, and nothing dangerous or wrong', () => {
    expect(build.seats.flatMap((seat) => fitSeat(build, seat).refusals)).toEqual([]);
    const bad = findingsOf(build).filter(({ severity }) => severity === 'danger' || severity === 'fault');
    expect(bad).toEqual([]);
  });

  it('has nothing measured in one place with itself, and no cable without a beginning', () => {
    for (const { state } of laidOf(build).runs) expect(state.kind).not.toBe('not-laid');
  });
});

describe('the demo with every cable', () => {
  it('has each of them laid with something to spare, as all together are laid best', () => {
    expect(new Set(Object.values(verdicts(everyCable)))).toEqual(new Set(['laid']));
    expect(laidOf(everyCable).openings.filter(({ over }) => over)).toEqual([]);
    const found = allRoutes(laidOf(everyCable).laying);
    expect(found.proved).toBe(true);
    expect(routeDifferences(everyCable, found)).toEqual([]);
  });

  it('is the wired demo with a supply, two drives and a card', () => {
    expect(everyCable.board).toEqual(wired.board);
    expect(everyCable.case.leads).toEqual(wired.case.leads);
    expect(everyCable.units?.map(({ kind }) => kind)).toEqual(['supply', 'drive', 'drive', 'card']);
  });
});

describe('the demo of a cramped case', () => {
  it('carries the case sheet as it is', () => {
    expect(cramped.case).toEqual(letterbox);
  });

  it('begins with a cable that is too short for its way and reaches by another', () => {
    const laid = laidOf(cramped);
    const run = laid.runs.find(({ lead }) => lead.id === 'front-usb3');
    expect(verdicts(cramped)['front-usb3/plug']).toBe('too-short');
    expect(run?.cable && remediesFor(laid.laying, run.cable).map(({ kind }) => kind)).toEqual(['other-way']);
  });

  it('has CPU power that no way reaches for, and a data cable that is too stiff for the slot, when all else is laid', () => {
    const laid = laidOf(cramped);
    const differences = routeDifferences(cramped, allRoutes(laid.laying));
    const all = applyCommand(cramped, { name: 'lay-runs', args: takingRoutesOver(differences) });
    if (!all.ok) throw new Error('Not carried out');
    const open = Object.entries(verdicts(all.value)).filter(([, kind]) => kind !== 'laid');
    expect(open).toEqual([
      ['supply-cpu/board', 'open'],
      ['data-1/drive', 'open'],
    ]);
    const helps = (id: string) => {
      const cable = laid.laying.cables.find((each) => each.id === id);
      return cable && remediesFor(laid.laying, cable).map(({ kind }) => kind);
    };
    expect(helps('supply-cpu/board')).toEqual(['extension']);
    expect(helps('data-1/drive')).toEqual(['openings', 'tighter-bend']);
  });
});
