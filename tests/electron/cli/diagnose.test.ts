import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { DiagnoseReportZ } from '../../../electron/cli/diagnose-report';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

async function reportOf(args: readonly string[]) {
  const { out, err, code } = await leadwright(['diagnose', ...args, '--json']);
  return { report: DiagnoseReportZ.parse(JSON.parse(out)), err, code, out };
}

describe('leadwright diagnose', () => {
  test('Names suspects whose chances add up, and the next trials, most for their effort first: 0', async () => {
    const { report, code, err } = await reportOf([
      demo('wired.build.json'),
      '--observe',
      'nothing-on-press',
      'standby-light',
    ]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(report.observed).toEqual(['nothing-on-press', 'standby-light']);
    const all = report.suspects.reduce((sum, { chance }) => sum + chance, report.noneOfThese);
    expect(all).toBeCloseTo(1, 9);
    expect(report.stop).toEqual([]);
    const [first, ...others] = report.next.map(({ gainBits, effort }) => gainBits / effort);
    expect(others.length).toBeGreaterThan(2);
    expect(Math.max(...others)).toBeLessThanOrEqual(first ?? 0);
  });

  test('A stuck reset button is first after two trials, and a typical build stands in for no file: 0', async () => {
    const { report, code } = await reportOf([
      '--observe',
      'runs_no_display',
      '--observe',
      'kept-in-reset',
      '--tried',
      'bare-pins=gone',
      'measure-reset-button=always-closed',
    ]);
    expect(code).toBe(0);
    expect(report.file).toBeNull();
    expect(report.observed).toEqual(['no-picture', 'kept-in-reset']);
    expect(report.suspects[0]?.chance).toBeGreaterThan(0.5);
    expect(['switch-stuck', 'panel-lead-short']).toContain(report.suspects[0]?.cause);
    expect(report.worksNow?.provesNot).toContain('does not prove');
  });

  test('After smoke it says stop and what not to plug in again, and only looks are left: 1', async () => {
    const { report, code } = await reportOf(['--observe', 'smoke', 'twitch']);
    expect(code).toBe(1);
    expect(report.next.length).toBeGreaterThan(0);
    expect(report.next.filter(({ powered }) => powered)).toEqual([]);
    expect(report.stop.join(' ')).toMatch(
      /^Stop\. Pull the mains plug.*Do not plug in again: the part that smoked/,
    );
    const { out } = await leadwright(['diagnose', '--observe', 'smoke', 'twitch']);
    expect(out).toContain('  Stop. Pull the mains plug');
    expect(out).not.toContain('Next:');
    expect(out).toContain('with the mains plug pulled, you may look:');
  });

  test('After a look that found something burnt it says the same, and starts nothing: 1', async () => {
    const { report, code } = await reportOf(['--observe', 'power-light-dark', '--tried', 'look-board=burnt']);
    expect(code).toBe(1);
    expect(report.next.filter(({ powered }) => powered)).toEqual([]);
    expect(report.stop.join(' ')).toMatch(/^Stop\. Pull .*Do not plug in again: the part that is burnt/);
  });

  test('On a wiring that is a danger it says why nothing is started, in words and for programs: 0', async () => {
    const slips = demo('eight-slips.build.json');
    const { report, code: forPrograms } = await reportOf([slips, '--observe', 'usb-missing']);
    expect(forPrograms).toBe(0);
    expect(report.heldBack?.risk).toBe('danger');
    expect(report.next.length).toBeGreaterThan(0);
    expect(report.next.filter(({ powered }) => powered)).toEqual([]);
    const { out, code } = await leadwright(['diagnose', slips, '--observe', 'usb-missing']);
    expect(code).toBe(0);
    expect(out).toContain('Held back: the checks name a danger in this wiring. Do not connect the mains');
  });

  test('Two things at once are named where one explains it badly, and none of these where it wins: 0', async () => {
    const two = [
      'fan_rpm_zero',
      'fan_full_speed',
      'usb_not_detected',
      'usb_not_recognised_msg',
      'front_audio_not_detected',
    ];
    const { report, code } = await reportOf(['--observe', ...two]);
    expect(code).toBe(0);
    expect(report.doubles[0]?.words).toMatch(/^two things at once: /);
    const all = report.suspects.reduce((sum, { chance }) => sum + chance, report.noneOfThese);
    expect(all + report.allDoubles).toBeCloseTo(1, 9);
    const one = await reportOf(['--observe', 'clock-wrong']);
    expect(one.report.doubles).toEqual([]);
    const { out } = await leadwright([
      'diagnose',
      '--observe',
      'breaker-trips',
      'rear-port-blocked',
      'fan-twitch',
      'clock-wrong',
    ]);
    expect(out).toContain('fits none of the known faults well');
  });

  test('Says how often each cause is taken to be met, and takes another word for it: 0, and 2 for a wrong one', async () => {
    const usual = await reportOf(['--observe', 'nothing-on-press']);
    expect(usual.report.priors.source).toBe('common practice, no source');
    expect(usual.report.priors.causes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    const own = await reportOf(['--observe', 'nothing-on-press', '--prior', 'outlet_dead=20']);
    expect(own.report.suspects[0]?.cause).toBe('outlet-dead');
    expect(own.report.priors.causes.find(({ cause }) => cause === 'outlet-dead')?.factor).toBe(20);
    const refusals = {
      'outlet-daed=2': 'Did you mean “outlet-dead”?',
      'outlet-dead': 'Expected a cause with a factor after “--prior”',
      'outlet-dead=0': 'Expected a number from 0.01 to 100 after “outlet-dead=”, found “0”',
    };
    for (const [prior, words] of Object.entries(refusals)) {
      const { err, code } = await leadwright(['diagnose', '--prior', prior]);
      expect(code).toBe(2);
      expect(err).toContain(words);
    }
  });

  test('In words: suspects, none of these, steps and what each result says: 0', async () => {
    const { out, code } = await leadwright(['diagnose', '--observe', 'no-picture', '--not', 'beep-code']);
    expect(code).toBe(0);
    expect(out).toContain('a typical build stands in');
    expect(out).toContain('none of these');
    expect(out).toMatch(/^ {2}Next: .+ bits, about .+ min\)$/m);
    expect(out).toMatch(/^ {4}1\. /m);
  });

  test('With nothing noticed it says so; what is said both ways is named: 0 and 1', async () => {
    const { out, code } = await leadwright(['diagnose']);
    expect(code).toBe(0);
    expect(out).toContain('Nothing was noticed yet');
    const both = await reportOf(['--observe', 'twitch', '--not', 'twitch_then_off']);
    expect(both.code).toBe(1);
    expect(both.report.contradicted).toEqual(['twitch']);
  });

  test('What excludes each other is named as such, and a light that is lit and dark is looked at again: 1', async () => {
    const args = ['--observe', 'standby-light', 'no-standby-light'];
    const { report, code } = await reportOf(args);
    expect(code).toBe(1);
    expect([report.contradicted, report.excluding]).toEqual([[], [['standby-light', 'no-standby-light']]]);
    const { out } = await leadwright(['diagnose', ...args]);
    expect(out).toMatch(/^ {2}Said to be so, and they exclude each other: .+ Look again\.$/m);
  });

  test('Says with every trial what to mind, and calls a lead by its name', async () => {
    const { report } = await reportOf(['--observe', 'no-picture', '--tried', 'bare-pins=gone']);
    const without = (id: string) => (id === 'look-rear-switch' ? 'Only from outside' : 'Mains plug out');
    for (const { trial, cautions, powered } of report.next)
      expect(cautions[0]).toContain(powered ? 'Mains is on' : without(trial));
    expect(report.next.map(({ words }) => words)).toContain('Put Power switch back, and no other lead');
    const { out } = await leadwright(['diagnose', '--observe', 'no-picture', '--tried', 'bare-pins=gone']);
    expect(out).toContain(report.next[0]?.cautions[0]);
  });

  test('Five hundred observations are taken, and two runs give the same bytes', async () => {
    const many = Array.from({ length: 500 }, (_, at) => (at % 2 === 0 ? 'no-picture' : 'no-beep'));
    const one = await reportOf(['--observe', ...many]);
    expect(one.report.observed).toEqual(['no-picture', 'no-beep']);
    expect((await reportOf(['--observe', 'no-picture', 'no-beep'])).out).toBe(one.out);
  });

  test.each([
    [
      ['--observe', 'nothing-on-pres'],
      'There is no observation “nothing-on-pres”. Did you mean “nothing-on-press”?',
    ],
    [['--not', 'smoek'], 'There is no observation “smoek”. Did you mean “smoke”?'],
    [['--observe', 'smoke', 'a.build.json'], 'A file goes before the first option.'],
    [['--observe'], 'Expected an observation, as “nothing-on-press”, after “--observe”.'],
    [['--tried', 'bare-pins'], 'Expected a trial with its result after “--tried”'],
    [['--tried', 'bare-pin=same'], 'There is no trial “bare-pin”. Did you mean “bare-pins”?'],
    [['--tried', 'bare-pins=maybe'], '“bare-pins” has no result “maybe”. It has: gone, other, same.'],
    [['--tried', 'bare-pins=same', 'bare-pins=gone'], 'The trial “bare-pins” has two results.'],
    [['a', 'b'], 'Expected at most one file after “diagnose”, found 2.'],
    [['no-such-file'], 'no-such-file'],
    [[demo('bench.board.json')], 'expected a build, found a sheet'],
  ])('%j is bad input: 2', async (args, said) => {
    const run = await leadwright(['diagnose', ...args]);
    expect(run).toMatchObject({ code: 2, out: '' });
    expect(run.err).toContain(said);
  });

  test('Its options go with no other command: 2', async () => {
    const run = await leadwright(['check', 'a', '--observe', 'smoke']);
    expect(run.code).toBe(2);
    expect(run.err).toContain('“--observe” goes with “diagnose”.');
  });

  test('Takes up the log in the file, from where it was started over; what is named goes before it: 0', async () => {
    const build = JSON.parse(readFileSync(demo('wired.build.json'), 'utf8'));
    const noticed = (what: string, answer: string) => ({ kind: 'noticed', what, answer });
    const log = [
      noticed('smoke', 'yes'),
      { kind: 'started-over' },
      noticed('no-picture', 'yes'),
      noticed('no-beep', 'yes'),
      noticed('nobody-asks-that-any-more', 'yes'),
      { kind: 'tried', trial: 'measure-reset-button', result: 'always-closed' },
    ];
    const file = join(mkdtempSync(join(tmpdir(), 'lw-log-')), 'logged.build.json');
    writeFileSync(file, JSON.stringify({ ...build, trouble: { log } }));
    const { report, code } = await reportOf([file, '--not', 'no-beep']);
    expect(code).toBe(0);
    expect([report.observed, report.notObserved, report.stop]).toEqual([['no-picture'], ['no-beep'], []]);
    expect(report.suspects[0]?.cause).toBe('switch-stuck');
  });
});
