import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { requestFrom } from '../../../electron/cli/request';
import { paintFor } from '../../../electron/cli/terminal';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

test.each([['--help'], ['-h'], ['help'], []])('Help is shown for %j', async (...args) => {
  const { code, out } = await leadwright(args);
  expect(code).toBe(0);
  expect(out).toContain('leadwright check FILE... [--json]');
});

test('The version is that of the package', async () => {
  const { code, out } = await leadwright(['--version']);
  expect(code).toBe(0);
  expect(out).toMatch(/^\d+\.\d+\.\d+\n$/);
});

test.each(['build', 'board', 'case'])('The schema of a %s is JSON Schema that names itself', async (kind) => {
  const { code, out } = await leadwright(['schema', kind]);
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    additionalProperties: false,
  });
});

describe('A command line that means nothing is answered with what was expected: 2', () => {
  test.each([
    [
      ['chekc', 'a.json'],
      'Expected the command “check”, “diagnose”, “identify”, “list”, “plan”, “schema” or “sheet”, found “chekc”.',
    ],
    [['check'], 'Expected at least one file after “check”.'],
    [['check', '--jsn', 'a.json'], 'There is no option “--jsn”.'],
    [['schema'], 'Expected “build”, “board” or “case” after “schema”, found nothing.'],
    [['schema', 'cable'], 'Expected “build”, “board” or “case” after “schema”, found “cable”.'],
    [
      ['schema', 'build', 'board'],
      'Expected “build”, “board” or “case” after “schema”, found “build board”.',
    ],
    [
      ['\u001b[2J'],
      'Expected the command “check”, “diagnose”, “identify”, “list”, “plan”, “schema” or “sheet”, found “\\u{001b}[2J”.',
    ],
  ])('%j', async (args, expected) => {
    const { code, out, err } = await leadwright(args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(`${expected}\nleadwright --help shows what there is.\n`);
  });
});

test('A file whose name begins with a hyphen goes after two hyphens', () => {
  expect(requestFrom(['check', '--', '--json'])).toEqual({
    ok: true,
    value: { command: 'check', files: ['--json'], json: false },
  });
});

test('A thousand files are checked in one run, and one that is broken keeps none of the others from it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lw-thousand-'));
  try {
    const files = Array.from({ length: 1_000 }, (_, at) => join(folder, `${at}.json`));
    for (const file of files) copyFileSync(demo('bench.board.json'), file);
    writeFileSync(join(folder, '500.json'), '{');
    const { code, out } = await leadwright(['check', '--json', ...files]);
    expect(code).toBe(2);
    const outcomes = JSON.parse(out).files.map(({ outcome }: { outcome: string }) => outcome);
    expect(outcomes).toEqual(files.map((_, at) => (at === 500 ? 'refused' : 'well-formed')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}, 60_000);

test('Colours are for a terminal whose owner has not asked for none', () => {
  const painted = (isTTY: boolean, env: Record<string, string>) => paintFor({ isTTY }, env)('x', 'red');
  expect(painted(true, {})).toBe('\u001b[31mx\u001b[39m');
  expect(painted(false, {})).toBe('x');
  expect(painted(true, { NO_COLOR: '1' })).toBe('x');
  expect(painted(true, { TERM: 'dumb' })).toBe('x');
});
