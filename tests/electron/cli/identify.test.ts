import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { IdentifyReportZ } from '../../../electron/cli/identify-report';
import { bareBoard, scratchFolder } from '../scratch';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

/**
 * The 2x5 header of the Front Panel I/O Connectivity Design Guide v1.3, Figure 10, as a person meets it: no post
 * at 10.
 */
const HEADER = {
  id: 'panel',
  print: 'PANEL',
  title: 'switches and LEDs',
  family: 'pin-header',
  grid: { rows: 2, cols: 5, pitchMm: 2.54, numbering: { scheme: 'zig-zag', from: 'bottom-left' } },
  pins: [{ pin: '10', missing: true }],
  place: { xMm: 10, yMm: 10, turn: 0 },
};

/**
 * What a meter shows on it with the values that are usual behind such pins: 330 ohms to the LEDs, 10 kilohms to
 * the switches.
 */
const READINGS = [
  { kind: 'ohms', pin: '1', ohms: 380 },
  { kind: 'ohms', pin: '5', ohms: 0.2 },
  { kind: 'ohms', pin: '6', ohms: 10_100 },
  { kind: 'ohms', pin: '8', ohms: 0.3 },
  { kind: 'ohms', pin: '9', ohms: 'open' },
  { kind: 'volts', pin: '6', supply: 'standby', volts: 3.3 },
];

function boardWith(header: object): string {
  const path = join(scratchFolder(), 'a.board.json');
  const board: object = JSON.parse(bareBoard('Bench'));
  writeFileSync(path, JSON.stringify({ ...board, connectors: [header] }));
  return path;
}

const measured = (readings: readonly object[]) => boardWith({ ...HEADER, readings });

describe('leadwright identify', () => {
  test('Tells the pins of a board sheet from its readings, and what to measure next: 0', async () => {
    const run = await leadwright(['identify', measured(READINGS)]);
    expect(run).toMatchObject({ code: 0, err: '' });
    const said = run.out.replaceAll('\u00a0', ' ');
    expect(said).toContain('PANEL, 6 readings. One layout has');
    expect(said).toMatch(/^ {4}pin 6: certain {2}power switch/m);
    expect(said).toMatch(/^ {4}pin 5: certain {2}ground/m);
    expect(said).toMatch(/^ {4}Next: .+|Nothing that is safe to measure would tell more\.$/m);
    expect(said).not.toContain('CONTRADICTION');
  });

  test('The report for programs has its written form, and two runs give the same bytes', async () => {
    const file = measured(READINGS.slice(0, 2));
    const [one, two] = [
      await leadwright(['identify', file, '--json']),
      await leadwright(['identify', '--json', file]),
    ];
    const { connectors } = IdentifyReportZ.parse(JSON.parse(one.out));
    const [panel] = connectors;
    if (panel?.outcome !== 'told') throw new Error(one.out);
    expect(panel).toMatchObject({ connector: 'panel', readings: 2, contradictions: [] });
    expect(panel.pins.map(({ pin }) => pin)).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9']);
    const [first] = panel.pins[4]?.chances ?? [];
    expect(first?.signal).toBe('ground');
    const outcomes = panel.next?.outcomes ?? [];
    expect(outcomes.length).toBeGreaterThan(1);
    const all = outcomes.reduce((sum, { chance }) => sum + chance, 0);
    expect(all).toBeGreaterThan(0.9);
    expect(all).toBeLessThanOrEqual(1.0001);
    expect(two.out).toBe(one.out);
  });

  test('Readings that cannot both be true are named with what they showed: 1', async () => {
    const run = await leadwright([
      'identify',
      measured([...READINGS, { kind: 'volts', pin: '5', supply: 'running', volts: 12 }]),
    ]);
    expect(run.code).toBe(1);
    expect(run.out.replaceAll('\u00a0', ' ')).toMatch(
      /CONTRADICTION {2}These cannot all be true: Resistance from pin 5 to ground: 0\.2 Ω; Voltage at pin 5, running: 12 V\./,
    );
  });

  test('A connector without readings is told of when it is named; unnamed, a build has none to tell of: 0', async () => {
    const named = await leadwright(['identify', demo('wired.build.json'), '--connector', 'speaker']);
    expect(named).toMatchObject({ code: 0, err: '' });
    expect(named.out).toContain('Nothing was measured yet.');
    const unnamed = await leadwright(['identify', demo('wired.build.json')]);
    expect(unnamed.code).toBe(0);
    expect(unnamed.out).toContain('No connector has readings.');
  });

  test('A connector that has no pins cannot be told: 2', async () => {
    const pins = Array.from({ length: 10 }, (_, at) => ({ pin: String(at + 1), missing: true }));
    const run = await leadwright(['identify', boardWith({ ...HEADER, pins, readings: READINGS })]);
    expect(run.code).toBe(2);
    expect(run.out).toContain('Every pin of this connector is marked as missing.');
  });

  test.each([
    [['identify'], 'Expected one file after “identify”.'],
    [['identify', 'a', 'b'], 'Expected one file after “identify”.'],
    [['identify', 'no-such-file'], 'no-such-file'],
    [['identify', 'a', '--turn', '90'], '“--turn” goes with “sheet” and a file.'],
    [['identify', 'a', '--keep', 'b'], '“--keep” goes with “plan” and a file.'],
    [['identify', demo('wired.build.json'), '--connector', 'nowhere'], 'There is no connector “nowhere”.'],
  ])('%j is bad input: 2', async (args, said) => {
    const run = await leadwright(args);
    expect(run).toMatchObject({ code: 2, out: '' });
    expect(run.err).toContain(said);
  });

  test('A case sheet has no connectors: 2', async () => {
    const path = join(scratchFolder(), 'a.case.json');
    writeFileSync(
      path,
      JSON.stringify({ format: 'leadwright/case', version: 1, id: 'a', name: 'A', leads: [] }),
    );
    const run = await leadwright(['identify', path]);
    expect(run.code).toBe(2);
    expect(run.err).toContain('expected a board sheet or a build, found a case sheet');
  });
});
