import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TURNS } from '../../../boards/base/units';
import type { Build } from '../../../boards/document/build';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { jointsOf } from '../../../boards/fit/joints';
import { benchPaper } from '../../../boards/handover/bench-sheet/bench-paper';
import { PART_TITLES } from '../../../boards/handover/bench-sheet/bench-words';
import { BENCH_PARTS, type BenchOptions } from '../../../boards/handover/bench-sheet/options';
import { PAPER_CAUTION } from '../../../boards/handover/caution-words';
import { fromToOf } from '../../../boards/handover/from-to';
import { expectedWords } from '../../../boards/handover/meter/meter-words';
import type { Paper } from '../../../boards/handover/page/page';
import { MARGIN_MM, PAPER_IDS } from '../../../boards/handover/page/paper';
import { benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { METER_HOW, stepWords } from '../../../boards/handover/steps/step-words';
import { arbitraryBuild } from '../arbitrary-build';
import { demo } from '../findings/demo';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';
import {
  ANY_LETTERS,
  DAY,
  everythingOn,
  nearerToEdge,
  pinsOn,
  seenOnPaper,
  textsOn,
  wordsOn,
} from './papers';

const ALL: BenchOptions = { paper: 'a4', turn: 0, mirrored: false, parts: [...BENCH_PARTS] };

function sheetOf(build: Build, options: Partial<BenchOptions> = {}): Paper {
  const paper = benchPaper(build, { ...ALL, ...options }, DAY, ANY_LETTERS);
  if (!paper.ok) throw new Error(JSON.stringify(paper.problem));
  return paper.value;
}

/** All text of a paper without its spaces: lines are broken where they have to be. */
function bare(text: string): string {
  return text.normalize('NFC').replaceAll(/\s/g, '');
}

function allWords(paper: Paper): string {
  return bare(wordsOn(paper).join(''));
}

function stepTitles(build: Build): readonly string[] {
  const steps = benchStepsOf(build);
  if (!steps.ok) throw new Error('A ring');
  return steps.value.map((step) => stepWords(build, step).title);
}

describe('The first page', () => {
  test('says in a box at the top what can damage and what will not work, and counts every finding', () => {
    const [first] = sheetOf(demo('eight-slips')).pages;
    const words = first ? textsOn(first).map(({ item }) => item.text.replaceAll('\u00a0', ' ')) : [];
    expect(words.slice(0, 2)).toEqual([
      'Study machine 4',
      `Bench sheet · board Tern B2 · case Reading-room case · ${DAY}`,
    ]);
    expect(words.slice(2, 5)).toEqual([
      '!',
      'Danger: do not connect the mains with this wiring',
      '4 dangers and 6 faults are left. What follows is the wiring as it is, with what can damage parts in it.',
    ]);
    // No note of standby: two USB 3 sockets at 0.9 A and two others at 0.5 A stay below 3 A.
    expect(words).toContain('In all: 4 dangers, 6 faults, 6 doubts and no notes.');
  });

  test('names every danger, fault and doubt with its reason', () => {
    const build = demo('eight-slips');
    const words = allWords(sheetOf(build));
    const told = findingsOf(build).filter(({ severity }) => severity !== 'note');
    expect(told.length).toBe(16);
    for (const finding of told) {
      const { title, reason } = wordsOf(finding, build);
      expect(words).toContain(bare(title));
      expect(words).toContain(bare(reason));
    }
  });

  test('has no box where neither a danger nor a fault is left', () => {
    const build = demo('wired');
    const words = allWords(sheetOf(build));
    expect(words).toContain(bare('The checks find no danger and no fault in this wiring.'));
    expect(words).not.toContain(bare('do not connect the mains'));
  });

  test('names the page of every part', () => {
    const paper = sheetOf(demo('wired'));
    const [first] = paper.pages;
    const words = first ? textsOn(first).map(({ item }) => item.text) : [];
    for (const { title, page } of paper.contents) {
      expect(words[words.indexOf(title) + 1]).toBe(`page\u00a0${page}`);
      expect(allWords({ ...paper, pages: paper.pages.slice(page - 1, page) })).toContain(bare(title));
    }
    expect(paper.contents.map(({ title }) => title)).toEqual(BENCH_PARTS.map((part) => PART_TITLES[part]));
  });
});

describe('The steps', () => {
  // The words of a step are those that the window shows at it.
  test.each(['wired', 'every-cable'] as const)('of %s have all that is to be minded with them', (name) => {
    const build = demo(name);
    const steps = benchStepsOf(build);
    if (!steps.ok) throw new Error('A ring');
    const cautions = new Set(steps.value.flatMap((step) => stepWords(build, step).cautions));
    expect(cautions.size).toBeGreaterThan(5);
    for (const parts of [BENCH_PARTS, ['steps'] as const]) {
      const words = allWords(sheetOf(build, { parts: [...parts] }));
      for (const caution of cautions) expect(words).toContain(bare(caution));
    }
    const plugs = steps.value.filter(({ kind }) => kind === 'plug').length;
    const pressed = allWords(sheetOf(build, { parts: ['steps'] })).split(bare('Only with light pressure'));
    expect(pressed).toHaveLength(plugs + 1);
  });

  test('that measure say how it is measured, and that the leads of the supply are not plugged in yet', () => {
    const words = allWords(sheetOf(demo('wired'), { parts: ['meter'] }));
    expect(words).toContain(bare(METER_HOW));
    expect(words).toContain(bare('the leads of the supply not yet plugged in'));
    expect(words).toContain(bare('may climb while the board charges up'));
  });
});

describe('Every page', () => {
  test.each(PAPER_IDS)('on %s has the cautions, the day and its number at its foot', (paper) => {
    const made = sheetOf(demo('wired'), { paper });
    expect(made.pages.length).toBeGreaterThan(5);
    expect(made.pages.length).toBeLessThanOrEqual(13);
    for (const [index, page] of made.pages.entries()) {
      const words = textsOn(page).map(({ item }) => item.text);
      expect(words.join(' ')).toContain(PAPER_CAUTION);
      expect(words).toContain(`page\u00a0${index + 1} of\u00a0${made.pages.length}`);
      expect(words.some((line) => line.includes(`printed ${DAY}`))).toBe(true);
    }
  });
});

test('The steps stand in the order of the work, numbered, each with an empty box', () => {
  const build = demo('wired');
  const paper = sheetOf(build, { parts: ['steps'] });
  const titles = stepTitles(build);
  const words = allWords(paper);
  const places = titles.map((title, index) => words.indexOf(bare(`${index + 1}${title}`)));
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(places[0]).toBeGreaterThan(0);
  const boxes = paper.pages
    .flatMap(everythingOn)
    .filter(({ item }) => item.kind === 'rect' && item.box.width === item.box.height);
  expect(boxes).toHaveLength(titles.length);
});

describe('A header with its plugs', () => {
  const lead = partLead('switch', 'power-switch', grid(1, 2), { a: '1', b: '2' }, { mark: '1' });
  const header = posts('panel', grid(2, 5));
  const build = bench([header], [lead], [seat('switch', 'panel', [0, 1], 90)]);

  test.each([
    [{}, ['1 2 3 4 5', '6 7 8 9 10']],
    [{ turn: 180 }, ['10 9 8 7 6', '5 4 3 2 1']],
    [{ turn: 90 }, ['6 1', '7 2', '8 3', '9 4', '10 5']],
    [{ mirrored: true }, ['5 4 3 2 1', '10 9 8 7 6']],
  ] as const)('lies as the board does: %j', (lying, rows) => {
    const paper = sheetOf(build, { ...lying, parts: ['close-ups'] });
    const page = paper.pages.find((each) => pinsOn(each).size > 0);
    expect(page && seenOnPaper(pinsOn(page))).toEqual(rows);
  });

  test('has a table of hole, wire, pin and signal, the mark named', () => {
    const words = wordsOn(sheetOf(demo('wired'), { parts: ['close-ups'] }));
    const first = words.indexOf('1, mark');
    expect(words.slice(first - 1, first + 5)).toEqual([
      'HD AUDIO',
      '1, mark',
      'red',
      '1',
      'mic L',
      'PORT1 L',
    ]);
  });

  test('shows every wire in its own colour, ink round it, and its colour as a word at its end', () => {
    const wired = demo('wired');
    const paper = sheetOf(wired, { parts: ['close-ups'] });
    const rects = paper.pages
      .flatMap(everythingOn)
      .flatMap(({ item }) => (item.kind === 'rect' ? [item.paint] : []));
    const joints = jointsOf(wired);
    expect(joints.length).toBeGreaterThan(50);
    const legs = rects.filter(({ fill }) => fill?.startsWith('wire-'));
    const expected = joints.flatMap(({ wire }) => [`wire-${wire.colour}`, `wire-${wire.colour}`]);
    const stripes = joints.flatMap(({ wire }) =>
      wire.stripe ? [`wire-${wire.stripe}`, `wire-${wire.stripe}`] : [],
    );
    expect(legs.map(({ fill }) => fill).toSorted()).toEqual([...expected, ...stripes].toSorted());
    const outlines = rects.filter(({ fill, stroke }) => fill === 'ink' && stroke?.ink === 'ink');
    expect(outlines).toHaveLength(expected.length);
    // Once in the table, set in bold, and once beside the wire.
    const beside = paper.pages
      .flatMap(textsOn)
      .filter(({ item }) => item.face === 'text' && item.text === 'violet');
    expect(beside).toHaveLength(joints.filter(({ wire }) => wire.colour === 'violet' && !wire.stripe).length);
  });
});

test('Beside every reading there is an empty field, and what has to be seen', () => {
  const build = demo('wired');
  const paper = sheetOf(build, { parts: ['meter'] });
  const steps = benchStepsOf(build);
  if (!steps.ok) throw new Error('A ring');
  const readings = steps.value.flatMap((step) => (step.kind === 'meter' ? step.step.readings : []));
  const fields = paper.pages
    .flatMap(everythingOn)
    .filter(({ item }) => item.kind === 'rect' && item.paint.fill === 'paper' && item.box.width > 30);
  expect(readings.length).toBeGreaterThan(5);
  expect(fields).toHaveLength(readings.length);
  expect(wordsOn(paper)).toContain('Must show');
  const words = allWords(paper);
  for (const reading of readings) expect(words).toContain(bare(expectedWords(reading)));
});

test('A long from-to list has its head on every page, and where it goes on says so', () => {
  const paper = sheetOf(demo('wired'), { parts: ['list'] });
  const onPages = paper.pages.map((page) => textsOn(page).map(({ item }) => item.text));
  const withHead = onPages.filter((words) => words.includes('Connector'));
  expect(withHead.length).toBeGreaterThan(1);
  for (const words of withHead.slice(1)) expect(words).toContain(`${PART_TITLES.list}, continued`);
});

test('Only the parts that were chosen are printed, in their own order', () => {
  const paper = sheetOf(demo('wired'), { parts: ['list', 'steps'] });
  expect(paper.contents.map(({ title }) => title)).toEqual([PART_TITLES.steps, PART_TITLES.list]);
  expect(allWords(paper)).not.toContain(bare(PART_TITLES.meter));
});

test('A build without a plug says so in place of empty tables', () => {
  const words = wordsOn(sheetOf(bench([posts('panel', grid(2, 5))], [])));
  expect(words.filter((word) => word === 'No plug is seated in this build yet.')).toHaveLength(2);
  expect(words).toContain('Nothing in this wiring can be told by a meter before power.');
});

test('Of any build, in any turn, no row and no step is lost or told twice, and nothing runs over the margin', () => {
  fc.assert(
    fc.property(
      arbitraryBuild,
      fc.constantFrom(...TURNS),
      fc.boolean(),
      fc.constantFrom(...PAPER_IDS),
      (build, turn, mirrored, paper) => {
        const made = sheetOf(build, { turn, mirrored, paper });
        expect(nearerToEdge(made, MARGIN_MM * 0.6)).toEqual([]);
        const listed = sheetOf(build, { paper, parts: ['list'] });
        const from = listed.contents[0]?.page ?? 1;
        const pages = listed.pages.slice(from - 1);
        const holes = fromToOf(build).length;
        const rules = pages
          .flatMap(everythingOn)
          .filter(({ item }) => item.kind === 'line' && item.stroke.widthMm === 0.12);
        expect(rules).toHaveLength(holes);
        const words = allWords(made);
        for (const row of fromToOf(build))
          for (const cell of Object.values(row)) expect(words).toContain(bare(cell));
        const titles = stepTitles(build);
        titles.reduce((after, title, index) => {
          const at = words.indexOf(bare(`${index + 1}${title}`), after);
          expect(at, title).toBeGreaterThanOrEqual(0);
          return at;
        }, 0);
      },
    ),
    { numRuns: 60 },
  );
});
