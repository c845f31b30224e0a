import { execFileSync } from 'node:child_process';
import { chmodSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import { check } from '../../../electron/cli/check';
import { CheckReportZ, type FileReport } from '../../../electron/cli/check-report';
import { bench } from '../../boards/findings/harness';
import { supplies } from '../../boards/findings/supplies';
import { bareBoard, scratchFolder } from '../scratch';
import { buildCommand, demo, leadwright, type Run } from './run-cli';

const NOBODY = 65_534;

beforeAll(buildCommand, 60_000);

/** The report for programs, without the trouble of starting one. */
async function reported(files: readonly string[]): Promise<readonly FileReport[]> {
  return CheckReportZ.parse(await check(files)).files;
}

function written(content: string | Uint8Array, name = 'a.build.json'): string {
  const path = join(scratchFolder(), name);
  writeFileSync(path, content);
  return path;
}

function expectNoTrace({ out, err }: Run): void {
  expect(out + err).not.toMatch(/^\s+at .+:\d+:\d+|node:internal|\.mjs:\d+|Error:|undefined/m);
}

describe('Builds', () => {
  test('A build that is wired right has nothing worse than a doubt: 0', async () => {
    const run = await leadwright(['check', demo('wired.build.json')]);
    expect(run.code).toBe(0);
    expect(run.out).not.toMatch(/DANGER|FAULT/);
    expect(run.err).toBe('');
  });

  test('A build with slips has its dangers and faults told, each with a reason and what to do: 1', async () => {
    const run = await leadwright(['check', demo('eight-slips.build.json')]);
    expect(run.code).toBe(1);
    expect(run.out).toMatch(/^ {2}DANGER {2}\S/m);
    expect(run.out).toMatch(/^ {2}FAULT {2}\S/m);
    expect(run.out).toMatch(/^ {4}To do: \S/m);
    expectNoTrace(run);
  });

  test('The report for programs says the same, finding by finding', async () => {
    const [file] = await reported([demo('eight-slips.build.json')]);
    if (file?.outcome !== 'checked') throw new Error(`It was ${file?.outcome}`);
    const { out } = await leadwright(['check', demo('eight-slips.build.json')]);
    expect(file.findings.length).toBeGreaterThan(7);
    for (const { severity, title, reason } of file.findings) {
      expect(out).toContain(`  ${severity.toUpperCase()}  ${title}\n    ${reason}`);
    }
  });

  test('A cable of another supply is a danger, with what arrives at every pin, and where from: 1', async () => {
    const { build } = supplies({ cables: 'ash', outlets: 'birch' }).bench;
    const path = written(serialize(build));
    const run = await leadwright(['check', path]);
    expect(run.code).toBe(1);
    expect(run.out).toMatch(/Pins.7 to.9 \(\+5.V\) would get \+12.V, from pin.3 of DRIVES 1 of BIRCH\./);
    const [file] = await reported([path]);
    if (file?.outcome !== 'checked') throw new Error(`It was ${file?.outcome}`);
    const drive = file.findings.find(({ pins }) => pins[0]?.connector === 'disk-power');
    // Serial ATA 1.0a power segment, from a hardware handbook, Table 13-7: P7 is +5 V.
    expect(drive?.arrivals?.[0]).toMatchObject({
      connector: 'disk-power',
      pin: '7',
      madeFor: 'supply-5v',
      from: [{ connector: 'birch-drives-1', pin: '3' }],
      voltsUsual: 12,
    });
  });

  test('A standoff that would short the board is a danger, with its place in the tray: 1', async () => {
    // Hole B of a microATX board is none of an ATX board (microATX specification v1.2, 2004, Figure 2).
    const { build } = bench().tray('atx', { id: 'b', name: 'B', xMm: 10.16, yMm: 209.55, seen: 'set' });
    const [file] = await reported([written(serialize(build))]);
    if (file?.outcome !== 'checked') throw new Error(`It was ${file?.outcome}`);
    expect(file.findings).toMatchObject([{ code: 'standoff-short', severity: 'danger', places: ['b'] }]);
    const run = await leadwright(['check', written(serialize(build))]);
    expect(run.code).toBe(1);
    expect(run.out).toContain('DANGER  Standoff\u00a0B would short the board.');
  });

  test('The report is printed as it is, and two runs give the same bytes', async () => {
    const files = [demo('eight-slips.build.json'), demo('wired.build.json')];
    const [first, second] = [
      await leadwright(['check', '--json', ...files]),
      await leadwright(['check', ...files, '--json']),
    ];
    expect(first).toEqual(second);
    expect(JSON.parse(first.out)).toEqual(await check(files));
  });
});

test('A board or case sheet is checked for its form, and the report says so', async () => {
  const files = [demo('bench.board.json'), demo('reading-room.case.json')];
  const run = await leadwright(['check', ...files]);
  expect(run.code).toBe(0);
  expect(run.out).toMatch(/A board sheet has nothing wired in it: only the file was checked/);
  expect((await reported(files)).map(({ outcome }) => outcome)).toEqual(['well-formed', 'well-formed']);
});

describe('A file that cannot be used is told by name, with what was expected and what to do: 2', () => {
  const sheet = () => JSON.parse(bareBoard('Bare'));
  const build = () => JSON.parse(readFileSync(demo('wired.build.json'), 'utf8'));
  const as = (value: unknown) => JSON.stringify(value);

  const BAD: Readonly<Record<string, readonly [code: string, make: () => string]>> = {
    'a file that is not there': ['not-found', () => join(scratchFolder(), 'none.build.json')],
    'an empty file': ['empty', () => written('')],
    'a file of spaces': ['empty', () => written(' \n\t ')],
    'text that is not JSON': ['not-json', () => written('{"format": "leadwright/build",\n  oops }')],
    'JSON with a comment': ['not-json', () => written('{} // mine')],
    'bytes that are not text': ['not-text', () => written(new Uint8Array([0xff, 0xfe, 0x00]))],
    'a picture': ['not-text', () => written(new Uint8Array([0x89, 0x50, 0x4e, 0x47]))],
    'JSON of something else': ['not-ours', () => written('{"name":"package"}')],
    'a list': ['not-ours', () => written('[]')],
    'a format of ours that does not exist': [
      'not-ours',
      () => written(as({ ...sheet(), format: 'leadwright/cable' })),
    ],
    'a newer version': ['newer', () => written(as({ ...sheet(), version: 999 }))],
    'fifty megabytes': ['too-large', () => written(new Uint8Array(50 * 1024 * 1024).fill(0x20))],
    'a hundred thousand levels': ['too-deep', () => written('['.repeat(100_000) + ']'.repeat(100_000))],
    'a million leads': [
      'invalid',
      () =>
        written(
          `${as({ ...sheet(), format: 'leadwright/case', outline: undefined, connectors: undefined }).slice(0, -1)},"leads":[${'1,'.repeat(999_999)}1]}`,
        ),
    ],
    'a key __proto__': ['invalid', () => written(bareBoard('Bare').replace('{', '{"__proto__":{"x":1},'))],
    'a key nobody knows': ['invalid', () => written(as({ ...sheet(), colour: 'red' }))],
    'the number 1e999': ['invalid', () => written(bareBoard('Bare').replace('200', '1e999'))],
    'an id twice': ['invalid', () => written(as(twice(build())))],
    'a seat of a lead that does not exist': [
      'invalid',
      () => written(as(withSeat(build(), { lead: 'nobodys' }))),
    ],
    'a seat on a connector that does not exist': [
      'invalid',
      () => written(as(withSeat(build(), { connector: 'nowhere' }))),
    ],
    'a folder': ['folder', () => join(scratchFolder())],
    'a pipe': ['special', () => pipe()],
    'a device': ['special', () => '/dev/null'],
  };

  test.each(Object.entries(BAD))('%s', { timeout: 30_000 }, async (_name, [code, make]) => {
    const path = make();
    const run = await leadwright(['check', path], { nodeOptions: ['--max-old-space-size=600'] });
    expect(run.code).toBe(2);
    expect(run.out).toBe('');
    expect(run.err).toContain(`“${path}”`);
    expect(run.err.trim().split('\n').length).toBeGreaterThanOrEqual(3);
    expectNoTrace(run);
    const [file] = await reported([path]);
    expect(file).toMatchObject({ file: path, outcome: 'refused', code });
    if (code === 'invalid' && file?.outcome === 'refused') {
      expect(file.fields.every(({ path, expected }) => path !== '' && expected !== '')).toBe(true);
      expect(file.fields.length).toBeGreaterThan(0);
    }
  });

  test('a file that this account may not read', async () => {
    const path = written(bareBoard('Bare'));
    chmodSync(path, 0o000);
    const run = await leadwright(['check', path], { uid: NOBODY });
    expect(run.code).toBe(2);
    expect(run.err).toContain('may not read it');
    expectNoTrace(run);
  });

  function pipe(): string {
    const path = join(scratchFolder(), 'p.build.json');
    execFileSync('mkfifo', [path]);
    return path;
  }

  interface LooseBuild {
    readonly case: { readonly leads: readonly object[] };
    readonly seats: readonly object[];
  }

  function twice(loose: LooseBuild): unknown {
    return { ...loose, case: { ...loose.case, leads: [...loose.case.leads, loose.case.leads[0]] } };
  }

  function withSeat(loose: LooseBuild, change: object): unknown {
    return { ...loose, seats: [{ ...loose.seats[0], ...change }] };
  }
});

test('One file that cannot be used does not stop the rest, and is the gravest of them', async () => {
  const files = [
    join(scratchFolder(), 'none.json'),
    demo('eight-slips.build.json'),
    demo('wired.build.json'),
  ];
  const run = await leadwright(['check', ...files]);
  expect(run.code).toBe(2);
  expect(run.out).toContain('eight-slips.build.json');
  expect(run.out).toContain('wired.build.json');
  expect((await reported(files)).map(({ outcome }) => outcome)).toEqual(['refused', 'checked', 'checked']);
});

describe('What a file says is shown, and does nothing to the terminal', () => {
  /** Whether something in it would move the cursor, ring, or turn the writing round. */
  const steers = (text: string) => /[\p{Cc}\p{Cf}]/u.test(text.replaceAll('\n', ''));

  test('in words', async () => {
    const { err } = await leadwright([
      'check',
      written(bareBoard('a\u001b[2Jb\u202ec\u0007d\u009b31m\u2066e')),
    ]);
    expect(err).toContain('[2Jb');
    expect(steers(err)).toBe(false);
  });

  test('as JSON, which still means the same', async () => {
    const name = 'left\u200eto\u200fright\u00ad\u{e0041}';
    const { out } = await leadwright(['check', '--json', written(bareBoard(name))]);
    expect(steers(out)).toBe(false);
    expect(JSON.parse(out).files[0].name).toBe(name);
  });

  test('and so is what a file is called', async () => {
    const { err } = await leadwright(['check', join(scratchFolder(), '\u001b[31mred\u202e.json')]);
    expect(err).toContain('\\u{001b}[31mred\\u{202e}.json');
    expect(steers(err)).toBe(false);
  });
});

test('Without a terminal there are no colours', async () => {
  const { out } = await leadwright(['check', demo('eight-slips.build.json')], {
    env: { FORCE_COLOR: '1', TERM: 'xterm' },
  });
  expect(out).not.toContain('\u001b');
});
