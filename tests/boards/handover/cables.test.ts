import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Build } from '../../../boards/document/build';
import { benchPaper } from '../../../boards/handover/bench-sheet/bench-paper';
import type { BenchPart } from '../../../boards/handover/bench-sheet/options';
import { cableCsv, cableRows, hasCables } from '../../../boards/handover/cables/cable-list';
import { LABEL_SIZES, type LabelOptions } from '../../../boards/handover/cables/label-options';
import { labelPaper } from '../../../boards/handover/cables/label-paper';
import { labelTexts } from '../../../boards/handover/cables/label-texts';
import type { Drawn } from '../../../boards/handover/page/page';
import { MARGIN_MM, PAPERS } from '../../../boards/handover/page/paper';
import { asLaid } from '../../../boards/routing/laid/as-laid';
import { bench } from '../fixtures/bench';
import { laidMachine } from '../routing/laid/laid-machine';
import { ANY_LETTERS, DAY, wordsOn } from './papers';

const machine = laidMachine();
const PLAIN: LabelOptions = { paper: 'a4', widthMm: 60, heightMm: 14, style: 'flat' };

function pagesOf(build: Build, options: LabelOptions = PLAIN) {
  const paper = labelPaper(build, options, DAY, ANY_LETTERS);
  if (!paper.ok) throw new Error(paper.problem.code);
  return paper.value.pages;
}

function boxes(items: readonly Drawn[]) {
  return items.flatMap((item) => (item.kind === 'rect' ? [item.box] : []));
}

function texts(items: readonly Drawn[]) {
  return items.flatMap((item) => (item.kind === 'text' ? [item] : []));
}

