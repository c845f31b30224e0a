import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import type { LeadCable } from '../../../../boards/document/cable';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { endNames, runName } from '../../../../boards/routing/laid/end-names';
import { remediesFor } from '../../../../boards/routing/laid/remedies';
import { remedyWords } from '../../../../boards/routing/laid/remedy-words';
import { verdictOf } from '../../../../boards/routing/laid/run-verdict';
import {
  notLaidWords,
  passageWords,
  stepWords,
  verdictWords,
} from '../../../../boards/routing/laid/run-words';
import { wayStepsOf } from '../../../../boards/routing/laid/way-steps';
import { laidMachine } from './laid-machine';

/** The machine with the measures of one lead changed; what is undefined is left out. */
function measured(lead: string, over: Partial<LeadCable>, build: Build = laidMachine()): Build {
  const leads = build.case.leads.map((each) =>
    each.id === lead && each.cable ? { ...each, cable: { ...each.cable, ...over } } : each,
  );
  return { ...build, case: { ...build.case, leads } };
}

function found(build: Build, lead: string) {
  const laid = asLaid(build);
  const run = laid?.runs.find((each) => each.lead.id === lead);
  if (laid === undefined || run === undefined) throw new Error(`No run of ${lead}`);
  return { laid, run };
}

function said(build: Build, lead: string): string {
  const { laid, run } = found(build, lead);
  return plain(verdictWords(build, verdictOf(laid, run)));
}

function helps(build: Build, lead: string): readonly string[] {
  const { laid, run } = found(build, lead);
  if (run.cable === undefined) throw new Error(`${lead} cannot be laid`);
  return remediesFor(laid.laying, run.cable).map((remedy) => plain(remedyWords(build, remedy)));
}

