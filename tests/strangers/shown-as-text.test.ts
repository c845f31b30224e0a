import { createRequire } from 'node:module';
import { parse as parseCsv } from 'csv-parse/sync';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Build } from '../../boards/document/build';
import { BuildZ } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { NameZ } from '../../boards/document/text';
import { measureByTable } from '../../boards/drawing/measure';
import { CABLE_COLUMNS, cableCsv, cableRows } from '../../boards/handover/cables/cable-list';
import { fromToOf } from '../../boards/handover/from-to';
import { fromToCsv } from '../../boards/handover/from-to-csv';
import { layPaper } from '../../boards/handover/lay-paper';
import type { Print } from '../../boards/handover/order';
import { svgOf } from '../../boards/handover/svg/svg';
import { reportOn } from '../../electron/cli/check';
import { reportText } from '../../electron/cli/report-words';
import { visibleJson } from '../../electron/cli/terminal';
import type { PaperKit } from '../../electron/paper/kit';
import { makePaper } from '../../electron/paper/make-paper';
import { everythingOf, openedBuild } from '../boards/document/frozen-files';
import { wired } from '../boards/library/demo-files';
import { HAS_POPPLER, kitFromPackages, readByPoppler } from '../electron/paper/kit';
import { everyPrint } from './every-print';
import { withEveryText } from './every-text';
import { HOSTILE_TEXTS } from './hostile-texts';

/** sax, an XML parser from npm, in its strict mode: it throws at the first thing that is not XML. */
const { parser: makeParser } = createRequire(import.meta.url)('sax');

/** What a file may hold at all; the others are refused when it is opened. */
const TAKEN = HOSTILE_TEXTS.filter((text) => NameZ.safeParse(text).success);
const REFUSED = HOSTILE_TEXTS.filter((text) => !NameZ.safeParse(text).success);

const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u;

/** Every text of the build is that one. */
function buildOf(text: string, build: Build): Build {
  return openedBuild(JSON.stringify(withEveryText(BuildZ, build, () => text)));
}

/** Many at once, so that each comes to stand in many fields and a paper is made a tenth as often. */
const AT_ONCE = 12;

function batches(texts: readonly string[]): readonly (readonly string[])[] {
  return Array.from({ length: Math.ceil(texts.length / AT_ONCE) }, (_, at) =>
    texts.slice(at * AT_ONCE, (at + 1) * AT_ONCE),
  );
}

function buildOfAll(texts: readonly string[], build: Build): Build {
  return openedBuild(
    JSON.stringify(withEveryText(BuildZ, build, (place) => texts[place % texts.length] ?? '')),
  );
}

/** The panel header and what is seated on it: every kind of field, and a hundredth of the work. */
const small: Build = (() => {
  const [connector] = wired.board.connectors;
  const seats = wired.seats.filter((seat) => seat.connector === connector?.id);
  return {
    ...wired,
    board: { ...wired.board, connectors: wired.board.connectors.slice(0, 1) },
    case: {
      ...wired.case,
      leads: wired.case.leads.filter(({ id }) => seats.some(({ lead }) => lead === id)),
    },
    extras: [],
    seats,
  };
})();

/** With a tray, cables and what was noticed: every field that there is. */
const whole = openedBuild(everythingOf('build'));

/** Every kind of paper, and the build that it is made of. */
const PRINTS: readonly (readonly [Build, Print])[] = everyPrint(small).map((print) => {
  const ofCables = print.kind === 'trouble-sheet' || print.kind === 'labels';
  return [ofCables ? whole : small, print];
});

interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** Every kind of tag in a picture, with the names of its attributes. Throws where it is no XML. */
function shapeOf(xml: string): { readonly tags: readonly string[]; readonly text: string } {
  const tags = new Set<string>();
  const texts: string[] = [];
  const parser = makeParser(true, {});
  parser.onerror = (thrown: Error) => {
    throw thrown;
  };
  parser.onopentag = ({ name, attributes }: Tag) =>
    tags.add([name, ...Object.keys(attributes).sort()].join(' '));
  parser.ontext = (text: string) => texts.push(text);
  parser.onprocessinginstruction = ({ name }: { name: string }) => tags.add(`<?${name}`);
  for (const not of ['oncdata', 'oncomment', 'ondoctype', 'onscript']) parser[not] = () => tags.add(not);
  parser.write(xml).close();
  return { tags: [...tags].sort(), text: texts.join('') };
}

