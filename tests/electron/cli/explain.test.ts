import { beforeAll, describe, expect, test } from 'vitest';
import { check } from '../../../electron/cli/check';
import { requestFrom } from '../../../electron/cli/request';
import { buildCommand, demo, leadwright } from './run-cli';

const SLIPS = demo('eight-slips.build.json');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

beforeAll(buildCommand, 60_000);

describe('The way of the current behind a finding', () => {
  test('is told step by step with volts and amps, for each state in which something flows', async () => {
    const { code, out, err } = await leadwright(['check', SLIPS, '--explain', 'usb-on-1394']);
    expect({ code, err }).toEqual({ code: 1, err: '' });
    expect(plain(out)).toMatch(/^usb-on-1394 front-usb: /);
    expect(plain(out)).toMatch(/^ {2}Running, sockets in use: 23 mA flows, from the supply to ground:$/m);
    expect(plain(out)).toMatch(/^ {4}1\. the \+12 V rail of the board: 12 V, 23 mA$/m);
    expect(plain(out)).toMatch(
      /^ {4}2\. through a resettable fuse in the board, which has tripped, to pin 7 /m,
    );
    expect(plain(out)).toMatch(/, to ground: 0 V, [\d.]+ mA$/m);
  });

  test('of a power LED the wrong way round is there only while the machine sleeps and turns the pair', async () => {
    const { code, out } = await leadwright(['check', SLIPS, '--explain', 'reversed:power-led']);
    expect(code).toBe(1);
    expect(out.match(/^ {2}\S.* flows, from the supply to ground:$/gm)).toHaveLength(1);
    expect(out).toContain('Asleep: ');
  });

  test('of a lead that nothing flows through is that there is none', async () => {
    const { out } = await leadwright(['check', SLIPS, '--explain', 'shifted:drive-led']);
    expect(out).toContain('In no state of the machine does a current flow there.');
  });

  test('of a finding that is not there offers the nearest: 2', async () => {
    for (const [typed, offered] of [
      ['revresed', 'reversed'],
      ['reversed:power-lde', 'reversed:power-led'],
    ] as const) {
      const { code, out, err } = await leadwright(['check', SLIPS, '--explain', typed]);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toBe(`${SLIPS}: There is no finding “${typed}”. Perhaps “${offered}” is meant.\n`);
    }
  });

  test('of nothing near, lists what was found: 2', async () => {
    const { code, err } = await leadwright(['check', SLIPS, '--explain', 'zzz']);
    expect(code).toBe(2);
    expect(err).toMatch(/There is no finding “zzz”\. Found are usb-on-1394, .*reversed/);
  });
});

test.each([
  [['check', 'a.json', '--explain'], 'Expected a finding after “--explain”'],
  [['check', 'a.json', '--explain', 'reversed', '--json'], 'does not go with “--json”'],
  [['schema', 'build', '--explain', 'reversed'], 'goes with “check” and a file'],
] as const)('%j is answered with what was expected', (args, expected) => {
  const request = requestFrom([...args]);
  expect(request).toMatchObject({ ok: false });
  expect(!request.ok && request.problem).toContain(expected);
});

test('The report for programs carries the numbers, named with their units', async () => {
  const [file] = (await check([SLIPS])).files;
  if (file?.outcome !== 'checked') throw new Error(`It was ${file?.outcome}`);
  const numbers = new Map(file.findings.map((finding) => [finding.code, finding.numbers]));
  // 5.25 V, the most of the +5 V rail (microATX specification v1.2, Table 7), backwards across the LED.
  expect(numbers.get('reversed')).toEqual({ reverseVolts: expect.closeTo(5.25, 1) });
  const held = numbers.get('input-held');
  expect(held?.voltsLow).toBeLessThanOrEqual(held?.voltsUsual ?? Number.NaN);
  expect(held?.voltsUsual).toBeLessThanOrEqual(held?.voltsHigh ?? Number.NaN);
  expect(numbers.get('switches-exchanged')).toBeUndefined();
});
