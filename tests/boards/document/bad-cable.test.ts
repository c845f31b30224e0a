import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { grid, posts } from '../fixtures/bench';
import { faults, soundBuild } from './refused';

/** A build with a cable for two drives from one plug to the next, and units for it to run between. */
function withCable(cable: object, units: readonly object[] = soundUnits()) {
  const build = soundBuild();
  const [first] = build.case.leads;
  const [plug] = first?.plugs ?? [];
  const plugs = ['supply', 'upper', 'lower'].map((id) => ({ ...plug, id }));
  const chain = { id: 'drive-power', name: 'Drive power', parts: [], plugs, wires: [], cable };
  return { ...build, extras: [chain], units };
}

function soundCable() {
  return {
    diameterMm: 8,
    bendRadiusMm: 12,
    slackMm: 25,
    runs: [
      { from: 'supply', to: 'upper', lengthMm: 450 },
      { from: 'upper', to: 'lower', lengthMm: 150 },
    ],
  };
}

function soundUnits() {
  return [
    { id: 'psu', name: 'Supply', kind: 'supply', at: 'supply', connectors: [posts('outlet-1', grid(1, 2))] },
    { id: 'disk', name: 'Disk', kind: 'drive', connectors: [posts('disk-power', grid(1, 2))] },
  ];
}

describe('a lead as a cable, and the units it runs between', () => {
  it('are kept to the letter', () => {
    const routes = [{ lead: 'drive-power', plug: 'upper', paths: ['up'], pinned: true }];
    const build = { ...withCable(soundCable()), routes };
    const read = parseDocument(JSON.stringify(build));
    if (!read.ok) throw new Error(JSON.stringify(read.problem));
    expect(JSON.parse(serialize(read.value))).toEqual(build);
  });

  it('have lengths and a thickness above nothing', () => {
    const [run] = soundCable().runs;
    expect(faults(withCable({ ...soundCable(), diameterMm: 0 }))).toEqual([
      'extras[0].cable.diameterMm: expected a finite number above 0, at most 100, found 0',
    ]);
    for (const lengthMm of [0, -450])
      expect(faults(withCable({ ...soundCable(), runs: [{ ...run, lengthMm }] }))).toEqual([
        `extras[0].cable.runs[0].lengthMm: expected a finite number above 0, at most 20,000, found ${lengthMm}`,
      ]);
    expect(faults(withCable({ ...soundCable(), slackMm: -1 }))).toEqual([
      'extras[0].cable.slackMm: expected a finite number from 0 to 1,000, found -1',
    ]);
  });

  it('have runs between plugs of the lead, each reached once and none from itself', () => {
    const runs = (...list: readonly (readonly [from: string, to: string])[]) =>
      faults(withCable({ ...soundCable(), runs: list.map(([from, to]) => ({ from, to, lengthMm: 100 })) }));
    expect(runs(['supply', 'attic'])).toEqual([
      'extras[0].cable.runs[0].to: expected a plug of this lead, found “attic”',
    ]);
    expect(runs(['supply', 'upper'], ['lower', 'upper'])).toEqual([
      'extras[0].cable.runs[1].to: expected a plug at the far end that is not at extras[0].cable.runs[0].to already, found “upper”',
    ]);
    expect(runs(['upper', 'upper'])).toEqual([
      'extras[0].cable.runs[0].to: expected a plug that the run does not come from, found “upper”',
    ]);
    expect(runs(['supply', 'upper'], ['upper', 'lower'], ['lower', 'supply'])).toEqual([
      'extras[0].cable.runs[2].to: expected a plug that the run does not come from, found “supply”',
    ]);
  });

  it('are called by names of their own over board and units together, because a seat names no unit', () => {
    const [supply, disk] = soundUnits();
    expect(faults(withCable(soundCable(), [supply, { ...disk, id: 'psu' }].map(Object)))).toEqual([
      'units[1].id: expected an id that is not at units[0].id already, found “psu”',
    ]);
    const twice = { ...disk, connectors: [posts('panel', grid(2, 5))] };
    expect(faults(withCable(soundCable(), [Object(supply), twice]))).toEqual([
      'units[1].connectors[0].id: expected an id that is not at board.connectors[0].id already, found “panel”',
    ]);
  });
});