function svgFor(build: Build, print: Print): string {
  const paper = layPaper(build, print, '26 November 2026', { measure: measureByTable, has: () => true });
  if (!paper.ok) throw new Error(paper.problem.code);
  return svgOf(paper.value, paper.value.pages, { kind: 'text', style: '' });
}

describe('text out of a stranger’s file', () => {
  it('is of three hundred kinds, of which most may stand in a file', () => {
    expect(HOSTILE_TEXTS.length).toBeGreaterThanOrEqual(300);
    expect(TAKEN.length).toBeGreaterThan(200);
    expect(REFUSED.length).toBeGreaterThan(30);
  });

  it.each(REFUSED.map((text) => [JSON.stringify(text), text]))(
    '%s is refused where it stands, and is seen in the message',
    (_, text) => {
      const result = parseDocument(JSON.stringify({ ...small, name: text }));
      if (result.ok) throw new Error('It was opened');
      const { lines } = openProblemWords(result.problem, 'desk.build.json');
      expect(lines[0]).toMatch(/^name: expected /);
      for (const line of lines) expect(line).not.toMatch(UNSEEN);
    },
  );

  it('is in a picture nothing but text: no tag, attribute or entity that a quiet build has not', () => {
    for (const [build, print] of PRINTS) {
      const wanted = shapeOf(svgFor(buildOf('quiet', build), print)).tags;
      for (const texts of batches(TAKEN)) {
        const { tags } = shapeOf(svgFor(buildOfAll(texts, build), print));
        const drawn = /^(?:text|g|path|rect|circle|line)\b/;
        expect(
          tags.filter((tag) => !wanted.includes(tag) && !drawn.test(tag)),
          texts.join(' '),
        ).toEqual([]);
        expect(tags.join(' '), texts.join(' ')).not.toMatch(/\bon\w+|href|script|foreign|style(?! )/i);
      }
    }
  }, 300_000);

  it('is in a table of a spreadsheet never a formula, and is otherwise as it was', () => {
    for (const text of TAKEN) {
      const [wires, cables] = [buildOf(text, small), buildOf(text, whole)];
      const listed = cableRows(cables);
      expect(listed).not.toEqual([]);
      for (const [table, wanted] of [
        [fromToCsv(wires), fromToOf(wires).map((row) => Object.values(row))],
        [cableCsv(cables), listed.map((row) => CABLE_COLUMNS.map(([column]) => row[column]))],
      ] as const) {
        const [, ...rows]: string[][] = parseCsv(table);
        expect(
          rows.map((row) => row.map((cell) => cell.replace(/^'/, ''))),
          text,
        ).toEqual(wanted.map((row) => row.map((cell) => String(cell).replace(/^'/, ''))));
        for (const cell of rows.flat()) expect(cell, text).not.toMatch(/^[\s\p{Cf}]*[=+\-@−＝＋－＠|]/u);
      }
    }
  }, 300_000);

  it('is on a terminal what can be seen of it, in words and in JSON', () => {
    for (const text of TAKEN) {
      const report = reportOn('desk.build.json', buildOf(text, small));
      const printed = reportText(report, (word) => word);
      expect(printed.replaceAll('\n', '').replaceAll('\u00a0', ' '), text).not.toMatch(UNSEEN);
      const json = visibleJson(report);
      expect(json.replaceAll('\n', ''), text).not.toMatch(UNSEEN);
      expect(JSON.parse(json), text).toEqual(JSON.parse(JSON.stringify(report)));
    }
  }, 300_000);
});

describe('in a PDF', () => {
  let kit: PaperKit;
  beforeAll(async () => {
    kit = await kitFromPackages();
  });

  it.runIf(HAS_POPPLER)(
    'it runs nothing, leads nowhere, and is only read (poppler)',
    async () => {
      for (const texts of batches(TAKEN)) {
        for (const [build, print] of PRINTS) {
          const document = buildOfAll(texts, build);
          const order = { document, print, format: 'pdf', page: null, scale: 1 } as const;
          const made = await makePaper(kit, order, new Date(Date.UTC(2026, 10, 26)));
          if (!made.ok) throw new Error(made.problem.code);
          const bytes = Buffer.from(made.value.bytes).toString('latin1');
          expect(bytes).not.toMatch(
            /\/(?:JavaScript|JS|URI|Launch|SubmitForm|EmbeddedFiles?|OpenAction|RichMedia)\b/,
          );
          expect(await readByPoppler('pdfinfo', made.value.bytes)).toMatch(/JavaScript:\s+no/);
        }
      }
    },
    300_000,
  );
});
