import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { imageSize } from 'image-size';
import { beforeAll, describe, expect, test } from 'vitest';
import { SheetReportZ } from '../../../electron/cli/sheet';
import { bareBoard, scratchFolder } from '../scratch';
import { buildCommand, demo, leadwright } from './run-cli';

beforeAll(buildCommand, 60_000);

const BOARD = demo('bench.board.json');

async function asked(args: readonly string[], env: Readonly<Record<string, string>> = {}) {
  const run = await leadwright(['sheet', ...args], { env });
  return { ...run, err: run.err.replaceAll('\u00a0', ' '), out: run.out.replaceAll('\u00a0', ' ') };
}

describe('Labels of cables are printed to the file that was named', () => {
  test('as many and as large as was asked for, with both ends of each', async () => {
    const out = join(scratchFolder(), 'labels.svg');
    const size = ['--label-size', '50x20', '--paper', 'letter', '--flat'];
    const { code } = await asked([demo('wired.build.json'), '--out', out, '--labels', ...size]);
    expect(code).toBe(0);
    const svg = readFileSync(out, 'utf8');
    expect(svg).toContain('Front USB 3');
    expect(svg.match(/other end:/g)?.length).toBeGreaterThan(20);
  });
});

describe('The pinout of a board is printed to the file that was named', () => {
  test('as PDF, of a board sheet', async () => {
    const out = join(scratchFolder(), 'bench.pdf');
    const { code, out: said } = await asked([BOARD, '--out', out]);
    expect(code).toBe(0);
    expect(said).toMatch(/^Wrote .*bench\.pdf: \d+ pages\.\n$/);
    expect(readFileSync(out, 'latin1')).toMatch(/^%PDF-1\.7[\s\S]*%%EOF\s*$/);
  });

  test('as SVG, of the board in a build', async () => {
    const out = join(scratchFolder(), 'panel.svg');
    const { code } = await asked([
      demo('wired.build.json'),
      '--out',
      out,
      '--pinout',
      '--connector',
      'panel',
    ]);
    expect(code).toBe(0);
    const svg = readFileSync(out, 'utf8');
    const titles = [...svg.matchAll(/<title>Pin (\d+): /g)].map(([, pin]) => Number(pin));
    expect(titles.toSorted((a, b) => a - b)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  });

  test('as the board lies in the build where nothing else is asked for', async () => {
    const folder = scratchFolder();
    const file = join(folder, 'lies.build.json');
    const build = JSON.parse(readFileSync(demo('wired.build.json'), 'utf8'));
    writeFileSync(file, JSON.stringify({ ...build, view: { turn: 180, mirrored: true } }));
    const outs = ['plain.svg', 'asked.svg', 'other.svg'].map((name) => join(folder, name));
    const [plain = '', turned = '', other = ''] = outs;
    await asked([file, '--out', plain, '--pinout']);
    await asked([file, '--out', turned, '--pinout', '--turn', '180', '--mirror']);
    await asked([file, '--out', other, '--pinout', '--turn', '90']);
    expect(readFileSync(plain, 'utf8')).toBe(readFileSync(turned, 'utf8'));
    expect(readFileSync(plain, 'utf8')).not.toBe(readFileSync(other, 'utf8'));
  });

  test('as PNG of one page at a scale, with a report for programs', async () => {
    const out = join(scratchFolder(), 'first.png');
    const args = [BOARD, '--out', out, '--page', '1', '--scale', '0.5', '--paper', 'letter', '--json'];
    const { code, out: said } = await asked(args);
    expect(code).toBe(0);
    const { file } = SheetReportZ.parse(JSON.parse(said));
    expect(file).toMatchObject({
      outcome: 'written',
      out,
      kind: 'png',
      pages: 1,
      pixels: { widthPx: 408, heightPx: 528 },
      bytes: readFileSync(out).length,
    });
    expect(imageSize(readFileSync(out))).toMatchObject({ width: 408, height: 528 });
  });

  test('the same every time on a day that SOURCE_DATE_EPOCH names', async () => {
    const folder = scratchFolder();
    const [first, second] = [join(folder, '1.pdf'), join(folder, '2.pdf')];
    const args = ['--connector', 'panel', '--turn', '180', '--mirror'];
    for (const out of [first, second])
      expect((await asked([BOARD, '--out', out, ...args], { SOURCE_DATE_EPOCH: '0' })).code).toBe(0);
    expect(readFileSync(first).equals(readFileSync(second))).toBe(true);
  });
});

describe('Of a build it is the bench sheet', () => {
  const build = demo('wired.build.json');

  test('unless the pinout is asked for', async () => {
    const folder = scratchFolder();
    const title = async (...more: readonly string[]) => {
      const out = join(folder, 'x.svg');
      expect((await asked([build, '--out', out, ...more])).code).toBe(0);
      return /<title>([^<]*)<\/title>/.exec(readFileSync(out, 'utf8'))?.[1];
    };
    expect(await title()).toBe('Study machine 3: bench sheet');
    expect(await title('--part', 'list', '--part', 'steps')).toBe('Study machine 3: bench sheet');
    expect(await title('--pinout', '--connector', 'panel')).toBe('Tern B2: pinout');
    expect(await title('--header', 'panel', '--mirror')).toBe('Study machine 3: PANEL');
    expect(await title('--trouble', '--paper', 'letter')).toBe('Study machine 3: trouble sheet');
  });

  test.each([
    [
      [build, '--part', 'lid'],
      'Expected “steps”, “close-ups”, “meter”, “list” or “cables” after “--part”, found “lid”.',
    ],
    [[build, '--part', 'list', '--pinout'], 'it does not go with “--pinout”'],
    [[build, '--part', 'list', '--connector', 'panel'], '“--connector” goes with “--pinout”'],
    [[build, '--header', 'panel', '--paper', 'a4'], 'it does not go with “--paper”'],
    [
      [build, '--trouble', '--part', 'list'],
      '“--trouble” is a paper of its own: it does not go with “--part”.',
    ],
    [[BOARD, '--trouble'], 'A trouble sheet is of a build, and this is a board sheet.'],
    [[build, '--connector', 'panel'], 'Add “--pinout”, or leave “--connector” out.'],
    [[BOARD, '--part', 'list'], 'A bench sheet is of a build, and this is a board sheet.'],
    [[BOARD, '--header', 'panel'], 'A header with its plugs is of a build, and this is a board sheet.'],
    [[build, '--header', 'pannel'], 'Did you mean “panel”?'],
    [
      [build, '--labels', '--part', 'list'],
      '“--labels” is a paper of its own: it does not go with “--part”.',
    ],
    [[build, '--labels', '--turn', '90'], '“--labels” is a paper of its own: it does not go with “--turn”.'],
    [
      [build, '--labels', '--label-size', '600x1'],
      'Expected width x height in millimetres, such as 80x16, from 20x8 to 120x60 after “--label-size”, found “600x1”.',
    ],
    [[build, '--flat'], '“--flat” goes with “--labels”.'],
    [[BOARD, '--labels'], 'A sheet of cable labels is of a build, and this is a board sheet.'],
  ])('options that do not go together are refused: %j', async (args, said) => {
    const out = join(scratchFolder(), 'x.svg');
    const { code, err } = await asked([...args, '--out', out]);
    expect(code).toBe(2);
    expect(err).toContain(said);
    expect(existsSync(out)).toBe(false);
  });
});

describe('What cannot be printed is answered with what was expected, 2, and nothing is written', () => {
  const out = '/nowhere/x.pdf';
  test.each([
    [[], 'Expected one file after “sheet”, found none.'],
    [['a.json', 'b.json', '--out', out], 'Expected one file after “sheet”, found 2.'],
    [[BOARD], 'Expected “--out” with a file that ends in .pdf, .svg or .png.'],
    [
      [BOARD, '--out', 'x.doc'],
      'Expected a file that ends in .pdf, .svg or .png after “--out”, found “x.doc”.',
    ],
    [[BOARD, '--out', out, '--turn', '45'], 'Expected 0, 90, 180 or 270 after “--turn”, found “45”.'],
    [[BOARD, '--out', out, '--paper', 'a5'], 'Expected “a4” or “letter” after “--paper”, found “a5”.'],
    [
      [BOARD, '--out', 'x.png', '--scale', '99'],
      'Expected a number from 0.25 to 8 after “--scale”, found “99”.',
    ],
    [
      [BOARD, '--out', out, '--scale', '2'],
      '“--scale” goes with a .png file: the others are sharp at any size.',
    ],
    [[BOARD, '--out', out, '--page', 'one'], 'Expected the number of a page after “--page”, found “one”.'],
    [[BOARD, '--out'], 'Expected a file that ends in .pdf, .svg or .png after “--out”.'],
  ])('%j', async (args, expected) => {
    const { code, out: said, err } = await asked(args);
    expect({ code, said }).toEqual({ code: 2, said: '' });
    expect(err).toBe(`${expected}\nleadwright --help shows what there is.\n`);
  });

  test('an option of sheet does not go with another command', async () => {
    const { code, err } = await leadwright(['check', BOARD, '--mirror']);
    expect(code).toBe(2);
    expect(err).toContain('“--mirror” goes with “sheet” and a file.');
  });

  test('a connector that is not there, with the nearest that is', async () => {
    const file = join(scratchFolder(), 'x.pdf');
    const { code, err } = await asked([BOARD, '--out', file, '--connector', 'pannel']);
    expect(code).toBe(2);
    expect(err).toContain('There is no connector “pannel” on the board.\n  Did you mean “panel”?');
    expect(() => readFileSync(file)).toThrow('ENOENT');
  });

  test('a case sheet, which has no board', async () => {
    const { code, err } = await asked([demo('reading-room.case.json'), '--out', out]);
    expect(code).toBe(2);
    expect(err).toContain('It is a case sheet; a board sheet or a build was expected.');
  });

  test('a folder that is not there, and a name that a folder has', async () => {
    const folder = scratchFolder();
    const board = join(folder, 'bare.board.json');
    writeFileSync(board, bareBoard('Bare'));
    mkdirSync(join(folder, 'taken.pdf'));
    const gone = await asked([board, '--out', join(folder, 'gone', 'x.pdf')]);
    expect(gone.code).toBe(2);
    expect(gone.err).toContain('There is no such folder.');
    const taken = await asked([board, '--out', join(folder, 'taken.pdf'), '--json']);
    expect(taken.code).toBe(2);
    expect(SheetReportZ.parse(JSON.parse(taken.out)).file).toMatchObject({
      outcome: 'refused',
      code: 'special',
    });
  });
});