/** With plain spaces, so that lines can be read here. */
function plain(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

const main = (lengthMm: number, over: Partial<LeadCable> = {}) =>
  measured('main', { ...over, runs: [{ to: 'plug', lengthMm }] });

describe('what is said of a run', () => {
  it('is what is left of it, or by how much it is too short', () => {
    // By hand: 250 + 60 behind the tray, then from the opening at 251, 90 to the middle of the connector, which is
    // 13.97 and 1.27 from its corner at 180, 130: 57.03 across and 41.27 down. With 15 of slack at each end, 438.3.
    expect(said(main(700), 'main')).toBe('laid, 261 mm to spare');
    expect(said(main(400), 'main')).toBe('too short by 39 mm');
  });

  it('tells a fill that is hardly over what one cable may fill as more than that', () => {
    const tooFull = (fill: number) =>
      plain(passageWords(laidMachine(), 'beside', { code: 'too-full', fill, limit: 0.53 }));
    const over = 'alone it would fill 54 % of Beside the board, where one cable may fill 53 %';
    expect([tooFull(0.5301), tooFull(0.54)]).toEqual([over, over]);
  });

  it('is the opening that does not let it through, before anything else', () => {
    const build = main(400, { diameterMm: 31 });
    expect(said(build, 'main')).toBe('does not go through Beside the board');
    const { run } = found(build, 'main');
    const barred = run.state.kind === 'laid' ? run.state.barred : [];
    expect(barred.map(({ opening, problem }) => plain(passageWords(build, opening, problem)))).toEqual([
      'Beside the board is 30 mm wide where it is narrowest, the cable 31 mm thick',
    ]);
  });

  it('is that there is no room for it behind the tray, which no cable that bends more tightly would help', () => {
    const machine = laidMachine();
    const tray = machine.case.tray && { ...machine.case.tray, behindMm: 5 };
    const shallow = { ...machine, case: { ...machine.case, ...(tray && { tray }) } };
    const { bendRadiusMm: _, ...unbent } = machine.case.leads.find(({ id }) => id === 'main')?.cable ?? {};
    const leads = shallow.case.leads.map((lead) =>
      lead.id === 'main' ? Object.assign({}, lead, { cable: unbent }) : lead,
    );
    const build = { ...shallow, case: { ...shallow.case, leads } };
    expect(said(build, 'main')).toBe('does not go through Beside the board');
    const { run } = found(build, 'main');
    const barred = run.state.kind === 'laid' ? run.state.barred : [];
    expect(barred.map(({ opening, problem }) => plain(passageWords(build, opening, problem)))).toEqual([
      'behind Beside the board there are 5 mm up to the side panel, and the cable is 12 mm thick',
    ]);
    expect(helps(build, 'main')).toEqual([
      'It would reach through Beside the board if that let it pass: behind Beside the board there are 5 mm up to the side panel, and the cable is 12 mm thick.',
    ]);
    // One as thick as the room lies flat behind it.
    expect(said(build, 'data')).toMatch(/^laid/);
  });

  it('is that an opening of its way holds too much', () => {
    const build = measured('data', { diameterMm: 22 }, main(700, { diameterMm: 22, bendRadiusMm: 0 }));
    expect(said(build, 'main')).toBe('crowded out: Beside the board is overfull');
  });

  it('is what is missing before it can be laid, with what to do', () => {
    const build = laidMachine({ seats: [] });
    expect(said(build, 'cpu')).toBe('not plugged');
    const { run } = found(build, 'cpu');
    const problem = run.state.kind === 'not-laid' ? run.state.problem : undefined;
    expect(problem && notLaidWords(build, run.lead, problem)).toBe(
      'CPU of CPU sits nowhere yet. Place it in the Wire area; then its way can be found.',
    );
    expect(said(laidMachine({ routes: [] }), 'cpu')).toBe('no way yet');
    const gone = laidMachine({ routes: [{ lead: 'cpu', plug: 'plug', paths: ['gone'] }] });
    expect(said(gone, 'cpu')).toBe('its way is gone');
  });

  it('names its ends and tells its way step by step', () => {
    const build = laidMachine();
    const { laid, run } = found(build, 'cpu');
    expect(endNames(build, run.lead, run.run)).toEqual(['supply unit', 'CPU_12V']);
    expect(runName(build, run.lead, run.run)).toBe('CPU');
    if (run.state.kind !== 'laid' || run.cable === undefined) throw new Error('It has a way');
    const steps = wayStepsOf(laid.laying, run.cable, run.state.route);
    expect(steps.map((step) => plain(stepWords(build, step)))).toEqual([
      'From supply unit behind the tray to Column, 250 mm',
      'From Column behind the tray to Above the board, 200 mm',
      'Through Above the board to the front of the tray',
      expect.stringMatching(/^From Above the board across the board to CPU_12V, \d+ mm$/),
    ]);
  });
});

describe('what would help a cable that is too short', () => {
  it('is another way, with what of it is in sight and what is left', () => {
    const round = { lead: 'main', plug: 'plug', paths: ['supply-column', 'column-above'] };
    const build: Build = { ...main(600), routes: [round] };
    expect(said(build, 'main')).toMatch(/^too short by/);
    const [first, ...more] = helps(build, 'main');
    expect(more).toEqual([]);
    expect(first).toMatch(
      /^It reaches by another way through Beside the board: \d+ mm long, \d+ mm of it in sight, \d+ mm to spare\.$/,
    );
  });

  it('is less slack, or an extension of so many millimetres', () => {
    const [less, extension, ...more] = helps(main(425), 'main');
    expect(more).toEqual([]);
    expect(less).toMatch(
      /^Nothing moved, it reaches through Beside the board with \d+(\.\d)? mm of slack at each end, less than you asked for\. Then look that no plug is pulled to the side\.$/,
    );
    expect(extension).toMatch(
      /^An extension of at least \d+ mm reaches through Beside the board, with the slack you asked for: \d+ mm long, \d+ mm of it in sight\. Lay its joint where it can be looked at\.$/,
    );
  });

  it('is an opening that would let it pass, or a cable that bends more tightly', () => {
    const stiff = main(700, { bendRadiusMm: 40 });
    const said = helps(stiff, 'main');
    expect(said).toHaveLength(2);
    expect(said[0]).toBe(
      'It would reach through Beside the board if that let it pass: its bend behind Beside the board takes 52 mm, and there are 25 mm up to the side panel.',
    );
    expect(said[1]).toMatch(
      /^A cable like it that may be bent to an inside radius of 13 mm reaches through Beside the board: /,
    );
  });
});
