import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import { bareBoard, scratchFolder } from '../scratch';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

describe('leadwright list', () => {
  test('Prints values that an npm parser (csv-parse) reads by their headings, one row a wire end', async () => {
    const run = await leadwright(['list', demo('wired.build.json'), '--csv']);
    expect(run).toMatchObject({ code: 0, err: '' });
    const rows = parse(run.out, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
    expect(rows).toContainEqual(
      expect.objectContaining({ Lead: 'Power switch', Connector: 'PANEL', Pin: '6', Signal: 'power switch' }),
    );
    expect(rows.length).toBeGreaterThan(50);
  });

  test('Prints columns for people', async () => {
    const run = await leadwright(['list', demo('wired.build.json')]);
    expect(run.code).toBe(0);
    expect(run.out).toMatch(/^Lead +From +Wire +Plug +Hole +Connector +Pin +Signal +Name in the manual$/m);
    expect(run.out).toMatch(/^Power switch +power switch first leg .* PANEL +6 +power switch/m);
  });

  test('Prints every measured cable with its ends and lengths, read by the same parser', async () => {
    const run = await leadwright(['list', demo('wired.build.json'), '--cables', '--csv']);
    expect(run).toMatchObject({ code: 0, err: '' });
    const rows = parse(run.out, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
    expect(rows).toContainEqual(
      expect.objectContaining({ Cable: 'Front USB 3', From: 'Front panel', To: 'USB3', 'Long, mm': '480' }),
    );
    const shown = await leadwright(['list', demo('wired.build.json'), '--cables']);
    expect(shown.out).toMatch(/^Cable +From +To +Thick, mm +Long, mm +Way/m);
  });

  test.each([
    [['list'], 'Expected one file after “list”.'],
    [['list', 'a', '--json'], '“list” has no “--json”'],
    [['check', 'a', '--cables'], '“--cables” goes with “list” and a file.'],
    [['check', 'a', '--csv'], '“--csv” goes with “list” and a file.'],
  ])('%j is bad input: 2', async (args, said) => {
    expect(await leadwright(args)).toMatchObject({ code: 2, err: expect.stringContaining(said) });
  });

  test('A sheet has no leads on a board: 2', async () => {
    const board = join(scratchFolder(), 'a.board.json');
    writeFileSync(board, bareBoard('Bare'));
    expect(await leadwright(['list', board])).toMatchObject({
      code: 2,
      err: expect.stringContaining('expected a build'),
    });
  });
});
