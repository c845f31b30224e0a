import { describe, expect, it } from 'vitest';
import { analyse } from '../../boards/analyse';
import { findingsOf } from '../../boards/findings/findings';
import { jointsOf } from '../../boards/fit/joints';
import { makeConnector } from '../../boards/library/make-connector';
import { bench, grid, partLead, seat } from './fixtures/bench';

const panel = makeConnector('panel-2x5', {
  id: 'jfp',
  print: 'JFP',
  place: { xMm: 0, yMm: 0, turn: 0 },
});
const led = partLead('led', 'drive-led', grid(1, 2), { anode: '1', cathode: '2' });
const build = bench([panel], [led], [seat('led', 'jfp', [1, 1], 180)]);

describe('analysis of a build', () => {
  it('holds how each seat fits, what touches what, and what is found', () => {
    const { fits, joints, findings } = analyse(build);
    expect(build.seats.map((each) => fits.get(each)?.refusals)).toEqual([[]]);
    expect(joints).toBe(jointsOf(build));
    expect(findings.map(({ code }) => code)).toContain('reversed');
    expect(findings).toBe(findingsOf(build));
  });

  it('is the same object again after a new name, a note or a turn of the view', () => {
    const renamed = {
      ...build,
      name: 'Reading room 3',
      notes: 'door side',
      board: { ...build.board, name: 'B' },
    };
    const turned = { ...renamed, view: { turn: 90, mirrored: true } as const };
    expect(analyse(turned)).toBe(analyse(build));
  });

  it('is worked out anew when a seat, a lead or a connector changes, and found again on the way back', () => {
    const before = analyse(build);
    const unseated = { ...build, seats: [] };
    expect(analyse(unseated)).not.toBe(before);
    expect(analyse(unseated).joints).toEqual([]);
    const board = { ...build.board, connectors: [{ ...panel, pins: [] }] };
    expect(analyse({ ...build, board })).not.toBe(before);
    expect(analyse({ ...build, case: { ...build.case, leads: [{ ...led }] } })).not.toBe(before);
    expect(analyse({ ...build, seats: build.seats })).toBe(before);
  });
});
