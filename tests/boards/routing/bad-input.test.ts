import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { parseDocument } from '../../../boards/document/parse';
import { openProblemWords } from '../../../boards/document/problem/problem-words';
import { serialize } from '../../../boards/document/serialize';
import { asLaid } from '../../../boards/routing/laid/as-laid';
import { waysFor } from '../../../boards/routing/laid/other-ways';
import { remediesFor } from '../../../boards/routing/laid/remedies';
import { notLaidWords } from '../../../boards/routing/laid/run-words';
import { wayBegun } from '../../../boards/routing/laid/way-choosing';
import { allRoutes } from '../../../boards/routing/search/all-routes';
import { reachOf } from '../../../boards/routing/search/reach';
import { seat } from '../fixtures/bench';
import { laidMachine, MACHINE_TRAY } from './laid/laid-machine';

const machine = laidMachine();

/** What opening the file of a build says, after something in its text was put otherwise. */
function saidOnOpening(change: (text: string) => string): string {
  const text = serialize(machine);
  const changed = change(text);
  if (changed === text) throw new Error('Nothing was changed');
  const opened = parseDocument(changed);
  if (opened.ok) throw new Error('It opens');
  return JSON.stringify(openProblemWords(opened.problem, 'a.build.json')).replaceAll('\\u00a0', ' ');
}

describe('what cannot be so of a cable or a tray', () => {
  it('is a length of nothing, or less, in a file: it is said where, and nothing is opened', () => {
    for (const length of ['0', '-40'])
      expect(saidOnOpening((text) => text.replace('"lengthMm": 700', `"lengthMm": ${length}`))).toMatch(
        /runs\[0\]\.lengthMm.*above 0/,
      );
  });

  it('is an opening without any size', () => {
    expect(saidOnOpening((text) => text.replace('"widthMm": 60', '"widthMm": 0'))).toMatch(
      /tray\.openings\[0\]\.widthMm.*above 0/,
    );
  });

  it('is a run from a plug to itself', () => {
    const leads = machine.case.leads.map((lead) =>
      lead.id === 'cpu' && lead.cable
        ? { ...lead, cable: { ...lead.cable, runs: [{ from: 'plug', to: 'plug', lengthMm: 700 }] } }
        : lead,
    );
    expect(saidOnOpening(() => serialize({ ...machine, case: { ...machine.case, leads } }))).toMatch(
      /cable\.runs\[0\]\.to: expected a plug that the run does not come from/,
    );
  });
});

describe('what can be so, and has no way', () => {
  it('is a cable with both ends on one connector: it needs none, and that is said', () => {
    const [button] = machine.case.leads.filter(({ id }) => id === 'button');
    const [plug] = button?.plugs ?? [];
    if (!button || !plug) throw new Error('No button');
    const loop = {
      ...button,
      id: 'loop',
      name: 'Loop',
      parts: [],
      wires: [],
      plugs: [plug, { ...plug, id: 'back' }],
      cable: { diameterMm: 2, slackMm: 0, runs: [{ from: 'plug', to: 'back', lengthMm: 100 }] },
    };
    const build: Build = {
      ...machine,
      extras: [loop],
      seats: [
        ...machine.seats,
        seat('loop', 'panel', [0, 1]),
        { ...seat('loop', 'panel', [0, 3]), plug: 'back' },
      ],
    };
    const run = asLaid(build)?.runs.find(({ lead }) => lead.id === 'loop');
    if (run?.state.kind !== 'not-laid') throw new Error(`It is ${run?.state.kind}`);
    expect(notLaidWords(build, run.lead, run.state.problem)).toBe(
      'Both ends of this run are in one place, so it needs no way. Check what its plugs sit on.',
    );
  });

  it('is a cable between islands of the tray: no way, no help but paths, and the others are laid', () => {
    const paths = MACHINE_TRAY.paths.filter(({ id }) => id !== 'supply-column');
    const build = laidMachine({ case: { ...machine.case, tray: { ...MACHINE_TRAY, paths } }, routes: [] });
    const laid = asLaid(build);
    const cable = laid?.runs.find(({ lead }) => lead.id === 'cpu')?.cable;
    if (laid === undefined || cable === undefined) throw new Error('No cable');
    expect(reachOf(laid.laying, cable)).toEqual({ kind: 'no-way', barred: [] });
    expect(remediesFor(laid.laying, cable)).toEqual([]);
    expect(waysFor(laid.laying, cable)).toEqual([]);
    expect(wayBegun(laid.laying, cable, [])?.next).toEqual([]);
    const kinds = allRoutes(laid.laying).cables.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === 'unreached')).toHaveLength(2);
    expect(kinds.filter((kind) => kind === 'laid')).toHaveLength(4);
  });
});
