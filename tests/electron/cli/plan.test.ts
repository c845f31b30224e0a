import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { PlanReportZ } from '../../../electron/cli/plan-report';
import { bareBoard, scratchFolder } from '../scratch';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

/** The demo with its wiring changed, as a file. */
function changed(change: (build: Record<string, never>) => unknown): string {
  const path = join(scratchFolder(), 'a.build.json');
  writeFileSync(path, JSON.stringify(change(JSON.parse(readFileSync(demo('wired.build.json'), 'utf8')))));
  return path;
}

const bare = () => changed((build) => ({ ...build, seats: [] }));

describe('leadwright plan', () => {
  test('Says where every plug of an unwired build goes, that it is the best, and what to do: 0', async () => {
    const run = await leadwright(['plan', bare()]);
    expect(run.err).toBe('');
    expect(run.code).toBe(0);
    expect(run.out).toContain('Every plug has its place. This is the best arrangement');
    expect(run.out).toMatch(/^ {2}Power switch on pins.6 and 8 of PANEL\.$/m);
    expect(run.out).toMatch(/^ {4}Seat Power switch on pins.6 and 8 of PANEL\.$/m);
  });

  test('The report for programs has its written form, and two runs give the same bytes', async () => {
    const [one, two] = [
      await leadwright(['plan', '--json', demo('eight-slips.build.json')]),
      await leadwright(['plan', demo('eight-slips.build.json'), '--json']),
    ];
    const report = PlanReportZ.parse(JSON.parse(one.out));
    expect(report).toMatchObject({ proved: true, unserved: [], cost: { danger: 0, unserved: 0 } });
    expect(report.differences.length).toBeGreaterThan(5);
    expect(two.out).toBe(one.out);
  });

  test('A plug that is to be kept stays, and what then has no place is said with what would help: 1', async () => {
    const astray = changed((build) => ({
      ...build,
      seats: [{ lead: 'power-switch', plug: 'plug', connector: 'speaker', at: [0, 0], turn: 0 }],
    }));
    const run = await leadwright(['plan', astray, '--keep', 'power-switch']);
    expect(run.code).toBe(1);
    expect(run.out).toMatch(/NO PLACE {2}.*Speaker/);
  });

  test.each([
    [['plan'], 'Expected one file after “plan”.'],
    [['plan', 'a', 'b'], 'Expected one file after “plan”.'],
    [['check', 'a', '--keep', 'b'], '“--keep” goes with “plan” and a file.'],
    [['plan', '--keep'], 'Expected a lead after “--keep”'],
    [['plan', 'no-such-file'], 'no-such-file'],
  ])('%j is bad input: 2', async (args, said) => {
    const run = await leadwright(args);
    expect(run.code).toBe(2);
    expect(run.err).toContain(said);
  });

  test('A sheet has nothing to plan, and a lead that is not there cannot be kept: 2', async () => {
    const board = join(scratchFolder(), 'a.board.json');
    writeFileSync(board, bareBoard('Bare'));
    expect(await leadwright(['plan', board])).toMatchObject({
      code: 2,
      err: expect.stringContaining('expected a build'),
    });
    const kept = await leadwright(['plan', bare(), '--keep', 'nothing']);
    expect(kept).toMatchObject({
      code: 2,
      err: expect.stringContaining('There is no lead “nothing” to keep.'),
    });
  });
});
