import { describe, expect, it } from 'vitest';
import { ok, refuse } from '../../../boards/base/result';
import type { Build } from '../../../boards/document/build';
import type { Unit } from '../../../boards/document/unit';
import { applyCommand } from '../../../boards/edit/apply';
import { changeConnector, changeLead, changePlug, changeUnit } from '../../../boards/edit/change';
import type { Command } from '../../../boards/edit/command';
import { perform, redo, startHistory, undo, undoLabel } from '../../../boards/edit/history';
import { bench, grid, partLead, posts } from '../fixtures/bench';

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const reset = partLead('reset-sw', 'reset-switch', grid(1, 2), { a: '1', b: '2' });
const outlets = [posts('out-1', grid(1, 4)), posts('out-2', grid(1, 4))];
const supply: Unit = { id: 'psu', name: 'Supply', kind: 'supply', connectors: outlets };
const build: Build = { ...bench([posts('panel', grid(2, 5))], [power, reset]), units: [supply] };

describe('what is to be changed and is not there is refused by its name', () => {
  it('a lead', () => {
    expect(changeLead(build, 'speaker', ok)).toEqual(refuse({ code: 'unknown-lead', lead: 'speaker' }));
  });

  it('a plug of a lead', () => {
    expect(changePlug(build, { lead: 'power-sw', plug: 'second' }, ok)).toEqual(
      refuse({ code: 'unknown-plug', lead: 'power-sw', plug: 'second' }),
    );
  });

  it('a unit', () => {
    expect(changeUnit(build, 'hub', ok)).toEqual(refuse({ code: 'unknown-unit', unit: 'hub' }));
  });

  it('a connector, where there are units and where there is none', () => {
    const problem = refuse({ code: 'unknown-connector', connector: 'fan' });
    expect(changeConnector(build, 'fan', ok)).toEqual(problem);
    expect(changeConnector(bench([], []), 'fan', ok)).toEqual(problem);
  });
});

describe('a change that is refused is refused as it was said', () => {
  const problem = { code: 'unknown-lead', lead: 'any' } as const;
  it.each([
    ['of a lead', changeLead(build, 'power-sw', () => refuse(problem))],
    ['of a plug', changePlug(build, { lead: 'power-sw', plug: 'plug' }, () => refuse(problem))],
    ['of a unit', changeUnit(build, 'psu', () => refuse(problem))],
    ['of a connector of the board', changeConnector(build, 'panel', () => refuse(problem))],
    ['of a connector of a unit', changeConnector(build, 'out-2', () => refuse(problem))],
  ])('%s', (_what, result) => {
    expect(result).toEqual(refuse(problem));
  });
});

it('Of the connectors of a unit the named one alone is changed', () => {
  const changed = changeConnector(build, 'out-2', (connector) => ok({ ...connector, title: 'changed' }));
  const titles =
    changed.ok && changed.value.units?.flatMap(({ connectors }) => connectors.map(({ title }) => title));
  expect(titles).toEqual([outlets[0]?.title, 'changed']);
});

it('Of the leads the named one alone is changed, in the case and among the extras', () => {
  const extra: Build = { ...build, extras: [{ ...power, id: 'spare' }] };
  const named = (id: string) => changeLead(extra, id, (lead) => ok({ ...lead, name: 'changed' }));
  const namesIn = (result: ReturnType<typeof named>) =>
    result.ok && [...result.value.case.leads, ...result.value.extras].map(({ name }) => name);
  expect(namesIn(named('reset-sw'))).toEqual([power.name, 'changed', power.name]);
  expect(namesIn(named('spare'))).toEqual([power.name, reset.name, 'changed']);
});

it('A command that there is none of is a mistake of whoever made it, and is called by name', () => {
  const none = { name: 'solder', args: {} } as unknown as Command;
  expect(() => applyCommand(build, none)).toThrow('No command solder');
});

it('What was redone can be taken back again, and is called the same', () => {
  const done = perform(startHistory(build), { name: 'rename-build', args: { name: 'Machine 3' } });
  if (!done.ok) throw new Error(done.problem.code);
  const again = redo(undo(done.value));
  expect(undoLabel(again)).toBe('Rename the build');
  expect(undo(again).present).toBe(build);
  expect(redo(undo(again)).present).toBe(done.value.present);
});