describe('the cable list', () => {
  it('has every measured cable once, as they are laid, with whole lengths', () => {
    const rows = cableRows(machine);
    expect(rows.map(({ cable }) => cable)).toEqual(['CPU', 'FAN-TOP', 'MAIN', 'DATA', 'BUTTON', 'FAN-LOW']);
    expect(rows[0]).toMatchObject({
      from: 'supply unit',
      to: 'CPU_12V',
      length: '700',
      way: 'Through Above the board',
      when: 'Before the board goes in',
    });
    for (const { wayLength, length, inSight } of rows) {
      expect(Number(wayLength)).toBeLessThanOrEqual(Number(length));
      expect(Number(inSight)).toBeLessThanOrEqual(Number(wayLength));
    }
  });

  it('ends with cables that have no way, and says so', () => {
    const rows = cableRows({ ...machine, routes: [] });
    expect(rows).toHaveLength(6);
    expect(new Set(rows.map(({ state, way }) => [state, way].join()))).toEqual(new Set(['no way yet,']));
    expect(hasCables(bench([], []))).toBe(false);
    expect(cableRows(bench([], []))).toEqual([]);
  });

  it('is read as values by an npm parser (csv-parse), also with names that look like formulas', () => {
    const leads = machine.case.leads.map((lead) =>
      lead.id === 'cpu' ? { ...lead, name: '=CPU, "short"' } : lead,
    );
    const csv = cableCsv({ ...machine, case: { ...machine.case, leads } });
    const rows = parse(csv, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
    expect(rows).toHaveLength(6);
    expect(rows[0]).toMatchObject({ Cable: '\'=CPU, "short"', 'Long, mm': '700', To: 'CPU_12V' });
  });
});

describe('the page of cables in the bench sheet', () => {
  const printed = (build: Build, parts: readonly BenchPart[]) => {
    const options = { paper: 'a4', turn: 0, mirrored: false, parts: [...parts] } as const;
    const paper = benchPaper(build, { ...options, parts: [...parts] }, DAY, ANY_LETTERS);
    if (!paper.ok) throw new Error(paper.problem.code);
    return paper.value;
  };

  it('has every cable with its ends, its lengths and its state', () => {
    const words = wordsOn(printed(machine, ['cables']))
      .join('')
      .replaceAll(/\s/g, '');
    for (const row of cableRows(machine))
      for (const cell of Object.values(row)) expect(words).toContain(cell.replaceAll(/\s/g, ''));
  });

  it('is there only for a machine whose cables are measured, unless it alone is asked for', () => {
    const titles = (build: Build, parts: readonly BenchPart[]) =>
      printed(build, parts).contents.map(({ title }) => title);
    expect(titles(machine, ['list', 'cables'])).toEqual([
      'Every wire from part to pin',
      'Every cable and its way',
    ]);
    expect(titles(bench([], []), ['list', 'cables'])).toEqual(['Every wire from part to pin']);
    expect(wordsOn(printed(bench([], []), ['cables']))).toContain('No cable of this build is measured yet.');
  });
});

describe('labels for both ends of each cable', () => {
  it('are two for each run, each with the end it is at and the other', () => {
    const labels = labelTexts(machine);
    expect(labels).toHaveLength(2 * (asLaid(machine)?.runs.length ?? 0));
    expect(labels.slice(-2)).toEqual([
      { cable: 'CPU', here: 'supply unit', other: 'CPU_12V', diameterMm: 8 },
      { cable: 'CPU', here: 'CPU_12V', other: 'supply unit', diameterMm: 8 },
    ]);
  });

  it('lie edge to edge inside the margins, none over another, whatever size is chosen', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('a4' as const, 'letter' as const),
        fc.integer({ min: LABEL_SIZES.widthMm.least, max: LABEL_SIZES.widthMm.most }),
        fc.integer({ min: LABEL_SIZES.heightMm.least, max: LABEL_SIZES.heightMm.most }),
        fc.constantFrom('flat' as const, 'flag' as const),
        (paper, widthMm, heightMm, style) => {
          const pages = pagesOf(machine, { paper, widthMm, heightMm, style });
          const size = PAPERS[paper];
          let count = 0;
          for (const { items } of pages) {
            const here = boxes(items);
            count += here.length;
            for (const { x, y, width, height } of here) {
              expect(x).toBeGreaterThanOrEqual(MARGIN_MM);
              expect(y).toBeGreaterThanOrEqual(MARGIN_MM);
              expect(x + width).toBeLessThanOrEqual(size.widthMm - MARGIN_MM + 1e-6);
              expect(y + height).toBeLessThanOrEqual(size.heightMm - MARGIN_MM + 1e-6);
              expect([width, height]).toEqual([widthMm, heightMm]);
            }
            expect(new Set(here.map(({ x, y }) => `${x} ${y}`)).size).toBe(here.length);
          }
          expect(count).toBe(12);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('keep their words inside, and say with a mark where one is cut', () => {
    for (const options of [
      PLAIN,
      { ...PLAIN, style: 'flag' as const },
      { ...PLAIN, widthMm: 20, heightMm: 8 },
    ]) {
      const [page] = pagesOf(machine, options);
      const labels = boxes(page?.items ?? []);
      for (const label of labels) {
        const inside = texts(page?.items ?? []).filter(
          ({ at }) =>
            at.x > label.x && at.x < label.x + label.width && at.y > label.y && at.y < label.y + label.height,
        );
        expect(inside.length).toBeGreaterThan(1);
        for (const { at, widthMm } of inside)
          expect(at.x + widthMm).toBeLessThanOrEqual(label.x + label.width + 1e-6);
        const said = inside.map(({ text }) => text).join(' ');
        expect(said.includes('other end:') || said.includes('…')).toBe(true);
      }
    }
  });

  it('of a flag stand on both halves, with the way round the cable free between them', () => {
    const [page] = pagesOf(machine, { ...PLAIN, style: 'flag' });
    const [box] = boxes(page?.items ?? []).slice(-1);
    const folds = (page?.items ?? []).flatMap((item) =>
      item.kind === 'line' &&
      box &&
      item.from.y === box.y &&
      item.from.x > box.x &&
      item.from.x < box.x + box.width
        ? [item.from.x]
        : [],
    );
    expect(folds).toHaveLength(2);
    // The last label is of the cable of 8 mm: once round it is 8 π.
    const [left = 0, right = 0] = folds;
    expect(right - left).toBeGreaterThan(8 * Math.PI - 1.2);
  });

  it('are none, and it is said, where there is no cable', () => {
    const [page] = pagesOf(bench([], []));
    expect(texts(page?.items ?? []).map(({ text }) => text)).toContain(
      'There is no cable with two ends in this build.',
    );
  });
});
