import { createRequire } from 'node:module';
import { imageSize } from 'image-size';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { BENCH_PARTS, type BenchOptions } from '../../../boards/handover/bench-sheet/options';
import { PAPER_CAUTION } from '../../../boards/handover/caution-words';
import { fromToOf } from '../../../boards/handover/from-to';
import type { PaperFormat, Print } from '../../../boards/handover/order';
import { benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { stepWords } from '../../../boards/handover/steps/step-words';
import type { PaperKit } from '../../../electron/paper/kit';
import { makePaper } from '../../../electron/paper/make-paper';
import { demo } from '../../boards/findings/demo';
import { HAS_POPPLER, kitFromPackages, pixelsOf, readByPoppler } from './kit';

const DAY = new Date(Date.UTC(2026, 10, 26));
/** sax, an XML parser from npm, in its strict mode: it throws at the first thing that is not XML. */
const { parser: makeParser } = createRequire(import.meta.url)('sax');
let kit: PaperKit;
beforeAll(async () => {
  kit = await kitFromPackages();
});

const ALL: BenchOptions = { paper: 'a4', turn: 0, mirrored: false, parts: [...BENCH_PARTS] };

async function made(document: Build, print: Print, format: PaperFormat = 'pdf', page: number | null = null) {
  const paper = await makePaper(kit, { document, print, format, page, scale: 1 }, DAY);
  if (!paper.ok) throw new Error(paper.problem.code);
  return paper.value;
}

function sheet(options: Partial<BenchOptions> = {}): Print {
  return { kind: 'bench-sheet', options: { ...ALL, ...options } };
}

const header = (connector: string): Print => {
  return { kind: 'header', options: { turn: 0, mirrored: false, connector } };
};

function bare(text: string): string {
  return text.replaceAll(/\s/g, '');
}

test('The same build on the same day is the same file, byte for byte', async () => {
  const [first, second] = [await made(demo('wired'), sheet()), await made(demo('wired'), sheet())];
  expect(Buffer.from(first.bytes).equals(Buffer.from(second.bytes))).toBe(true);
});

describe.runIf(HAS_POPPLER)('Read by poppler', () => {
  test.each(['a4', 'letter'] as const)(
    '%s: every step in order, every wire, and what is at the foot',
    async (paper) => {
      const build = demo('wired');
      const { bytes, allPages } = await made(build, sheet({ paper }));
      const pages = (await readByPoppler('pdftotext', bytes, ['-raw'])).split('\f').slice(0, -1).map(bare);
      expect(pages).toHaveLength(allPages);
      for (const [at, text] of pages.entries()) {
        expect(text).toContain(bare(PAPER_CAUTION));
        expect(text).toContain(`page${at + 1}of${allPages}`);
      }
      const whole = pages.join('');
      const steps = benchStepsOf(build);
      if (!steps.ok) throw new Error('A ring');
      let after = 0;
      for (const step of steps.value) {
        const at = whole.indexOf(bare(stepWords(build, step).title), after);
        expect(at, stepWords(build, step).title).toBeGreaterThanOrEqual(after);
        after = at + 1;
      }
      for (const row of fromToOf(build))
        for (const cell of [row.lead, row.plug, row.connector, row.signal, row.name])
          expect(whole).toContain(bare(cell));
    },
  );

  test('in the list every row reads from lead to pin', async () => {
    const { bytes } = await made(demo('wired'), sheet({ parts: ['list'] }));
    const text = bare(await readByPoppler('pdftotext', bytes, ['-layout']));
    const rows = fromToOf(demo('wired')).filter(({ lead, from }) => lead.length < 14 && from.length < 14);
    expect(rows.length).toBeGreaterThan(5);
    for (const { lead, from, colour, plug, hole, connector, pin } of rows)
      expect(text).toContain(bare([lead, from, colour, plug, hole, connector, pin].join('')));
  });

  test('printed in grey, every colour of wire has an edge that tells it from the paper', async () => {
    const { bytes } = await made(demo('wired'), header('usb3'));
    const { width, height, rgb } = await pixelsOf(bytes, 1);
    // Luma of ITU-R BT.601, as a grey printer weighs colours.
    const grey = (x: number, y: number) => {
      const at = 3 * (y * width + x);
      return 0.299 * (rgb[at] ?? 0) + 0.587 * (rgb[at + 1] ?? 0) + 0.114 * (rgb[at + 2] ?? 0);
    };
    let edged = 0;
    let coloured = 0;
    for (let y = 3; y < height - 3; y += 1)
      for (let x = 3; x < width - 3; x += 1) {
        const [r = 0, g = 0, b = 0] = rgb.subarray(3 * (y * width + x));
        if (Math.max(r, g, b) - Math.min(r, g, b) < 60) continue;
        coloured += 1;
        // Across the wire there is ink within its width on at least one side: 1.3 mm are five pixels.
        const around = [-3, -2, -1, 1, 2, 3].flatMap((d) => [grey(x + d, y), grey(x, y + d)]);
        if (Math.min(...around) < 110) edged += 1;
      }
    expect(coloured).toBeGreaterThan(500);
    expect(edged / coloured).toBeGreaterThan(0.95);
  });
});

describe('A header by itself', () => {
  test('is one page as large as its drawing, in each kind of file', async () => {
    const { bytes, pages } = await made(demo('wired'), header('panel'), 'svg');
    expect(pages).toBe(1);
    const svg = Buffer.from(bytes).toString('utf8');
    makeParser(true, {}).write(svg).close();
    const [, wide, high] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    const png = await made(demo('wired'), header('panel'), 'png');
    // 96 pixels an inch of 25.4 mm.
    expect(imageSize(png.bytes).width).toBe(Math.round((Number(wide) / 25.4) * 96));
    expect(Math.abs((imageSize(png.bytes).height ?? 0) - (Number(high) / 25.4) * 96)).toBeLessThan(1.5);
  });

  test('that is not there is refused with the one that was probably meant', async () => {
    const order = {
      document: demo('wired'),
      print: header('pannel'),
      format: 'svg',
      page: null,
      scale: 1,
    } as const;
    expect(await makePaper(kit, order, DAY)).toEqual({
      ok: false,
      problem: { code: 'no-such-connector', id: 'pannel', nearest: 'panel' },
    });
  });
});

test('Of a board sheet there is no bench sheet, and it is said', async () => {
  const order = {
    document: demo('wired').board,
    print: sheet(),
    format: 'pdf',
    page: null,
    scale: 1,
  } as const;
  expect(await makePaper(kit, order, DAY)).toMatchObject({ ok: false, problem: { expected: 'a build' } });
});

describe('Names that mean harm', () => {
  test.each([
    ['200 letters without a break', 'W'.repeat(200)],
    ['markup', '<script>alert(1)</script>]]>&amp;"\''],
    ['right to left', 'مفتاح الطاقة'],
    ['pictures', '🔌🖥️👩‍🔧'],
    ['the commands of a PDF', ') Tj ET endstream endobj'],
  ])('%s, in every field: PDF and SVG are made, and the SVG is XML', async (_, text) => {
    const build = renamed(demo('wired'), text);
    const { bytes } = await made(build, sheet());
    expect(Buffer.from(bytes).subarray(0, 8).toString('latin1')).toBe('%PDF-1.7');
    const svg = Buffer.from((await made(build, sheet(), 'svg')).bytes).toString('utf8');
    const parser = makeParser(true, {});
    parser.onerror = (thrown: Error) => {
      throw thrown;
    };
    parser.onopentag = ({ name }: { readonly name: string }) => expect(name).not.toBe('script');
    parser.write(svg).close();
    if (!HAS_POPPLER) return;
    const read = bare(await readByPoppler('pdftotext', bytes, ['-raw']));
    if (/^[ -~]*$/.test(text)) expect(read).toContain(bare(text));
    else expect(read).toContain('▯');
  });
});

/** Every name of a build in place of its own. */
function renamed(build: Build, text: string): Build {
  return {
    ...build,
    name: text,
    notes: text,
    board: {
      ...build.board,
      name: text,
      connectors: build.board.connectors.map((connector) => ({ ...connector, print: text, title: text })),
    },
    case: {
      ...build.case,
      name: text,
      leads: build.case.leads.map((lead) => ({
        ...lead,
        name: text,
        plugs: lead.plugs.map((plug) => ({ ...plug, print: text })),
        parts: lead.parts.map((part) => ({ ...part, name: text })),
      })),
    },
  };
}
